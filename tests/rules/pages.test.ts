import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { rules } from '../../language/rules/index.ts';
import { pagePath, rulePage, rulesPage } from '../../language/rules/pages.ts';

const root = new URL('../../', import.meta.url);
const folder = new URL('language/rules/pages/', root);
const pages = [
  ...rules.map((rule) => [pagePath(rule.code), rulePage(rule)] as const),
  ['language/rules/pages/README.md', rulesPage(rules)] as const,
];

// UPDATE=1 writes the pages anew.
if (process.env['UPDATE'] === '1') {
  mkdirSync(folder, { recursive: true });
  for (const [path, text] of pages) writeFileSync(new URL(path, root), text);
}

it.each(pages)('%s is what the rule says of itself', (path, text) => {
  const file = new URL(path, root);
  expect(existsSync(file) ? readFileSync(file, 'utf8') : undefined).toBe(text);
});

it('there is no page without a rule', () => {
  const names = pages.map(([path]) => path.slice(path.lastIndexOf('/') + 1));
  expect(readdirSync(folder).sort()).toEqual([...names].sort());
});
