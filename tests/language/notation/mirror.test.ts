/** `mirror` makes the other side of a part: what is told of one side holds for the other, unless it says otherwise. */
import { describe, expect, test } from 'vitest';
import { readCircuit } from '../../support/read.ts';

const wheel = `
vehicle car {
  fixed body
  sprung left-upright on body travel 100 mm
  sprung right-upright on body travel 100 mm
}
tee front-tee on body {
  port in: M10x1 bubble
  port left: M10x1 bubble at (100 mm, 60 mm, 300 mm)
  port right: M10x1 bubble at (100 mm, -60 mm, 300 mm)
}
run left-line {
  from front-tee.left
  to front-left.caliper
  tube 4.75 mm wall 0.9 mm steel
  nut M10x1
  flare bubble
  route straight 100 mm, bend 90 deg radius 25 mm, turn 30 deg, bend 45 deg radius 25 mm, straight 200 mm
}
disc-brake front-left on left-upright {
  caliper {
    mounting sliding
    bore 45 mm
    port feed: M10x1 bubble at (20 mm, 590 mm, 310 mm)
    bleeder { height 400 mm }
    2026-03-02 found "stiff"
    2026-03-02 drawn 60 mL
  }
}
`;

const sides = (more: string) => {
  const reading = readCircuit(wheel + more);
  expect(reading.problems).toEqual([]);
  return reading.planned;
};

describe('the other side', () => {
  const mirrored = () => sides('mirror left-line as right-line\nmirror front-left as front-right\n');
  const right = () => mirrored().parts.find(({ name }) => name === 'front-right');

  test('has the same facts and sub-parts', () => {
    const caliper = right()?.parts[0];
    expect(caliper?.id).toBe('front-right.caliper');
    expect(caliper?.facts.get('bore')).toMatchObject({ stated: { value: 0.045 } });
    expect(caliper?.parts.map(({ id }) => id)).toEqual(['front-right.caliper.bleeder']);
  });

  test('joins the ports of its own side', () => {
    expect(mirrored().joints.map(({ a, b }) => `${a} – ${b}`)).toEqual([
      'left-line.from – front-tee.left',
      'left-line.to – front-left.caliper.feed',
      'right-line.from – front-tee.right',
      'right-line.to – front-right.caliper.feed',
    ]);
  });

  test('rides on the place of its own side', () => {
    expect(right()?.place).toBe('right-upright');
  });

  test('lies across the middle: y changes its sign, x and z stay', () => {
    expect(right()?.parts[0]?.ports[0]?.position).toMatchObject({
      point: { x: { value: 0.02 }, y: { value: -0.59 }, z: { value: 0.31 } },
    });
  });

  test('turns the other way: rotations about the tube change their sign, bends and lengths stay', () => {
    const steps = (name: string) =>
      mirrored()
        .parts.find((part) => part.name === name)
        ?.route?.steps.map((step) => (step.kind === 'bend' || step.kind === 'turn' ? step.angle : undefined));
    const [, leftBend, leftTurn] = steps('left-line') ?? [];
    const [, rightBend, rightTurn] = steps('right-line') ?? [];
    expect(leftTurn).toMatchObject({ kind: 'exact', value: expect.closeTo(Math.PI / 6, 12) });
    expect(rightTurn).toMatchObject({ kind: 'exact', value: expect.closeTo(-Math.PI / 6, 12) });
    expect(rightBend).toEqual(leftBend);
  });

  test('has no records and readings: what was found on one side says nothing of the other', () => {
    expect(right()?.parts[0]).toMatchObject({ records: [], readings: [] });
  });
});

test('a tolerance and a range turn round with their sign', () => {
  const planned = sides(`
    run a { tube 4.75 mm  length 1 m  route straight 1 m, bend 90 deg, turn 30 deg ± 2 deg, bend 90 deg, straight 1 m }
    mirror a as b
  `);
  const turn = planned.parts.find(({ name }) => name === 'b')?.route?.steps[2];
  const degrees = (value: number) => expect.closeTo((value * Math.PI) / 180, 12);
  expect(turn).toMatchObject({ angle: { value: degrees(-30), low: degrees(-32), high: degrees(-28) } });
});

test('points of a route change sides', () => {
  const planned = sides(`
    run a { tube 4.75 mm  route point (0 mm, 10 mm, 0 mm), point (0 mm, ?, 0 mm), point (0 mm, about 300 mm, 5 mm) }
    mirror a as b
  `);
  expect(planned.parts.find(({ name }) => name === 'b')?.route?.steps).toMatchObject([
    { point: { y: { kind: 'exact', value: -0.01 } } },
    { point: { y: { kind: 'unknown' } } },
    { point: { y: { kind: 'about', value: -0.3 } } },
  ]);
});

describe('what differs is said in its block', () => {
  test('a fact of a sub-part takes the place of the mirrored one, the rest stays', () => {
    const planned = sides('mirror front-left as front-right { caliper { bore 48 mm  2026-03-05 keep } }\n');
    const caliper = planned.parts.find(({ name }) => name === 'front-right')?.parts[0];
    expect(caliper?.facts.get('bore')).toMatchObject({ stated: { value: 0.048 } });
    expect(caliper?.facts.get('mounting')).toMatchObject({ word: 'sliding' });
    expect(caliper?.records).toMatchObject([{ date: '2026-03-05', verb: 'keep' }]);
  });

  test('an end goes elsewhere, the other end stays', () => {
    const planned = sides(
      'tee spare { ports a, b, c: M10x1 bubble }\nmirror front-left as front-right\nmirror left-line as right-line { from spare.a }\n',
    );
    expect(planned.joints.filter(({ a }) => a.startsWith('right-line')).map(({ b }) => b)).toEqual([
      'spare.a',
      'front-right.caliper.feed',
    ]);
  });

  test('a place of its own', () => {
    const planned = sides('mirror front-left as front-right on body\n');
    expect(planned.parts.find(({ name }) => name === 'front-right')?.place).toBe('body');
  });
});

describe('names of sides', () => {
  test.each([
    ['left', 'right'],
    ['lh', 'rh'],
    ['fl', 'fr'],
    ['rl', 'rr'],
    ['lf', 'rf'],
    ['nearside', 'offside'],
  ])('%s is across from %s', (one, other) => {
    const text = (a: string, b: string) => `
      tee t { ports x-${a}, x-${b}, in: M10x1 bubble }
      run line-${a} { tube 4.75 mm  from t.x-${a} }
      mirror line-${a} as line-${b}
    `;
    for (const [a, b] of [
      [one, other],
      [other, one],
    ] as const) {
      const { planned, problems } = readCircuit(text(a, b));
      expect(problems).toEqual([]);
      expect(planned.joints.map((joint) => joint.b)).toEqual([`t.x-${a}`, `t.x-${b}`]);
    }
  });

  test('an image with a name of its own is found by its mirror statement', () => {
    const { planned, problems } = readCircuit(`
      drum-brake near { cylinder { port feed: M10x1 bubble } }
      mirror near as far
      run one { tube 4.75 mm  to near }
      mirror one as two
    `);
    expect(problems).toEqual([]);
    expect(planned.joints.map(({ a, b }) => `${a} – ${b}`)).toEqual([
      'one.to – near.cylinder.feed',
      'two.to – far.cylinder.feed',
    ]);
  });
});

test('the image of an image is the first side again', () => {
  const { planned, problems } = readCircuit(`
    plug left { port thread: M10x1 male bubble at (0 mm, 200 mm, 0 mm) }
    mirror left as right
    mirror right as left-again
  `);
  expect(problems).toEqual([]);
  expect(planned.parts.map(({ ports: [port] }) => port?.position)).toMatchObject([
    { point: { y: { value: 0.2 } } },
    { point: { y: { value: -0.2 } } },
    { point: { y: { value: 0.2 } } },
  ]);
});

test.each([
  ['nothing', 'mirror ghost as right'],
  ['itself', 'mirror loop as loop'],
  ['each other', 'mirror a as b\nmirror b as a'],
])('mirroring %s is refused', (_what, text) => {
  const { problems, planned } = readCircuit(text);
  expect(planned.parts).toEqual([]);
  expect(new Set(problems.map(({ code }) => code))).toEqual(new Set(['unknown-name']));
});
