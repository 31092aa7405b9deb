/** Which file a `use` means, and that none outside the open folders is ever named. */
import fc from 'fast-check';
import { URI } from 'langium';
import { expect, test } from 'vitest';
import { isWithin, targetOf } from '../../../language/workspace/boundaries.ts';

const from = URI.parse('file:///garage/van/van.circuit');
const garage = [URI.parse('file:///garage')];
const outcome = (path: string, folders = garage): string => {
  const target = targetOf(from, path, folders);
  return 'uri' in target ? target.uri.path : target.failure;
};

test.each([
  ['stock.circuit', '/garage/van/stock.circuit'],
  ['./stock.circuit', '/garage/van/stock.circuit'],
  ['parts/stock.circuit', '/garage/van/parts/stock.circuit'],
  ['../stock.circuit', '/garage/stock.circuit'],
  ['../../stock.circuit', 'outside'],
  ['../../garage/stock.circuit', '/garage/stock.circuit'],
  ['../../../../../stock.circuit', 'outside'],
  ['van.circuit', 'itself'],
  ['../van/van.circuit', 'itself'],
  ['', 'not-relative'],
  ['/garage/stock.circuit', 'not-relative'],
  ['C:\\stock.circuit', 'not-relative'],
  ['\\\\server\\stock.circuit', 'not-relative'],
  ['~/stock.circuit', 'not-relative'],
  ['file:///garage/stock.circuit', 'not-relative'],
  ['https://example.org/stock.circuit', 'not-relative'],
  ['%2e%2e/%2e%2e/stock.circuit', '/garage/van/%2e%2e/%2e%2e/stock.circuit'],
])('%s → %s', (path, expected) => {
  expect(outcome(path)).toBe(expected);
});

test('a file in no open folder is confined to its own', () => {
  expect(outcome('stock.circuit', [])).toBe('/garage/van/stock.circuit');
  expect(outcome('../stock.circuit', [])).toBe('outside');
});

test('a folder whose name begins alike is another folder', () => {
  expect(isWithin(URI.parse('file:///garage-two/a.circuit'), URI.parse('file:///garage'))).toBe(false);
  expect(isWithin(URI.parse('vscode-vfs://one/garage/a.circuit'), URI.parse('vscode-vfs://two/garage'))).toBe(false);
});

test('an unsaved document has no place from which a path could lead', () => {
  expect(targetOf(URI.parse('untitled:Untitled-1'), 'stock.circuit', garage)).toEqual({ failure: 'missing' });
});

test('no path leads outside, whatever it is made of', () => {
  const step = fc.constantFrom('..', '.', '', 'a', 'van', '%2e%2e', 'garage', '...', ' ');
  fc.assert(
    fc.property(fc.array(step, { maxLength: 9 }), (steps) => {
      const target = targetOf(from, steps.join('/'), garage);
      if ('uri' in target) expect(isWithin(target.uri, URI.parse('file:///garage'))).toBe(true);
    }),
  );
});
