/** Everyone whose work is in the packaged files is named with their licence. `UPDATE=1` writes the notices anew. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const noticesFile = path.join(root, 'extension/NOTICES.md');

interface Packaged {
  readonly name: string;
  readonly version: string;
  readonly license: string;
}

const head = `# Third-party notices

The files in \`dist/\` contain the work of others, with thanks. Each is under the licence given here. The layout library
\`elkjs\` is in a file of its own, \`dist/elk.cjs\`, and in the browser's server, unchanged; its source is published with
the package of that name and version in the npm registry.
`;

/** What the last build put into \`dist/\`. */
function packaged(): { readonly folder: string; readonly about: Packaged }[] {
  const folders: string[] = JSON.parse(readFileSync(path.join(root, 'dist/packages.json'), 'utf8'));
  return folders.map((folder) => ({
    folder,
    about: JSON.parse(readFileSync(path.join(root, folder, 'package.json'), 'utf8')),
  }));
}

function licenceOf(folder: string): string {
  const names = readdirSync(path.join(root, folder)).filter((name) => /^licen[cs]e(\.(md|txt))?$/i.test(name));
  const [name] = names;
  return name === undefined
    ? ''
    : readFileSync(path.join(root, folder, name), 'utf8')
        .replaceAll('\r\n', '\n')
        .trim();
}

function notices(): string {
  const parts = packaged().map(({ folder, about }) => {
    const text = licenceOf(folder).replace(/^/gm, '    ').replace(/ +$/gm, '');
    return `## ${about.name} ${about.version}\n\nLicence: ${about.license}\n\n${text}\n`;
  });
  return [head, ...new Set(parts)].join('\n');
}

test('the notices are those of what is packaged', () => {
  if (process.env['UPDATE'] === '1') writeFileSync(noticesFile, notices());
  expect(readFileSync(noticesFile, 'utf8')).toBe(notices());
});

test('every licence is one that we may pass on, and its text is there', () => {
  const known = new Set([
    'MIT',
    'ISC',
    'BSD-2-Clause',
    'BSD-3-Clause',
    'Apache-2.0',
    '0BSD',
    'BlueOak-1.0.0',
    'EPL-2.0 OR GPL-3.0-or-later',
  ]);
  expect(packaged().length).toBeGreaterThan(5);
  for (const { folder, about } of packaged()) {
    expect(known, about.name).toContain(about.license);
    expect(licenceOf(folder), about.name).not.toBe('');
  }
});
