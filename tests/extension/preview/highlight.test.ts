/** Cursor and picture do not chase each other. */
import { expect, test } from 'vitest';
import { asksForHighlight } from '../../../extension/preview/highlight.ts';

const one = ['selection'];

test('a person who moves the cursor by keyboard or mouse sees the part marked', () => {
  expect(asksForHighlight({ kind: 1, selections: one }, true)).toBe(true);
  expect(asksForHighlight({ kind: 2, selections: one }, true)).toBe(true);
});

test.each([
  ['a jump that came from the picture', { kind: 3, selections: one }, true],
  ['an edit', { kind: undefined, selections: one }, true],
  ['several cursors', { kind: 1, selections: [...one, ...one] }, true],
  ['a reader who does not want it', { kind: 1, selections: one }, false],
  ['a setting that is not there', { kind: 1, selections: one }, undefined],
] as const)('%s marks nothing', (_, move, marking) => {
  expect(asksForHighlight(move, marking)).toBe(false);
});
