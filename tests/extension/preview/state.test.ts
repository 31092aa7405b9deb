/** What a preview remembers: written and read again, and never believed blindly. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { freshState, readState } from '../../../extension/preview/state.ts';

test('a state comes back as it was stored', () => {
  const state = {
    ...freshState('file:///van.circuit', 'found'),
    view: { scale: 2, x: -3, y: 4 },
    selected: 'main',
    placement: '{}',
  };
  expect(readState(JSON.parse(JSON.stringify(state)))).toEqual(state);
});

test.each([
  ['nothing', undefined],
  ['another version', { ...freshState('file:///a', 'planned'), version: 2 }],
  ['no document', { version: 1, circuit: 'planned', list: 'open' }],
  ['an unknown circuit', { version: 1, uri: 'file:///a', circuit: 'dreamt', list: 'open' }],
])('%s is refused', (_, stored) => {
  expect(readState(stored)).toBeUndefined();
});

test('a view that would show nothing is left out, the rest is kept', () => {
  for (const view of [{ scale: 0, x: 0, y: 0 }, { scale: Number.NaN, x: 0, y: 0 }, { scale: 1, x: '0', y: 0 }, 'all']) {
    expect(readState({ ...freshState('file:///a', 'planned'), view })).toEqual(freshState('file:///a', 'planned'));
  }
});

test('anything at all can be offered without a throw', () => {
  fc.assert(fc.property(fc.anything(), (stored) => void readState(stored)));
});
