/** A statement that a kind of part cannot have is said to be misplaced, never passed over. */
import { expect, test } from 'vitest';
import { parseErrors, readCircuit } from '../../support/read.ts';

const problemsOf = (text: string): readonly string[] => {
  expect(parseErrors(text)).toEqual([]);
  return readCircuit(text).problems.map(({ message }) => message);
};

test.each([
  ['tube 3/16 in', 'a tee has no tube; a run of tube has.'],
  ['nut 3/8-24', 'a tee has no nut; a run of tube has.'],
  ['flare double-45', 'a tee has no flare; a run of tube has.'],
  ['route straight 3 in', 'a tee has no route; a run of tube has.'],
  ['clip every 12 in', 'a tee has no clip; a run of tube has.'],
  ['from t.a', 'a tee has no from and to; it has ports.'],
  ['pushes t', 'a tee has no pushes; a brake pedal or a clutch pedal or a booster has.'],
  ['feeds t', 'a tee has no feeds; a reservoir or a compartment of a reservoir has.'],
  ['acts-on t', 'a tee has no acts-on; a parking brake has.'],
])('a tee with “%s”', (statement, message) => {
  expect(problemsOf(`tee t {\n  ports a, b, c: 3/8-24 inverted-flare\n  ${statement}\n}\n`)).toEqual([message]);
});

test.each([
  ['run', 'port a: 3/8-24 inverted-flare', 'a run of tube has no port; its ends are from and to.'],
  ['hose', 'path a', 'a brake hose has no path; its ends are from and to.'],
  ['hose', 'tube 3/16 in', 'a brake hose has no tube; a run of tube has.'],
  ['pedal', 'port a: 3/8-24 inverted-flare', 'a brake pedal has no port.'],
])('a %s with “%s”', (kind, statement, message) => {
  expect(problemsOf(`${kind} it {\n  ${statement}\n}\n`)).toEqual([message]);
});

test('a path through a port that the part does not have', () => {
  const text = 'modulator unit {\n  ports in-1, out-1: M10x1 bubble\n  path in-1, out-2\n}\n';
  expect(problemsOf(text)).toEqual(['a hydraulic modulator here has no port called “out-2”. Did you mean out-1?']);
});

test('stock of another kind gives nothing, and is one finding', () => {
  expect(problemsOf('stock line { tube 3/16 in  nut 3/8-24  bend-radius 1 in }\ntee t of line')).toEqual([
    'line is stock for a run of tube; it makes no tee.',
  ]);
});
