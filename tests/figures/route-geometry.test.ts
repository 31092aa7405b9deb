import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Development, developRoute, type RouteItem } from '../../language/figures/route-geometry.ts';
import { type RouteProblem, sayRouteProblem } from '../../language/figures/route-problem.ts';
import type { Dimension, Si } from '../../language/quantity/dimension.ts';
import { si } from '../../language/quantity/dimension.ts';
import { type Estimate, exactly } from '../../language/quantity/estimate.ts';
import { degrees, inch, mm } from '../../language/standards/written-units.ts';

const straight = (length: Si<'length'>): RouteItem => ({ kind: 'straight', length: exactly(length) });
const corner = (length: Si<'length'>): RouteItem => ({ kind: 'corner', length: exactly(length) });
const turn = (angle: number): RouteItem => ({ kind: 'turn', angle: exactly(degrees(angle)) });
const bend = (angle: number, radius?: Si<'length'>): RouteItem =>
  radius === undefined
    ? { kind: 'bend', angle: exactly(degrees(angle)) }
    : { kind: 'bend', angle: exactly(degrees(angle)), radius: exactly(radius) };
const coil = (turns: number, diameter: Si<'length'>): RouteItem => ({
  kind: 'coil',
  turns: exactly(si('number', turns)),
  diameter: exactly(diameter),
});
const at = (x: number, y: number, z: number, radius?: number): RouteItem => ({
  kind: 'point',
  point: [exactly(mm(x)), exactly(mm(y)), exactly(mm(z))],
  ...(radius === undefined ? {} : { radius: exactly(mm(radius)) }),
});

const millimetres = (length: Estimate<'length'> | undefined) =>
  length === undefined ? undefined : length.value * 1000;
const inDegrees = (angle: Estimate<'angle'> | undefined) =>
  angle === undefined ? undefined : (angle.value * 180) / Math.PI;
const kinds = ({ problems }: Development) => problems.map(({ kind, item }) => `${kind} at ${item}`);

describe('a route in straights and bends', () => {
  it('is its straights and its arcs', () => {
    const route = developRoute([straight(mm(140)), bend(90, mm(16)), turn(90), bend(45, mm(16)), straight(mm(420))]);
    expect(millimetres(route.centrelineLength)).toBeCloseTo(140 + 16 * Math.PI * 0.75 + 420, 9);
    expect(route.bends.map(({ start }) => millimetres(start))).toEqual([
      expect.closeTo(140, 9),
      expect.closeTo(140 + 8 * Math.PI, 9),
    ]);
    expect(route.bends.map(({ rotation }) => inDegrees(rotation))).toEqual([0, expect.closeTo(90, 9)]);
    expect(route.straights.map(millimetres)).toEqual([expect.closeTo(140, 9), 0, expect.closeTo(420, 9)]);
    expect(route.problems).toEqual([]);
  });

  it('takes a coil as its turns of centre line, and adds what stands beside it', () => {
    const route = developRoute([
      straight(mm(50)),
      coil(2.5, mm(40)),
      straight(mm(70)),
      bend(90, mm(15)),
      straight(mm(10)),
    ]);
    expect(millimetres(route.bends[0]?.start)).toBeCloseTo(50 + 100 * Math.PI + 70, 9);
    expect(millimetres(route.coils[0]?.length)).toBeCloseTo(100 * Math.PI, 9);
    expect(millimetres(route.straights[0])).toBeCloseTo(120, 9);
  });

  it('adds turns that follow one another, and turns across a straight', () => {
    const route = developRoute([bend(90, mm(15)), turn(30), straight(mm(80)), turn(40), bend(20, mm(15))]);
    expect(inDegrees(route.bends[1]?.rotation)).toBeCloseTo(70, 9);
  });
});

describe('a route in corner lengths', () => {
  // A workshop note on bending 1/4 in tube with a lever bender: a closed rectangle of 7 in by 5 in at 5/8 in has
  // straights of 5.75 in and 3.75 in; the loop is then 22.927 in long.
  it('of the published rectangle has its straights and its length', () => {
    const right = () => bend(90, inch(5 / 8));
    const loop = developRoute([
      corner(inch(3.5)),
      right(),
      corner(inch(5)),
      right(),
      corner(inch(7)),
      right(),
      corner(inch(5)),
      right(),
      corner(inch(3.5)),
    ]);
    const inches = loop.straights.map((length) => (length?.value ?? 0) / 0.0254);
    expect(inches[1]).toBeCloseTo(3.75, 9);
    expect(inches[2]).toBeCloseTo(5.75, 9);
    expect((inches[0] ?? 0) + (inches[4] ?? 0)).toBeCloseTo(5.75, 9);
    expect((loop.centrelineLength?.value ?? 0) / 0.0254).toBeCloseTo(22.927, 3);
  });

  it('is the same route as in straights, when each corner length is a setback longer', () => {
    const lengths = fc.double({ min: 0.1, max: 1, noNaN: true });
    fc.assert(
      fc.property(lengths, lengths, lengths, fc.double({ min: 5, max: 130, noNaN: true }), (a, b, c, angle) => {
        const back = 0.016 * Math.tan((angle * Math.PI) / 360);
        const one = bend(angle, mm(16));
        const inStraights = developRoute(
          [a, one, b, one, c].map((x) => (typeof x === 'number' ? straight(si('length', x)) : x)),
        );
        const inCorners = developRoute([
          corner(si('length', a + back)),
          one,
          corner(si('length', b + 2 * back)),
          one,
          corner(si('length', c + back)),
        ]);
        expect(inCorners.centrelineLength?.value).toBeCloseTo(inStraights.centrelineLength?.value ?? 0, 9);
        expect(inCorners.bends[1]?.start?.value).toBeCloseTo(inStraights.bends[1]?.start?.value ?? 0, 9);
      }),
    );
  });

  it('may meet straights across a bend, but not within one stretch', () => {
    const mixed = developRoute([corner(mm(100)), bend(90, mm(15)), straight(mm(60))]);
    expect(millimetres(mixed.centrelineLength)).toBeCloseTo(85 + 7.5 * Math.PI + 60, 9);
    const muddled = developRoute([corner(mm(100)), straight(mm(60)), bend(90, mm(15)), straight(mm(60))]);
    expect(kinds(muddled)).toEqual(['corner-with-straight at 1']);
    expect(muddled.centrelineLength).toBeUndefined();
  });

  it('with corners too near for their bends says by how much', () => {
    const route = developRoute([corner(mm(100)), bend(90, mm(15)), corner(mm(25)), bend(90, mm(15)), corner(mm(100))]);
    const [problem] = route.problems;
    expect(kinds(route)).toEqual(['bends-overlap at 2']);
    expect(say(problem)).toContain('25 mm from corner to corner');
    expect(say(problem)).toContain('overlap by 5 mm');
    expect(route.centrelineLength).toBeUndefined();
    expect(millimetres(route.bends[0]?.start)).toBeCloseTo(85, 9);
  });

  it('with corners just far enough leaves no straight and no complaint', () => {
    const route = developRoute([corner(mm(100)), bend(90, mm(15)), corner(mm(30)), bend(90, mm(15)), corner(mm(100))]);
    expect(route.problems).toEqual([]);
    expect(millimetres(route.straights[1])).toBeCloseTo(0, 9);
  });
});

describe('what is not known', () => {
  it('is named, and what does not need it is still given', () => {
    const route = developRoute([
      straight(mm(100)),
      bend(90),
      straight(mm(50)),
      bend(45, mm(15)),
      { kind: 'straight', length: undefined },
    ]);
    expect(route.missing).toEqual([
      { item: 1, what: 'radius' },
      { item: 4, what: 'length' },
    ]);
    expect(millimetres(route.bends[0]?.start)).toBeCloseTo(100, 9);
    expect(route.bends[0]).toMatchObject({ arc: undefined, radiusFrom: 'nowhere' });
    expect(route.bends[1]?.start).toBeUndefined();
    expect(millimetres(route.bends[1]?.arc)).toBeCloseTo((15 * Math.PI) / 4, 9);
    expect(route.centrelineLength).toBeUndefined();
  });

  it('a radius for all bends stands in, and the bend says so', () => {
    const route = developRoute([straight(mm(100)), bend(90), straight(mm(50))], { bendRadius: exactly(mm(16)) });
    expect(route.bends[0]?.radiusFrom).toBe('default');
    expect(millimetres(route.centrelineLength)).toBeCloseTo(150 + 8 * Math.PI, 9);
  });

  it('an unknown coordinate is named by its point, not by the lengths beside it', () => {
    const vague: RouteItem = {
      kind: 'point',
      point: [exactly(mm(100)), undefined, exactly(mm(0))],
      radius: exactly(mm(15)),
    };
    const route = developRoute([at(0, 0, 0), vague, at(100, 200, 0)]);
    expect(route.missing).toEqual([{ item: 1, what: 'place' }]);
    expect(route.centrelineLength).toBeUndefined();
  });

  it('an unknown turn leaves the length alone', () => {
    const route = developRoute([bend(90, mm(15)), { kind: 'turn', angle: undefined }, bend(90, mm(15))]);
    expect(route.missing).toEqual([{ item: 1, what: 'angle' }]);
    expect(millimetres(route.centrelineLength)).toBeCloseTo(15 * Math.PI, 9);
    expect(route.bends[1]?.rotation).toBeUndefined();
  });

  it('an about or an assumption marks all that rests on it', () => {
    const rough: RouteItem = { kind: 'straight', length: { ...exactly(mm(300)), about: true } };
    const guess = { ...exactly(mm(16)), assumed: true };
    const route = developRoute([straight(mm(100)), bend(90), rough], { bendRadius: guess });
    expect(route.bends[0]?.start).toMatchObject({ about: false, assumed: false });
    expect(route.centrelineLength).toMatchObject({ about: true, assumed: true });
  });
});

describe('tolerances', () => {
  const within = (real: number, estimate: Estimate | undefined) => {
    expect(real).toBeGreaterThanOrEqual((estimate?.low ?? Number.NaN) - 1e-9);
    expect(real).toBeLessThanOrEqual((estimate?.high ?? Number.NaN) + 1e-9);
  };
  const share = fc.double({ min: -1, max: 1, noNaN: true });

  it('of straights add up', () => {
    const near = (length: number, slack: number): RouteItem => ({
      kind: 'straight',
      length: { ...exactly(mm(length)), low: mm(length - slack), high: mm(length + slack) },
    });
    const route = developRoute([near(100, 2), bend(90, mm(15)), near(200, 3)]);
    expect((route.centrelineLength?.low ?? 0) * 1000).toBeCloseTo(295 + 7.5 * Math.PI, 9);
    expect((route.centrelineLength?.high ?? 0) * 1000).toBeCloseTo(305 + 7.5 * Math.PI, 9);
  });

  it('of corner lengths, radius and angle hold whatever the tube turns out to be', () => {
    const toleranced = <D extends Dimension>(dimension: D, value: number, slack: number): Estimate<D> => ({
      ...exactly(si(dimension, value)),
      low: si(dimension, value - slack),
      high: si(dimension, value + slack),
    });
    const route = (leg: (n: number) => Estimate<'length'>, angle: Estimate<'angle'>, radius: Estimate<'length'>) =>
      developRoute([
        { kind: 'corner', length: leg(0.2) },
        { kind: 'bend', angle, radius },
        { kind: 'corner', length: leg(0.3) },
        { kind: 'bend', angle, radius },
        { kind: 'straight', length: leg(0.1) },
      ]);
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 2.2, noNaN: true }), share, share, share, (angle, legs, turned, wide) => {
        const stated = route(
          (length) => toleranced('length', length, 0.004),
          toleranced('angle', angle, 0.1),
          toleranced('length', 0.016, 0.002),
        );
        const real = route(
          (length) => exactly(si('length', length + 0.004 * legs)),
          exactly(si('angle', angle + 0.1 * turned)),
          exactly(si('length', 0.016 + 0.002 * wide)),
        );
        within(real.centrelineLength?.value ?? Number.NaN, stated.centrelineLength);
        within(real.bends[1]?.start?.value ?? Number.NaN, stated.bends[1]?.start);
        within(real.straights[1]?.value ?? Number.NaN, stated.straights[1]);
      }),
    );
  });

  it('of points hold for lengths and bends wherever the points turn out to be', () => {
    const corners = [
      [0, 0, 0],
      [300, 0, 0],
      [300, 250, 40],
      [600, 300, 200],
    ] as const;
    const slack = 4;
    const route = (coordinate: (value: number, n: number) => Estimate<'length'>) =>
      developRoute(
        corners.map(([x, y, z], n) => ({
          kind: 'point' as const,
          point: [coordinate(x, 3 * n), coordinate(y, 3 * n + 1), coordinate(z, 3 * n + 2)] as const,
          ...(n === 0 || n === 3 ? {} : { radius: exactly(mm(20)) }),
        })),
      );
    const stated = route((value) => ({ ...exactly(mm(value)), low: mm(value - slack), high: mm(value + slack) }));
    expect(stated.centrelineLength?.about).toBe(false);
    fc.assert(
      fc.property(fc.array(share, { minLength: 12, maxLength: 12 }), (shares) => {
        const real = route((value, n) => exactly(mm(value + slack * (shares[n] ?? 0))));
        within(real.centrelineLength?.value ?? Number.NaN, stated.centrelineLength);
        for (const [index, { angle }] of real.bends.entries())
          within(angle?.value ?? Number.NaN, stated.bends[index]?.angle);
      }),
    );
  });

  it('of points so loose that the bend might be anything leave an about', () => {
    const loose = (value: number): Estimate<'length'> => ({
      ...exactly(mm(value)),
      low: mm(value - 80),
      high: mm(value + 80),
    });
    const points: readonly RouteItem[] = [
      at(0, 0, 0),
      { kind: 'point', point: [loose(100), loose(0), loose(0)], radius: exactly(mm(15)) },
      at(100, 100, 0),
    ];
    expect(developRoute(points).centrelineLength?.about).toBe(true);
  });
});

function say(problem: RouteProblem | undefined): string {
  if (problem === undefined) return '';
  return sayRouteProblem(problem, {
    length: (value) => `${Math.round(value * 1e4) / 10} mm`,
    angle: (value) => `${Math.round((value * 180) / Math.PI)} deg`,
  });
}

describe('bad routes', () => {
  const rest = [bend(90, mm(15)), straight(mm(50))];

  it.each<[string, readonly RouteItem[], string, string]>([
    ['none at all', [], 'empty-route at 0', 'says nothing of a length'],
    ['only a turn', [turn(90)], 'turn-without-two-bends at 0', 'nothing to turn against'],
    ['a straight of nothing', [straight(mm(0)), ...rest], 'zero-length at 0', 'is zero'],
    ['a negative straight', [straight(mm(-5)), ...rest], 'negative-length at 0', 'length of -5 mm cannot be'],
    ['a negative radius', [straight(mm(50)), bend(90, mm(-15))], 'radius-not-positive at 1', 'radius of -15 mm'],
    [
      'a bend of 400°',
      [straight(mm(50)), bend(400, mm(15))],
      'more-than-a-turn at 1',
      'bend of 400 deg goes more than once round',
    ],
    ['a bend of −30°', [straight(mm(50)), bend(-30, mm(15))], 'negative-angle at 1', 'bend of -30 deg'],
    ['a bend of 0°', [straight(mm(50)), bend(0, mm(15))], 'no-angle at 1', 'no angle is straight tube'],
    [
      'a hairpin with a corner',
      [corner(mm(50)), bend(180, mm(15)), straight(mm(9))],
      'corner-at-hairpin at 1',
      'no corner to measure to',
    ],
    ['a coil of nothing', [straight(mm(50)), coil(0, mm(40))], 'empty-coil at 1', 'more than zero'],
    ['a turn at the start', [turn(45), ...rest], 'turn-without-two-bends at 0', 'nothing to turn against'],
    ['a turn at the end', [...rest, turn(45)], 'turn-without-two-bends at 2', 'nothing to turn against'],
    ['one point', [at(0, 0, 0)], 'one-point at 0', 'One point makes no route'],
    ['points and lengths', [at(0, 0, 0), straight(mm(50))], 'points-with-lengths at 1', 'mixes points'],
    ['a point twice', [at(0, 0, 0), at(0, 0, 0), at(50, 0, 0)], 'same-point at 1', 'same as the one before'],
    ['there and back', [at(0, 0, 0), at(90, 0, 0, 9), at(20, 0, 0)], 'doubles-back at 1', 'back the way it came'],
    [
      'a radius where it runs straight',
      [at(0, 0, 0), at(50, 0, 0, 15), at(99, 0, 0)],
      'radius-without-bend at 1',
      'no bend',
    ],
    ['a radius at the end', [at(0, 0, 0), at(50, 0, 0, 15)], 'radius-at-end at 1', 'end of a route'],
    [
      'bends that overlap',
      [at(0, 0, 0), at(20, 0, 0, 15), at(20, 20, 0, 15), at(40, 20, 0)],
      'bends-overlap at 2',
      'overlap by 10 mm',
    ],
  ])('%s', (_name, items, problem, words) => {
    const route = developRoute(items);
    expect(kinds(route)).toContain(problem);
    expect(say(route.problems.find(({ kind, item }) => `${kind} at ${item}` === problem))).toContain(words);
  });

  it('a hairpin between straights is an ordinary bend', () => {
    const route = developRoute([straight(mm(50)), bend(180, mm(15)), straight(mm(50))]);
    expect(route.problems).toEqual([]);
    expect(millimetres(route.centrelineLength)).toBeCloseTo(100 + 15 * Math.PI, 9);
  });

  it('points in a line with no radius are one straight', () => {
    const route = developRoute([at(0, 0, 0), at(50, 50, 0), at(100, 100, 0)]);
    expect(route).toMatchObject({ bends: [], missing: [], problems: [] });
    expect(millimetres(route.centrelineLength)).toBeCloseTo(100 * Math.SQRT2, 9);
  });

  it('far larger than any vehicle are refused before a number overflows', () => {
    const route = developRoute([straight(mm(50)), bend(360, si('length', 2.9e307)), straight(mm(50))]);
    expect(route).toMatchObject({ centrelineLength: undefined, problems: [{ kind: 'beyond-reason', item: 1 }] });
    expect(developRoute([at(0, 0, 0), at(0, 1e300, 0)]).problems).toMatchObject([{ kind: 'beyond-reason', item: 1 }]);
  });

  it('never throw and never give a number that is none', () => {
    const odd = fc.oneof(
      fc.double(),
      fc.constantFrom(0, -1, Number.NaN, Number.POSITIVE_INFINITY, Math.PI, 2 * Math.PI),
    );
    const estimate = <D extends Dimension>(dimension: D) =>
      fc.option(
        odd.map((value) => exactly(si(dimension, value))),
        { nil: undefined },
      );
    const point = fc.tuple(estimate('length'), estimate('length'), estimate('length'));
    const item: fc.Arbitrary<RouteItem> = fc.oneof(
      fc.record({ kind: fc.constantFrom('straight' as const, 'corner' as const), length: estimate('length') }),
      fc.record({ kind: fc.constant('bend' as const), angle: estimate('angle'), radius: estimate('length') }),
      fc.record({ kind: fc.constant('turn' as const), angle: estimate('angle') }),
      fc.record({ kind: fc.constant('coil' as const), turns: estimate('number'), diameter: estimate('length') }),
    );
    const points = fc.array(fc.record({ kind: fc.constant('point' as const), point, radius: estimate('length') }));
    fc.assert(
      fc.property(
        fc.oneof(
          fc.array(item),
          points,
          fc.array(
            fc.oneof(
              item,
              points.map(([first]) => first ?? at(0, 0, 0)),
            ),
          ),
        ),
        (items) => {
          const route = developRoute(items);
          const given = [
            route.centrelineLength,
            ...route.straights,
            ...route.bends.flatMap((each) => [each.start, each.arc, each.angle]),
          ];
          for (const each of given) {
            if (each === undefined) continue;
            expect([each.low, each.value, each.high].every(Number.isFinite)).toBe(true);
          }
          for (const problem of route.problems) expect(say(problem)).not.toMatch(/NaN|undefined/);
          if (route.centrelineLength === undefined)
            expect(route.missing.length + route.problems.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 400 },
    );
  });
});
