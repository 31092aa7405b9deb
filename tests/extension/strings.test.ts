/** Every sentence that the window says is in the localisation bundle, and nothing else is. `UPDATE=1` rewrites it. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { pageWords } from '../../extension/preview/words.ts';
import { fill } from '../../extension/webview/fill.ts';

const folder = path.resolve(import.meta.dirname, '../../extension');
const bundleFile = path.join(folder, 'l10n/bundle.l10n.json');

function sentences(): string[] {
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
  const found = sources.flatMap((name) => {
    const text = readFileSync(path.join(folder, name), 'utf8');
    return [...text.matchAll(/l10n\.t\(\s*'((?:[^'\\]|\\.)*)'/g)].map(([, sentence]) => sentence ?? '');
  });
  return [...new Set(found)].sort();
}

test('the bundle holds each sentence once', () => {
  const wanted = `${JSON.stringify(Object.fromEntries(sentences().map((sentence) => [sentence, sentence])), undefined, 2)}\n`;
  if (process.env['UPDATE'] === '1') writeFileSync(bundleFile, wanted);
  expect(readFileSync(bundleFile, 'utf8')).toBe(wanted);
  expect(sentences().length).toBeGreaterThan(20);
});

test('no call of l10n.t hides its sentence in a variable', () => {
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
  for (const name of sources) {
    const calls = readFileSync(path.join(folder, name), 'utf8').match(/l10n\.t\(\s*[^'\s]/g) ?? [];
    expect(calls, name).toEqual([]);
  }
});

test('the page fills values into its sentences, and leaves a place without a value as it is', () => {
  const words = pageWords({ t: (sentence) => sentence });
  expect(fill(words.summary, 1, 2, 3)).toBe('Errors: 1, warnings: 2, to measure: 3');
  expect(fill('{0} of {1}', 'a')).toBe('a of {1}');
  expect(fill('{0}', '{0} <b>')).toBe('{0} <b>');
});
