/** One file, two circuits: as found without what is to be fitted, as planned without what is to be removed. */
import { describe, expect, test } from 'vitest';
import type { System } from '../../../language/system/system.ts';
import { readCircuit } from '../../support/read.ts';

const text = `
pedal foot { ratio 6  pushes old-master, main }
to-remove master old-master single { bore 1 in  port out: 3/8-24 inverted-flare }
to-fit master main tandem {
  bore 7/8 in
  primary { port a: 3/8-24 inverted-flare }
  secondary { port b: 3/8-24 inverted-flare }
}
tee middle {
  ports in, left: 3/8-24 inverted-flare
  to-fit port gauge: 3/8-24 inverted-flare
  to-remove port right: 3/8-24 inverted-flare
}
run line {
  tube 3/16 in
  to-remove from old-master
  to-fit from main.secondary.b
  to middle.in
}
to-fit plug stopper { port thread: 3/8-24 male inverted-flare }
to-fit screw stopper into middle.left
drum-brake wheel {
  to-remove cylinder worn { bore 1 in  port feed: 3/8-24 inverted-flare  bleeder {} }
  to-fit cylinder new { bore 1 in  port feed: 3/8-24 inverted-flare  bleeder {} }
}
`;

const reading = readCircuit(text);
const shown = ({ parts, joints, links, partById, portById }: System) => ({
  parts: parts.map(({ name }) => name),
  insides: [...partById.keys()].filter((id) => id.startsWith('wheel.')),
  ports: [...portById.keys()].filter((id) => id.startsWith('middle.')),
  joints: joints.map(({ a, b }) => `${a} – ${b}`),
  links: links.map(({ from, to }) => `${from} – ${to}`),
});

test('the text is sound', () => {
  expect(reading.problems).toEqual([]);
});

test('as found', () => {
  expect(shown(reading.found)).toEqual({
    parts: ['foot', 'old-master', 'middle', 'line', 'wheel'],
    insides: ['wheel.worn', 'wheel.worn.bleeder'],
    ports: ['middle.in', 'middle.left', 'middle.right'],
    joints: ['line.from – old-master.out', 'line.to – middle.in'],
    links: ['foot – old-master'],
  });
  expect(reading.found.circuits.map(({ label }) => label)).toEqual(['old-master']);
});

test('as planned', () => {
  expect(shown(reading.planned)).toEqual({
    parts: ['foot', 'main', 'middle', 'line', 'stopper', 'wheel'],
    insides: ['wheel.new', 'wheel.new.bleeder'],
    ports: ['middle.in', 'middle.left', 'middle.gauge'],
    joints: ['line.from – main.secondary.b', 'line.to – middle.in', 'stopper.thread – middle.left'],
    links: ['foot – main'],
  });
  expect(reading.planned.circuits.map(({ label }) => label)).toEqual(['main primary', 'main secondary']);
});

describe('marks in marks', () => {
  test('what is in a part comes and goes with the part', () => {
    const { found, planned } = readCircuit('to-fit drum-brake w { cylinder { bore 1 in  port feed: 3/8-24 } }');
    expect([...found.partById.keys()]).toEqual([]);
    expect([...planned.partById.keys()]).toEqual(['w', 'w.cylinder']);
  });
  test('a mirrored part has a mark of its own', () => {
    const { found, planned } = readCircuit('plug a { port thread: 3/8-24 male }\nto-fit mirror a as b');
    expect(found.parts.map(({ name }) => name)).toEqual(['a']);
    expect(planned.parts.map(({ name }) => name)).toEqual(['a', 'b']);
  });
});

test('without marks both circuits are the same', () => {
  const { found, planned } = readCircuit(
    text.replace(/to-(fit|remove) (?!from)/g, '').replace('to-fit from main.secondary.b', ''),
  );
  expect(shown(found).parts).toEqual(shown(planned).parts);
});

test('one part may come and another go under two names only: one name is one part', () => {
  const { problems } = readCircuit('to-remove plug a { port t: 3/8-24 male }\nto-fit plug a { port t: M10x1 male }');
  expect(problems).toMatchObject([{ code: 'duplicate' }]);
});
