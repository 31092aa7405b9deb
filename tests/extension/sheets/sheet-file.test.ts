/** Where a sheet that is saved is proposed to go, and in which format. */
import { expect, test } from 'vitest';
import { URI } from 'vscode-uri';
import { formatOf, sheetFile } from '../../../extension/sheets/sheet-file.ts';

const lines = { sheet: 'lines', circuit: 'planned' } as const;

test('beside its circuit file, under the name of both', () => {
  const uri = URI.file('/garage/orchard van.circuit');
  expect(sheetFile({ uri, ...lines }, undefined).path).toBe('/garage/orchard van-lines.html');
  expect(sheetFile({ uri, ...lines, circuit: 'found' }, undefined).path).toBe(
    '/garage/orchard van-lines-as-found.html',
  );
});

test('a text without a file goes into the folder of the window', () => {
  const uri = URI.parse('untitled:Untitled-1');
  expect(sheetFile({ uri, ...lines }, URI.file('/garage')).toString()).toBe('file:///garage/Untitled-1-lines.html');
});

test('the ending is the format', () => {
  expect(formatOf('/a/b.html')).toBe('html');
  expect(formatOf('/a/b.HTM')).toBe('html');
  expect(formatOf('/a/b.md')).toBe('markdown');
  expect(formatOf('/a/b.csv')).toBe('csv');
  for (const path of ['/a/b', '/a.html/b', '/a/b.pdf', '/a/b.constructor'])
    expect(formatOf(path), path).toBeUndefined();
});
