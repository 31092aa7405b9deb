import { describe, expect, it } from 'vitest';
import { bendsOf, developmentOf, lengthsApart } from '../../language/figures/index.ts';
import { readCircuit } from '../support/read.ts';
import { estimate, figure, figuresIn, lacks, shown, value } from './ask.ts';

const inch = 0.0254;
const run = (facts: string): string => `run line { ${facts} }`;
const tube = 'tube 3/16 in wall 0.028 in copper-nickel flare double-45';

describe('centreline length', () => {
  // Published worked example of a lever bender: 5 × 7 in rectangle, four bends of 5/8 in, arcs .98 in; sum re-computed.
  it('of a rectangle in straights and bends is 22.927 in', () => {
    const bend = 'bend 90 deg radius 5/8 in';
    const route = `route straight 5.75 in, ${bend}, straight 3.75 in, ${bend}, straight 5.75 in, ${bend}, straight 3.75 in, ${bend}`;
    expect(value(figuresIn(run(route)), 'line', 'run.centreline-length') / inch).toBeCloseTo(22.927, 3);
  });

  // Setback of 90° is R (handbook geometry), so legs of 100 and 200 mm to a corner of 16 mm lose 2 R − π R / 2.
  it('is the same in corner lengths and in points', () => {
    const expected = 300 - 32 + 8 * Math.PI;
    const corners = figuresIn(run('bend-radius 16 mm route corner 100 mm, bend 90 deg, corner 200 mm'));
    const points = figuresIn(
      run('bend-radius 16 mm route point (0 mm, 0 mm, 0 mm), point (100 mm, 0 mm, 0 mm), point (100 mm, 200 mm, 0 mm)'),
    );
    expect(value(corners, 'line', 'run.centreline-length') * 1000).toBeCloseTo(expected, 9);
    expect(value(points, 'line', 'run.centreline-length') * 1000).toBeCloseTo(expected, 9);
  });

  it('counts the turns of a coil', () => {
    const figures = figuresIn(run('route straight 200 mm, coil 3 turns diameter 40 mm, straight 100 mm'));
    expect(value(figures, 'line', 'run.centreline-length')).toBeCloseTo(0.3 + 3 * Math.PI * 0.04, 12);
  });

  it('without a route is the stated length, with its limits, in the unit of the writer', () => {
    const figures = figuresIn(run('length 52 in ± 1/2 in'));
    expect(shown(figures, 'line', 'run.centreline-length')).toBe('52 in ± 1/2 in');
    expect(figure(figures, 'line', 'run.centreline-length').formula).toBe('the stated length');
  });

  it('waits for the bend radius by name, where bends say none and the run neither', () => {
    const figures = figuresIn(run('route straight 100 mm, bend 90 deg, straight 100 mm, bend 45 deg, straight 1 mm'));
    expect(lacks(figures, 'line', 'run.centreline-length')).toEqual(['bend-radius of line']);
  });

  it('takes no radius of the run for a bend whose own is still to be measured', () => {
    const figures = figuresIn(run('bend-radius 16 mm route straight 100 mm, bend 90 deg radius ?, straight 100 mm'));
    expect(lacks(figures, 'line', 'run.centreline-length')).toEqual([
      'radius of the bend in step 2 of the route of line',
    ]);
  });

  it('names each thing of the route that is not known, and no turn, which changes no length', () => {
    const unknown = figuresIn(run('bend-radius 16 mm route straight ?, bend ?, turn ?, bend 90 deg, straight 10 mm'));
    expect(lacks(unknown, 'line', 'run.centreline-length')).toEqual([
      'length of the straight in step 1 of the route of line',
      'angle of the bend in step 2 of the route of line',
    ]);
    const turned = figuresIn(
      run('bend-radius 10 mm route straight 10 mm, bend 90 deg, turn ?, bend 90 deg, straight 10 mm'),
    );
    expect(value(turned, 'line', 'run.centreline-length') * 1000).toBeCloseTo(20 + 10 * Math.PI, 9);
  });

  it('waits for a length or a route where there is neither, and for the length where it is a question mark', () => {
    expect(lacks(figuresIn(run(tube)), 'line', 'run.centreline-length')).toEqual(['length or route of line']);
    expect(lacks(figuresIn(run('length ?')), 'line', 'run.centreline-length')).toEqual(['length of line']);
  });

  it('falls back on the stated length while the route waits, and says so', () => {
    const figures = figuresIn(run('length 240 mm route straight 100 mm, bend 90 deg, straight 100 mm'));
    expect(shown(figures, 'line', 'run.centreline-length')).toBe('240 mm');
    expect(figure(figures, 'line', 'run.centreline-length').notes).toEqual([
      'The route gives no length yet: it waits for bend-radius of line.',
    ]);
  });

  it('of a route that cannot be is not given, and the note says what is wrong', () => {
    const figures = figuresIn(run('bend-radius 50 mm route corner 20 mm, bend 90 deg, corner 200 mm'));
    expect(lacks(figures, 'line', 'run.centreline-length')).toEqual(['a route of line that can be bent']);
    expect(figure(figures, 'line', 'run.centreline-length').notes).toEqual([
      expect.stringContaining(
        'Step 1 of the route: There are 20 mm from corner to corner here, and the bends take 50 mm',
      ),
    ]);
  });
});

describe('a run that states both a route and a length', () => {
  const apart = (facts: string) => {
    const part = readCircuit(run(facts)).planned.parts[0];
    return part && lengthsApart(part, { developmentOf });
  };

  it('goes by the route', () => {
    const figures = figuresIn(run('length 301 mm route straight 300 mm'));
    expect(shown(figures, 'line', 'run.centreline-length')).toBe('300 mm');
    expect(figure(figures, 'line', 'run.centreline-length').notes).toEqual([]);
  });

  it('says by how much they do not agree, where no tape explains it', () => {
    const figures = figuresIn(run('length 340 mm route straight 300 mm'));
    expect(figure(figures, 'line', 'run.centreline-length').notes).toEqual([
      'The stated length of 340 mm does not agree with the 300 mm of the route: they are 40 mm apart. The route is taken; measure again.',
    ]);
    expect(apart('length 340 mm route straight 300 mm')?.by).toBeCloseTo(0.04, 12);
  });

  it('agrees within stated limits, and more freely where either is only about', () => {
    expect(apart('length 340 mm ± 40 mm route straight 300 mm')).toBeUndefined();
    expect(apart('length 340 mm route straight 300 mm ± 40 mm')).toBeUndefined();
    expect(apart('length about 325 mm route straight 300 mm')).toBeUndefined();
    expect(apart('length about 400 mm route straight 300 mm')?.by).toBeCloseTo(0.1, 12);
  });
});

describe('cut length', () => {
  it('adds the trade’s 3 mm for each double flare', () => {
    const figures = figuresIn(run(`${tube} length 1372 mm`));
    expect(value(figures, 'line', 'run.cut-length') * 1000).toBeCloseTo(1378, 9);
  });

  // Geometry of a 45° double flare with a 7.0 mm head on 4.76 mm tube: 2.048 mm beyond the finished face (worked example).
  it('has within its limits what geometry alone gives', () => {
    const { low, high } = estimate(figuresIn(run(`${tube} length 1000 mm`)), 'line', 'run.cut-length');
    expect(low * 1000).toBeLessThan(1000 + 2 * 2.048);
    expect(high * 1000).toBeGreaterThan(1000 + 2 * 2.048);
  });

  it('warns of what bends do to the length, where there are bends, and of a route and a length apart', () => {
    const stretch =
      'Tube stretches a little in every bend, so it may come out slightly long; dress the last end to fit.';
    const notes = (facts: string) => figure(figuresIn(run(`${tube} ${facts}`)), 'line', 'run.cut-length').notes;
    expect(notes('bend-radius 16 mm route straight 100 mm, bend 90 deg, straight 100 mm')).toContain(stretch);
    expect(notes('length 100 mm')).not.toContain(stretch);
    expect(notes('length 340 mm route straight 300 mm')).toContainEqual(expect.stringContaining('40 mm apart'));
  });

  it('takes each end by its own flare', () => {
    const figures = figuresIn(
      `run line { tube 4.75 mm wall 0.7 mm length 500 mm from { flare bubble } to { flare none } }`,
    );
    expect(value(figures, 'line', 'run.cut-length') * 1000).toBeCloseTo(502.5, 9);
  });

  it('carries the limits of the length and of the flares', () => {
    const figures = figuresIn(run(`${tube} length 52 in ± 1/2 in`));
    const { value: middle, low, high } = estimate(figures, 'line', 'run.cut-length');
    expect(low).toBeLessThan(51.5 * inch + 2 * 0.002);
    expect(high).toBeGreaterThanOrEqual(52.5 * inch + 2 * 0.003);
    expect(middle).toBeCloseTo(52 * inch + 0.006, 12);
  });

  it('waits for the flare at the end that has none', () => {
    const figures = figuresIn('run line { tube 3/16 in length 500 mm from { flare double-45 } to { flare ? } }');
    expect(lacks(figures, 'line', 'run.cut-length')).toEqual(['flare at the to end of line']);
  });

  it('waits for a test flare where no table knows the size', () => {
    const figures = figuresIn('run line { tube 20 mm flare double-45 length 500 mm }');
    expect(lacks(figures, 'line', 'run.cut-length')).toEqual([
      'allowance for a 45° double flare at the from end of line, which no table gives for 20 mm tube',
      'allowance for a 45° double flare at the to end of line, which no table gives for 20 mm tube',
    ]);
  });
});

describe('the bends of a run', () => {
  it('are at hand with where each begins', () => {
    const part = readCircuit(
      run('route straight 140 mm, bend 90 deg radius 16 mm, turn 90 deg, bend 45 deg radius 16 mm, straight 420 mm'),
    ).planned.parts[0];
    const bends = part ? bendsOf(part) : [];
    expect(bends.map(({ start }) => start && start.value * 1000)).toEqual([140, expect.closeTo(140 + 8 * Math.PI, 9)]);
    expect(bends.map(({ rotation }) => rotation?.value)).toEqual([0, expect.closeTo(Math.PI / 2, 12)]);
  });
});
