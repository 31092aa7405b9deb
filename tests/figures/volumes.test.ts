import { describe, expect, it } from 'vitest';
import { figure, figuresIn, lacks, shown, value } from './ask.ts';

const millilitres = (cubicMetres: number): number => cubicMetres * 1e6;

describe('the fluid in a run', () => {
  // Bore area in mm² = volume in cm³ per metre, from a table of trade tube sizes (derived there from OD and wall).
  it.each([
    ['3/16 in wall 0.028 in', 8.76],
    ['4.75 mm wall 0.70 mm', 8.81],
    ['4.75 mm wall 0.71 mm', 8.71],
    ['4.75 mm wall 0.90 mm', 6.83],
    ['1/4 in wall 0.028 in', 19.07],
    ['1/4 in wall 0.035 in', 16.42],
    ['6 mm wall 0.70 mm', 16.62],
    ['6 mm wall 1.00 mm', 12.57],
    ['5/16 in wall 0.028 in', 33.34],
    ['5/16 in wall 0.035 in', 29.8],
    ['8 mm wall 0.70 mm', 34.21],
    ['8 mm wall 1.00 mm', 28.27],
  ])('of %s tube is %f mL for each metre', (tube, perMetre) => {
    const figures = figuresIn(`run line { tube ${tube} length 1 m }`);
    expect(millilitres(value(figures, 'line', 'run.volume'))).toBeCloseTo(perMetre, 2);
  });

  // Worked example of a bleeding plan: lines of 3.34 mm bore, 1.4 m to 6.2 m.
  it.each([
    [6.2, 54.3218],
    [5.2, 45.5603],
    [2.2, 19.2755],
    [1.4, 12.2662],
  ])('of 3.34 mm bore and %f m is %f mL', (length, volume) => {
    const figures = figuresIn(`run line { tube 4.74 mm wall 0.7 mm length ${length} m }`);
    expect(millilitres(value(figures, 'line', 'run.volume'))).toBeCloseTo(volume, 3);
  });

  it('follows the length of the route', () => {
    const routed = figuresIn(
      'run line { tube 6 mm wall 1 mm bend-radius 20 mm route straight 100 mm, bend 180 deg, straight 100 mm }',
    );
    expect(millilitres(value(routed, 'line', 'run.volume'))).toBeCloseTo(Math.PI * 4 * (0.2 + 0.02 * Math.PI), 9);
  });

  it('waits for the wall, and says what walls are usual', () => {
    const figures = figuresIn('run line { tube 3/16 in length 1 m }');
    expect(lacks(figures, 'line', 'run.volume')).toEqual(['wall of tube line']);
    expect(figure(figures, 'line', 'run.volume').notes).toEqual([
      'Usual walls of 3/16 in tube: 0.028 in, 0.035 in. Measure a cut end.',
    ]);
  });

  it('waits for the tube where the run has none, and for a wall that leaves a bore', () => {
    const bare = figuresIn('run line { length 1 m }');
    expect(lacks(bare, 'line', 'run.volume')).toEqual(['tube of line', 'wall of tube line']);
    const solid = figuresIn('run line { tube 4.75 mm wall 2.4 mm length 1 m }');
    expect(lacks(solid, 'line', 'run.volume')).toEqual(['wall of tube line that leaves a bore']);
  });

  it('is in millilitres for a writer in inches too', () => {
    expect(shown(figuresIn('run line { tube 3/16 in wall 0.028 in length 52 in }'), 'line', 'run.volume')).toBe(
      '11.57 mL',
    );
  });
});

describe('the fluid in hoses', () => {
  // 8.0 cm³ per metre of 3.2 mm bore, from the same bleeding notes.
  it('is 8.0 mL for each metre of 3.2 mm bore', () => {
    const figures = figuresIn('hose flexible { bore 3.2 mm length 1 m } feed-hose feed { bore 3.2 mm length 1 m }');
    expect(millilitres(value(figures, 'flexible', 'hose.volume'))).toBeCloseTo(8.04, 2);
    expect(value(figures, 'feed', 'feed-hose.volume')).toBe(value(figures, 'flexible', 'hose.volume'));
  });

  it('waits for bore and length', () => {
    expect(lacks(figuresIn('hose flexible { bore ? }'), 'flexible', 'hose.volume')).toEqual([
      'bore of flexible',
      'length of flexible',
    ]);
  });
});

describe('the fluid in a wheel cylinder', () => {
  const cylinder = (facts: string) => figuresIn(`drum-brake left { cylinder { ${facts} port feed: 3/8-24 } }`);

  it('is bore area times the gap between the cups', () => {
    const volume = value(cylinder('bore 1 in cup-gap 14 mm'), 'left.cylinder', 'cylinder.volume');
    expect(millilitres(volume)).toBeCloseTo(506.7075 * 0.014, 5); // 1 in circle: 506.7075 mm² (handbook table of areas)
  });

  it('is what the file states, where it states it, in the spelling of the writer', () => {
    expect(shown(cylinder('bore 1 in cup-gap 14 mm volume 6.5 cc'), 'left.cylinder', 'cylinder.volume')).toBe('6.5 cc');
  });

  it('of a stepped cylinder lies between all of it in the one bore and all in the other', () => {
    const figures = cylinder('bore 20 mm second-bore 10 mm cup-gap 10 mm');
    const { result } = figure(figures, 'left.cylinder', 'cylinder.volume');
    if (result.kind === 'unknown') throw new Error('it is known');
    expect(millilitres(result.estimate.low)).toBeCloseTo(0.25 * Math.PI, 9);
    expect(millilitres(result.estimate.high)).toBeCloseTo(Math.PI, 9);
    expect(millilitres(result.estimate.value)).toBeCloseTo(0.625 * Math.PI, 9);
  });

  it('waits for what is not measured', () => {
    expect(lacks(cylinder('bore ?'), 'left.cylinder', 'cylinder.volume')).toEqual([
      'bore of left cylinder',
      'cup-gap of left cylinder',
    ]);
  });
});

describe('the fluid in other parts', () => {
  it('is what the file states', () => {
    const figures = figuresIn('tee joint { volume 0.4 mL ports a, b, c: 3/8-24 } union pair { ports a, b: 3/8-24 }');
    expect(shown(figures, 'joint', 'junction.volume')).toBe('0.4 mL');
    expect(lacks(figures, 'pair', 'junction.volume')).toEqual(['volume of pair']);
  });

  it('in a booster is none at the pedal, and what is stated in the line', () => {
    const figures = figuresIn(
      'booster servo { gain 3 } booster helper { volume 12 mL port in: M10x1 port out: M10x1 }',
    );
    expect(figures.of('servo')).toEqual([]);
    expect(shown(figures, 'helper', 'booster.volume')).toBe('12 mL');
  });

  it('in a plug, a pedal or a drum is none', () => {
    const figures = figuresIn('plug stop { port a: 3/8-24 male } pedal { ratio 6 } drum-brake left { drum 11 in }');
    const found = ['stop', 'pedal', 'left.drum'].flatMap((path) => figures.of(path));
    expect(found.filter(({ id }) => id.endsWith('.volume'))).toEqual([]);
  });

  it('in a reservoir is its capacity, or that of its compartments', () => {
    const whole = figuresIn('reservoir pot { capacity 0.25 L compartment front {} }');
    expect(shown(whole, 'pot', 'reservoir.volume')).toBe('0.25 L');
    const shared = figuresIn(
      'reservoir pot { compartment front { capacity 120 mL } compartment rear { capacity 60 mL } }',
    );
    expect(shown(shared, 'pot', 'reservoir.volume')).toBe('180 mL');
    const half = figuresIn('reservoir pot { compartment front { capacity 120 mL } compartment rear { capacity ? } }');
    expect(shown(half, 'pot', 'reservoir.volume')).toBe('at least 120 mL');
    expect(lacks(half, 'pot', 'reservoir.volume')).toEqual(['capacity of pot rear']);
  });
});

describe('a chamber', () => {
  const tandem = (facts: string) => figuresIn(`master main tandem { ${facts} }`);

  // Worked example: one full stroke of a 22.225 mm × 17 mm chamber, 6.59511 cm³; piston area 387.948 mm².
  it('of 7/8 in and 17 mm pushes out 6.595 mL, and its piston has 387.9 mm²', () => {
    const figures = tandem(
      'bore 22.225 mm primary { stroke 17 mm port a: 3/8-24 } secondary { stroke ? port b: 3/8-24 }',
    );
    expect(millilitres(value(figures, 'main.primary', 'chamber.volume'))).toBeCloseTo(6.59511, 5);
    expect(value(figures, 'main.primary', 'chamber.area') * 1e6).toBeCloseTo(387.948, 3);
    expect(lacks(figures, 'main.secondary', 'chamber.volume')).toEqual(['stroke of main secondary']);
  });

  it('of a stepped master has its own bore', () => {
    const figures = tandem(
      'bore 1 in primary { bore 20 mm stroke 10 mm port a: 3/8-24 } secondary { stroke 10 mm port b: 3/8-24 }',
    );
    expect(millilitres(value(figures, 'main.primary', 'chamber.volume'))).toBeCloseTo(Math.PI, 9);
    expect(value(figures, 'main.secondary', 'chamber.area') * 1e6).toBeCloseTo(506.7075, 4);
  });

  it('is the single master itself, and no tandem as a whole', () => {
    const single = figuresIn('master main single { bore 20 mm stroke 30 mm port out: 3/8-24 }');
    expect(millilitres(value(single, 'main', 'chamber.volume'))).toBeCloseTo(3 * Math.PI, 9);
    expect(tandem('bore 1 in primary { port a: 3/8-24 } secondary { port b: 3/8-24 }').of('main')).toEqual([]);
  });

  it('says what of the stroke goes to the cut-off', () => {
    const figures = figuresIn('master main single { bore 20 mm stroke 30 mm cut-off 1 mm port out: 3/8-24 }');
    expect(figure(figures, 'main', 'chamber.volume').notes).toEqual([
      'Of the stroke, 1 mm closes the way to the reservoir and moves nothing into the line.',
    ]);
  });
});
