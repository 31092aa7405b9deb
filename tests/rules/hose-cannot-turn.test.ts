import { expect, it } from 'vitest';
import { findingsOf } from './joint.ts';

const line = 'stock line { tube 3/16 in steel  nut 3/8-24  flare double-45 }\n';
const parts = `tee t { ports feed, left, right: 3/8-24 inverted-flare }
drum-brake left { cylinder { port feed: 3/8-24 inverted-flare  bleeder {} } }
adapter nipple { port shank: 3/8-24 male inverted-flare  port nose: 3/8-24 male inverted-flare }
`;
const fixed = '3/8-24 male inverted-flare fixed';

/** A hose with this start, whose other end is screwed into the wheel cylinder and turns with the hose. */
const said = (from: string, more = '') =>
  findingsOf(
    'hose-cannot-turn',
    `${line}${parts}hose h { length 300 mm  from ${from}  to left.cylinder.feed: ${fixed} }\n${more}`,
  ).map(({ severity }) => severity);

it('two ends that the file calls fixed are an error, a male end that does not say is a warning', () => {
  expect(said(`t.left: ${fixed}`)).toEqual(['error']);
  expect(said('t.left: 3/8-24 male inverted-flare')).toEqual(['warning']);
});

it.each([
  ['a swivel', 't.left: 3/8-24 male inverted-flare swivel', ''],
  ['a banjo', 't.left: banjo 10 mm', ''],
  ['an end whose gender nobody has said', 't.left: 3/8-24', ''],
  ['an end that leads nowhere yet', `: ${fixed}`, ''],
  [
    'a female end for the nut of a tube',
    ': 3/8-24 female inverted-flare fixed',
    'run r of line { from t.left to h.from }\n',
  ],
  [
    'a female swivel nut over a nose',
    'nose.out: 3/8-24 female 37-degree',
    'union nose { ports out, in: 3/8-24 37-degree }\n',
  ],
])('%s at one end lets the hose hang straight', (_, from, more) => expect(said(from, more)).toEqual([]));

it('a female end that is fixed turns with the hose on a male thread that is fixed too', () => {
  expect(said('nipple.nose: 3/8-24 female inverted-flare fixed', 'screw nipple.shank into t.left\n')).toEqual([
    'error',
  ]);
});

it('a loose union can be turned onto the hose when a tube is at its other end', () => {
  const union = 'union u { ports a, b: 3/8-24 inverted-flare }\n';
  expect(said(`u.a: ${fixed}`, `${union}run r of line { from t.left to u.b }\n`)).toEqual([]);
  expect(said(`u.a: ${fixed}`, `${union}hose g { length 200 mm  from u.b: ${fixed} }\n`)).toEqual(['error']);
});

it('says which two joints, what it does and what to take', () => {
  const [finding] = findingsOf(
    'hose-cannot-turn',
    `${parts}hose h { length 300 mm  from t.left: ${fixed}  to left.cylinder.feed: ${fixed} }`,
  );
  expect(finding?.subject).toBe('h');
  expect(finding?.message).toContain('screwed into t.left and when it is screwed into left.cylinder.feed');
  expect(finding?.message).toContain('Take a hose with a swivel, a banjo, or a female end for a tube nut at one end.');
});
