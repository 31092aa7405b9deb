import { describe, expect, it } from 'vitest';
import { figure, figuresIn, lacks, shown, value } from './ask.ts';

const drum = (facts: string) => figuresIn(`drum-brake left { cylinder { ${facts} port feed: 3/8-24 } }`);
const disc = (mounting: 'fixed' | 'sliding', facts: string) =>
  figuresIn(`disc-brake left { caliper grip { mounting ${mounting} ${facts} port feed: 3/8-24 } }`);
const squareMillimetres = (squareMetres: number): number => squareMetres * 1e6;

describe('the pistons of a wheel cylinder', () => {
  it('count each, both, and the fluid that a millimetre takes', () => {
    const figures = drum('bore 3/4 in ends double');
    // 3/4 in circle: 0.4418 in² (handbook table of areas).
    expect(shown(figures, 'left.cylinder', 'cylinder.area')).toBe('0.4418 in²');
    expect(shown(figures, 'left.cylinder', 'cylinder.total-area')).toBe('0.8836 in²');
    expect(shown(figures, 'left.cylinder', 'cylinder.displacement-per-mm')).toBe('0.57 mL');
  });

  // Worked example: rear drums of 19.05 mm, 0.6932 mm at each tip, take 0.790305 cm³ on both wheels.
  it('of both rear wheels take 0.7903 mL to close a gap of 0.35 mm at mid-lining', () => {
    const tip = (0.35 * 170) / (90 * Math.sin((72.5 * Math.PI) / 180));
    const perMm = value(drum('bore 19.05 mm ends double'), 'left.cylinder', 'cylinder.displacement-per-mm');
    expect(2 * tip * perMm * 1e6).toBeCloseTo(0.790305, 5);
  });

  it('of a single-ended cylinder are one', () => {
    const figures = drum('bore 20 mm ends single');
    expect(value(figures, 'left.cylinder', 'cylinder.total-area')).toBe(
      value(figures, 'left.cylinder', 'cylinder.area'),
    );
  });

  it('of a stepped cylinder add up', () => {
    const figures = drum('bore 20 mm second-bore 10 mm');
    expect(squareMillimetres(value(figures, 'left.cylinder', 'cylinder.area'))).toBeCloseTo(100 * Math.PI, 9);
    expect(squareMillimetres(value(figures, 'left.cylinder', 'cylinder.second-area'))).toBeCloseTo(25 * Math.PI, 9);
    expect(squareMillimetres(value(figures, 'left.cylinder', 'cylinder.total-area'))).toBeCloseTo(125 * Math.PI, 9);
  });

  it('are not guessed: without `ends` the total waits, the piston does not', () => {
    const figures = drum('bore 20 mm');
    expect(lacks(figures, 'left.cylinder', 'cylinder.total-area')).toEqual(['ends of left cylinder']);
    expect(lacks(figures, 'left.cylinder', 'cylinder.displacement-per-mm')).toEqual(['ends of left cylinder']);
    expect(shown(figures, 'left.cylinder', 'cylinder.area')).toBe('314.2 mm²');
  });

  it('of two equal pistons in one bore share its doubt', () => {
    const figures = drum('bore 20 mm ± 1 mm ends double');
    const found = figures.find('left.cylinder', 'cylinder.total-area');
    if (found?.result.kind !== 'known') throw new Error('it is known');
    expect(squareMillimetres(found.result.estimate.high)).toBeCloseTo((Math.PI / 2) * 21 ** 2, 9);
  });
});

describe('limits that reach below nothing', () => {
  it('stop at nothing', () => {
    const found = drum('bore 5 mm ± 10 mm').find('left.cylinder', 'cylinder.area');
    if (found?.result.kind !== 'known') throw new Error('it is known');
    expect(found.result.estimate.low).toBe(0);
    expect(squareMillimetres(found.result.estimate.high)).toBeCloseTo(56.25 * Math.PI, 9);
  });
});

describe('the pistons of a caliper', () => {
  // Published: 2.75 in piston 5.94 in² with π in full (forum arithmetic); 2.5 in piston 4.91 in² (workshop article).
  it.each([
    ['2.75 in', 5.94],
    ['2.5 in', 4.91],
  ])('one of %s has %f in²', (bore, area) => {
    const figures = disc('sliding', `bore ${bore} pistons 1`);
    expect(value(figures, 'left.grip', 'caliper.area') / 0.0254 ** 2).toBeCloseTo(area, 2);
  });

  // Worked example: 18 mm of travel of two 54 mm pistons is 82.448 cm³.
  it('of two calipers of 54 mm take 82.45 mL from new pads to worn', () => {
    const area = value(disc('sliding', 'bore 54 mm pistons 1'), 'left.grip', 'caliper.area');
    expect(2 * 0.018 * area * 1e6).toBeCloseTo(82.448, 3);
  });

  it('count on one side of the disc', () => {
    const figures = disc('fixed', 'bore 40 mm pistons 2');
    expect(squareMillimetres(value(figures, 'left.grip', 'caliper.area'))).toBeCloseTo(800 * Math.PI, 9);
    expect(figure(figures, 'left.grip', 'caliper.area').notes).toEqual([
      'A fixed caliper has as much on the other side; for the clamping force one side counts.',
    ]);
  });

  it('of two bores are half of each, and an odd number of them is a question', () => {
    const even = disc('fixed', 'bore 40 mm second-bore 30 mm pistons 2');
    expect(squareMillimetres(value(even, 'left.grip', 'caliper.area'))).toBeCloseTo(625 * Math.PI, 9);
    const odd = disc('fixed', 'bore 40 mm second-bore 30 mm pistons 3');
    expect(lacks(odd, 'left.grip', 'caliper.area')).toEqual([
      'pistons of left grip as an even number, half of each bore',
    ]);
  });

  it('are not guessed, and are whole', () => {
    expect(lacks(disc('sliding', 'bore 54 mm'), 'left.grip', 'caliper.area')).toEqual(['pistons of left grip']);
    expect(lacks(disc('sliding', 'bore 54 mm pistons 1.5'), 'left.grip', 'caliper.area')).toEqual([
      'pistons of left grip as a whole number',
    ]);
  });
});

describe('other consumers', () => {
  it('have the area of their bore, or the one stated', () => {
    const figures = figuresIn(`
      clutch-slave fork { bore 20 mm port a: 3/8-24 }
      actuator round { bore 20 mm port a: 3/8-24 }
      actuator odd { area 4 cm² port a: 3/8-24 }
    `);
    expect(shown(figures, 'fork', 'clutch-slave.area')).toBe('314.2 mm²');
    expect(shown(figures, 'round', 'actuator.area')).toBe('314.2 mm²');
    expect(shown(figures, 'odd', 'actuator.area')).toBe('4 cm²');
  });
});
