/** What an end or a screw names, and what it finds there: the port, or the one port of a part. */
import { describe, expect, test } from 'vitest';
import { readCircuit } from '../../support/read.ts';

const parts = `
tee t { ports a, b, c: 3/8-24 inverted-flare }
drum-brake one-port { cylinder { port feed: 3/8-24 inverted-flare } }
drum-brake two-ports {
  cylinder upper { port feed: 3/8-24 inverted-flare }
  cylinder lower { port feed: 3/8-24 inverted-flare }
  run bridge { tube 3/16 in  from two-ports.upper  to two-ports.lower }
}
pressure-switch stop-switch { port thread: 1/8 NPT male taper }
pedal foot { ratio 6 }
`;

const read = (more: string) => {
  const { planned, problems } = readCircuit(parts + more);
  return {
    joints: planned.joints.filter(({ a }) => !a.startsWith('two-ports')).map(({ kind, a, b }) => `${kind} ${a} – ${b}`),
    problems,
  };
};

test.each([
  ['a port of a part', 't.a', 't.a'],
  ['a port of a sub-part', 'one-port.cylinder.feed', 'one-port.cylinder.feed'],
  ['a sub-part with one port', 'two-ports.upper', 'two-ports.upper.feed'],
  ['a part whose sub-parts have one port', 'one-port', 'one-port.cylinder.feed'],
  ['the end of another line', 'other.from', 'other.from'],
])('an end names %s', (_what, written, found) => {
  const { joints, problems } = read(`hose other { }\nrun r { tube 3/16 in  from ${written} }`);
  expect(problems).toEqual([]);
  expect(joints).toEqual([`end r.from – ${found}`]);
});

test('a part is screwed into a part', () => {
  const { joints, problems } = read('screw stop-switch into t.a');
  expect(problems).toEqual([]);
  expect(joints).toEqual(['screwed stop-switch.thread – t.a']);
});

test('a run inside a wheel brake joins two of its cylinders', () => {
  const { planned } = readCircuit(parts);
  expect(planned.joints.map(({ a, b }) => `${a} – ${b}`)).toEqual([
    'two-ports.bridge.from – two-ports.upper.feed',
    'two-ports.bridge.to – two-ports.lower.feed',
  ]);
});

describe('what cannot be found is said at the word, with what to write', () => {
  test.each([
    ['a part that is not there', 'tt.a', 'no part called “tt”', 'Write t'],
    ['a port that is not there', 'one-port.cylinder.fed', 'no port or sub-part called “fed”', 'Write feed'],
    ['a part with several ports', 'two-ports', 'has several ports', 'Write two-ports.upper.feed'],
    ['something behind a port', 't.a.b', 'is a port and holds nothing', undefined],
    ['a part without ports', 'foot', 'has no port to join', undefined],
  ])('%s', (_what, written, words, mend) => {
    const { joints, problems } = read(`run r { tube 3/16 in  from ${written} }`);
    expect(joints).toEqual([]);
    expect(problems).toMatchObject([{ code: 'unknown-name', message: expect.stringContaining(words) }]);
    expect(problems[0]?.mends?.[0]?.title).toBe(mend);
  });
});

test('an end that names nothing is open, and says so by having no joint', () => {
  const { joints, problems } = read('hose h { from: 3/8-24 female inverted-flare fixed  to t.a: 3/8-24 male washer }');
  expect(problems).toEqual([]);
  expect(joints).toEqual(['end h.to – t.a']);
});

describe('the ends of a low-pressure hose are barbs unless they say otherwise', () => {
  test('and it joins reservoir and master', () => {
    const { planned, problems } = readCircuit(`
      reservoir can { port outlet: barb 8 mm }
      master m single { bore 3/4 in  port inlet: barb 8 mm  port out: 3/8-24 inverted-flare }
      feed-hose f { from can.outlet  to m.inlet }
    `);
    expect(problems).toEqual([]);
    expect(planned.parts.at(-1)?.ports.map(({ connection }) => connection.kind)).toEqual(['barb', 'barb']);
    expect(planned.joints).toHaveLength(2);
  });
});
