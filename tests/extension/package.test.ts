/** What is in the package: all that runs and explains, nothing else. */
import { readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { listFiles, PackageManager } from '@vscode/vsce';
import { beforeAll, expect, test } from 'vitest';
import { rules } from '../../language/rules/index.ts';

const root = path.resolve(import.meta.dirname, '../..');

let files: readonly string[];
beforeAll(async () => {
  files = await listFiles({ cwd: root, packageManager: PackageManager.None });
  // The packager looks at every file there is, the provisioned editor's too.
}, 60_000);

test('everything that runs is in it', () => {
  const running = [
    'extension.cjs',
    'extension-web.cjs',
    'server.cjs',
    'server-browser.js',
    'layout-worker.cjs',
    'elk.cjs',
  ];
  const shown = ['preview.js', 'preview.css', 'picture.css', 'sheet.js', 'sheet.css', 'paper.css'];
  for (const name of [...running, ...shown]) expect(files).toContain(`dist/${name}`);
});

test('every rule brings its page, and the notices and licence are there', () => {
  for (const { code } of rules) expect(files).toContain(`language/rules/pages/${code}.md`);
  for (const name of ['LICENSE', 'README.md', 'extension/CHANGELOG.md', 'extension/NOTICES.md'])
    expect(files).toContain(name);
});

test('every file that the manifest names is in it', () => {
  const manifest = readFileSync(path.join(root, 'package.json'), 'utf8');
  const named = [...manifest.matchAll(/"(?:\.\/)?((?:extension|dist)\/[\w/-]+\.\w+)"/g)].map(([, name]) => name ?? '');
  const outside = ['dist/linewright.cjs'];
  for (const name of named.filter((file) => !outside.includes(file))) expect(files).toContain(name);
});

test('every picture that the README shows is in it', () => {
  const readme = readFileSync(path.join(root, 'README.md'), 'utf8');
  const pictures = [...readme.matchAll(/!\[[^\]]+\]\(([^)]+)\)/g)].map(([, file]) => file ?? '');
  expect(pictures.length).toBeGreaterThan(0);
  // The place where extensions are published takes no SVG in a README.
  for (const file of pictures) expect(file.endsWith('.png') && files.includes(file), file).toBe(true);
});

test('no sources, tests, maps or settings of our own are in it, and it stays small', () => {
  for (const file of files) expect(file).not.toMatch(/\.(ts|map|mjs|vsix)$|^tests\/|^\.|node_modules|tsconfig|biome/);
  const size = files.reduce((sum, file) => sum + statSync(path.join(root, file)).size, 0);
  expect(size).toBeLessThan(12 * 1024 * 1024);
});
