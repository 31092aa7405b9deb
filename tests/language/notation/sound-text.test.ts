/** Sound text is never mended: statements whose words could be taken for others are read as they stand. */
import { expect, test } from 'vitest';
import { parseErrors, readCircuit } from '../../support/read.ts';

test.each([
  ['two fluids, neither with a block', 'fluid dot-4\nfluid dot-5\npedal p { ratio 6 }'],
  ['a part whose block begins on the next line', 'tee t\n{\n  ports a, b, c: 3/8-24\n}'],
  ['a block on one line', 'drum-brake b { drum 10 in cylinder { bore 1 in bleeder {} } }'],
  ['a name on the next line', 'tee\n  t\n  on frame\nvehicle v { fixed frame }'],
  ['lists over several lines', 'tee t {\n  ports\n    a,\n    b,\n    c: 3/8-24\n}'],
  [
    'a route over several lines',
    'run r {\n  tube 3/16 in\n  route\n    straight 3 in,\n    bend 90 deg,\n    straight\n      3 in\n}',
  ],
  ['comments between all words', 'tee /* a */ t /* b */ { // c\n  ports a, /* d */ b, c: /* e */ 3/8-24 // f\n}'],
  ['parts called fluid and load', 'tee fluid { ports load, b, c: 3/8-24 }\ntee load { ports a, b, c: 3/8-24 }'],
])('%s', (_what, text) => {
  expect(parseErrors(text)).toEqual([]);
  expect(readCircuit(text).problems).toEqual([]);
});
