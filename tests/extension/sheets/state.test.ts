/** What a sheet's page remembers is checked before it is used. */
import { expect, test } from 'vitest';
import { readSheetState, sameSheet } from '../../../extension/sheets/state.ts';

const kept = { version: 1, uri: 'file:///van.circuit', sheet: 'lines', circuit: 'planned', scroll: 420 } as const;

test('what was kept comes back', () => {
  expect(readSheetState({ ...kept })).toEqual(kept);
  expect(readSheetState(JSON.parse(JSON.stringify(kept)))).toEqual(kept);
});

test.each([
  ['nothing', undefined],
  ['a text', 'lines'],
  ['another version', { ...kept, version: 2 }],
  ['no file', { ...kept, uri: undefined }],
  ['a sheet that there is not', { ...kept, sheet: 'toString' }],
  ['a circuit that there is not', { ...kept, circuit: 'dreamt' }],
])('%s is no state', (_, stored) => {
  expect(readSheetState(stored)).toBeUndefined();
});

test.each([undefined, Number.NaN, -3, Number.POSITIVE_INFINITY, '12'])('a place of %s is the top', (scroll) => {
  expect(readSheetState({ ...kept, scroll })?.scroll).toBe(0);
});

test('a sheet is the same whichever circuit it shows', () => {
  expect(sameSheet(kept, { ...kept, circuit: 'found' })).toBe(true);
  expect(sameSheet(kept, { ...kept, sheet: 'parts' })).toBe(false);
  expect(sameSheet(kept, { ...kept, uri: 'file:///car.circuit' })).toBe(false);
});
