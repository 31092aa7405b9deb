/** Where a saved picture is proposed to go. */
import { expect, test } from 'vitest';
import { URI } from 'vscode-uri';
import { pictureFile } from '../../../extension/preview/picture-file.ts';

const van = URI.parse('file:///garage/van.circuit');
const at = (source: Parameters<typeof pictureFile<URI>>[0], folder?: URI) => pictureFile(source, folder).toString();

test('beside the circuit file, named after it', () => {
  expect(at({ uri: van, circuit: 'planned', format: 'svg' })).toBe('file:///garage/van.svg');
  expect(at({ uri: van, circuit: 'found', format: 'png' })).toBe('file:///garage/van-as-found.png');
});

test('in the folder of the window while the circuit has no file', () => {
  const untitled = URI.from({ scheme: 'untitled', path: 'Untitled-1' });
  expect(at({ uri: untitled, circuit: 'planned', format: 'svg' }, URI.parse('file:///garage'))).toBe(
    'file:///garage/Untitled-1.svg',
  );
});

test('on the same virtual disk', () => {
  const uri = URI.parse('vscode-vfs://host/repo/van.circuit');
  expect(at({ uri, circuit: 'planned', format: 'png' })).toBe('vscode-vfs://host/repo/van.png');
});
