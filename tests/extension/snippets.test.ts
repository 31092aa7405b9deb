/** Every snippet, and the circuit of the walkthrough, is text that the notation reads. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseErrors, readCircuit } from '../support/read.ts';

const folder = path.resolve(import.meta.dirname, '../../extension');

interface Snippet {
  readonly prefix: string;
  readonly description: string;
  readonly body: readonly string[];
}
const snippets: Readonly<Record<string, Snippet>> = JSON.parse(
  readFileSync(path.join(folder, 'snippets/linewright.json'), 'utf8'),
);

/** The text that stands there if each proposal is taken as it is. */
function expanded({ body }: Snippet): string {
  return body
    .join('\n')
    .replaceAll('$CURRENT_YEAR-$CURRENT_MONTH-$CURRENT_DATE', '2026-03-02')
    .replace(/\$\{\d+\|([^,|]+)[^}]*\}/g, '$1')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$\d+/g, '');
}

/** What is wrong with the way it is written; names that point nowhere are for the writer to fill in. */
function misspelt(text: string): readonly string[] {
  const problems = readCircuit(text).problems.filter(({ code }) => code !== 'unknown-name' && code !== 'missing');
  return [...parseErrors(text), ...problems.map(({ code, message }) => `${code}: ${message}`)];
}

describe('snippets', () => {
  test.each(Object.entries(snippets))('%s', (_, snippet) => {
    const text = expanded(snippet);
    expect(text).not.toMatch(/[$|]/);
    expect(misspelt(snippet.prefix === 'found' ? `pedal {\n${text}\n}` : text)).toEqual([]);
    expect(snippet.description).toMatch(/^[A-Z]/);
  });

  test('have prefixes of their own', () => {
    const prefixes = Object.values(snippets).map(({ prefix }) => prefix);
    expect(new Set(prefixes).size).toBe(prefixes.length);
  });
});

test('the circuit of the walkthrough is read without a complaint', () => {
  const text = readFileSync(path.join(folder, 'walkthrough/first.circuit'), 'utf8');
  expect(parseErrors(text)).toEqual([]);
  expect(readCircuit(text).problems).toEqual([]);
});
