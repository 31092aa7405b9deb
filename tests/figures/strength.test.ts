import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { barlowBurst, firstYield, lameBurst } from '../../language/figures/tube-strength.ts';
import { si } from '../../language/quantity/index.ts';
import { figure, figuresIn, lacks, shown, value } from './ask.ts';

const inch = (inches: number) => si('length', inches * 0.0254);
const metres = (length: number) => si('length', length);
const psi = (pressure: number) => si('pressure', pressure * 6894.757293168361);
const megapascal = (pressure: number) => si('pressure', pressure * 1e6);

describe('Lamé’s thick wall', () => {
  // Boresi & Schmidt, Advanced Mechanics of Materials, example 11.1: radii 10 and 50 mm, 300 MPa inside, hoop stress 325 MPa.
  it('bears 300 MPa where the bore stands at 325 MPa', () => {
    expect(lameBurst(metres(0.1), metres(0.04), megapascal(325)) / 1e6).toBeCloseTo(300, 9);
  });

  // The same, example 11.2: bore 200 mm, outside 800 mm, 150 MPa inside, hoop stress 170 MPa.
  it('bears 150 MPa where the bore stands at 170 MPa', () => {
    expect(lameBurst(metres(0.8), metres(0.3), megapascal(170)) / 1e6).toBeCloseTo(150, 9);
  });

  // A printed table of calculated burst pressures for 3/16 in tube of 70 000 psi tensile strength; it rounds to 5 psi.
  it.each([
    [0.035, 30520],
    [0.049, 44025],
  ])('of 3/16 in tube with a wall of %f in bursts at %i psi', (wall, burst) => {
    expect(Math.abs(lameBurst(inch(3 / 16), inch(wall), psi(70_000)) / psi(1) - burst)).toBeLessThan(5);
  });
});

describe('Barlow with the outside diameter', () => {
  // Esposito, examples 10.3 and 10.4, use the inside diameter and a factor of 8: the outside form is lower by inside/outside.
  it.each([
    [1.25, 0.095, 1232],
    [1, 0.049, 746.951],
    [1, 0.065, 1027.299],
  ])(
    'of %f in tube with a wall of %f in stands to a printed working pressure as the diameters do',
    (od, wall, printed) => {
      const outside = barlowBurst(inch(od), inch(wall), psi(55_000)) / psi(1);
      expect((outside * od) / (od - 2 * wall) / 8).toBeCloseTo(printed, printed === 1232 ? 0 : 3);
    },
  );

  // A buyer's sheet for steel brake tube: proof pressure 2·S·t/D with S = 16 000 psi, 4 780 psi for 3/16 × 0.028 in.
  it('gives the proof pressure of a buyer’s sheet', () => {
    expect(barlowBurst(inch(3 / 16), inch(0.028), psi(16_000)) / psi(1)).toBeCloseTo(4780, -1);
  });
});

// Computed apart from this project with the formulas of the handbooks, in MPa: Barlow, Lamé, first yield (von Mises).
describe.each([
  ['steel', 290, 170, 3 / 16, 86.6133, 98.7742, 49.8729],
  ['copper-nickel', 310, 110, 3 / 16, 92.5867, 105.586, 32.2707],
  ['copper', 220, 70, 3 / 16, 65.7067, 74.9322, 20.5359],
  ['steel', 290, 170, 1 / 4, 64.96, 72.0077, 39.0462],
])('%s of %f and %f MPa, %f in × 0.028 in', (_material, tensile, yields, od, barlow, lame, first) => {
  const sizes = [inch(od), inch(0.028)] as const;
  it('bursts and yields as worked out apart', () => {
    expect(barlowBurst(...sizes, megapascal(tensile)) / 1e6).toBeCloseTo(barlow, 3);
    expect(lameBurst(...sizes, megapascal(tensile)) / 1e6).toBeCloseTo(lame, 3);
    expect(firstYield(...sizes, megapascal(yields)) / 1e6).toBeCloseTo(first, 3);
  });
});

describe('any tube', () => {
  const tubes = fc.record({
    od: fc.double({ min: 0.002, max: 0.05, noNaN: true }),
    share: fc.double({ min: 0.01, max: 0.49, noNaN: true }),
  });

  it('bears less by Barlow than by Lamé, and both rise with the wall', () => {
    fc.assert(
      fc.property(tubes, ({ od, share }) => {
        const at = (part: number) => [metres(od), metres(od * part), megapascal(290)] as const;
        expect(barlowBurst(...at(share))).toBeLessThanOrEqual(lameBurst(...at(share)) * (1 + 1e-12));
        expect(barlowBurst(...at(share))).toBeGreaterThan(barlowBurst(...at(share * 0.9)));
        expect(lameBurst(...at(share))).toBeGreaterThan(lameBurst(...at(share * 0.9)));
      }),
    );
  });

  it('of a very thin wall comes to the same by both', () => {
    const thin = [metres(0.1), metres(1e-6), megapascal(290)] as const;
    expect(lameBurst(...thin) / barlowBurst(...thin)).toBeCloseTo(1, 4);
  });

  it('without a bore has no pressure at all', () => {
    for (const burst of [barlowBurst, lameBurst, firstYield]) {
      expect(burst(metres(0.005), metres(0.0025), megapascal(290))).toBeNaN();
      expect(burst(metres(0.005), metres(-0.001), megapascal(290))).toBeNaN();
    }
  });
});

describe('the strength of a run', () => {
  // Burst by 2·S·t/D with the J527 minimum of 290 MPa, from a table of trade tube sizes (derived there), in MPa.
  it.each([
    ['3/16 in wall 0.028 in', 86.6],
    ['4.75 mm wall 0.70 mm', 85.5],
    ['4.75 mm wall 0.90 mm', 109.9],
    ['1/4 in wall 0.035 in', 81.2],
    ['6 mm wall 1.00 mm', 96.7],
    ['8 mm wall 0.70 mm', 50.8],
  ])('of %s steel is %f MPa (Barlow)', (tube, burst) => {
    const figures = figuresIn(`run line { tube ${tube} steel }`);
    expect(value(figures, 'line', 'run.burst-barlow') / 1e6).toBeCloseTo(burst, 1);
    expect(value(figures, 'line', 'run.working-pressure')).toBeCloseTo(
      value(figures, 'line', 'run.burst-barlow') / 4,
      3,
    );
  });

  it('names its method, its formula and the strength that it takes', () => {
    const figures = figuresIn('run line { tube 3/16 in wall 0.028 in steel }');
    const [thick, thin] = ['run.burst', 'run.burst-barlow'].map((id) => figure(figures, 'line', id));
    expect([thick?.title, thin?.title]).toEqual(['burst pressure, thick wall', 'burst pressure, Barlow']);
    expect(thick?.source.text).toContain('Lamé');
    expect(thin?.inputs.at(-1)).toMatchObject({ name: 'least tensile strength of double-wall steel', text: '290 MPa' });
    expect(shown(figures, 'line', 'run.burst-barlow')).toMatch(/ psi$/);
  });

  it('says what is left with a third of the wall gone', () => {
    const figures = figuresIn('run line { tube 4.7625 mm wall 0.7112 mm steel }');
    // 57.7422 MPa, computed apart.
    expect(figure(figures, 'line', 'run.working-pressure').notes.join(' ')).toContain('bursts at 577 bar (Barlow)');
  });

  it('waits for wall and material', () => {
    const figures = figuresIn('run line { tube 3/16 in }');
    for (const id of ['run.burst', 'run.burst-barlow', 'run.working-pressure']) {
      expect(lacks(figures, 'line', id)).toEqual(['wall of tube line', 'material of tube line']);
    }
  });

  it('of a wall that leaves no bore is not known', () => {
    const figures = figuresIn('run line { tube 4.75 mm wall 2.5 mm steel }');
    expect(shown(figures, 'line', 'run.burst')).toBe('not known');
    expect(shown(figures, 'line', 'run.working-pressure')).toBe('not known');
  });

  it('carries the limits of the wall', () => {
    const figures = figuresIn('run line { tube 4.76 mm wall 0.71 mm ± 0.08 mm steel }');
    const { result } = figure(figures, 'line', 'run.burst-barlow');
    if (result.kind === 'unknown') throw new Error('not known');
    expect(result.estimate.low / 1e6).toBeCloseTo((2 * 290 * 0.63) / 4.76, 6);
    expect(result.estimate.high / 1e6).toBeCloseTo((2 * 290 * 0.79) / 4.76, 6);
  });

  it('of aluminium has no working pressure: a figure would speak for it', () => {
    expect(figuresIn('run line { tube 3/16 in wall 0.028 in aluminium }').find('line', 'run.working-pressure')).toBe(
      undefined,
    );
  });
});

describe('the factor on bursting', () => {
  const circuit = (readings: { readonly master?: string; readonly vehicle?: string }) => `vehicle van {
  wheelbase 2.6 m
  ${readings.vehicle ?? ''}
}
master main single { port out: 3/8-24 inverted-flare  ${readings.master ?? ''} }
master clutch single { port out: 3/8-24 inverted-flare }
stock line { tube 4.7625 mm wall 0.7112 mm steel  nut 3/8-24  flare double-45 }
run brake-line of line { from main.out  to left.cylinder.feed }
run clutch-line of line { from clutch.out  to slave.in }
drum-brake left { cylinder { port feed: 3/8-24 inverted-flare  bleeder {} } }
clutch-slave slave { port in: 3/8-24 inverted-flare  bleeder {} }
`;

  it('is 8.66 at 10 MPa for 3/16 in steel (computed apart)', () => {
    const figures = figuresIn(circuit({ master: '2026-03-01 line-pressure 10 MPa' }));
    expect(value(figures, 'brake-line', 'run.burst-factor')).toBeCloseTo(8.66133, 4);
    expect(figures.find('clutch-line', 'run.burst-factor')).toBe(undefined);
  });

  it('takes what was read on the vehicle for the brakes, and the highest of all', () => {
    const figures = figuresIn(
      circuit({ vehicle: '2026-03-01 line-pressure 8 MPa', master: '2026-03-01 line-pressure 5 MPa' }),
    );
    expect(value(figures, 'brake-line', 'run.burst-factor')).toBeCloseTo(86.6133 / 8, 4);
    expect(figure(figures, 'brake-line', 'run.burst-factor').inputs[1]?.name).toBe('line-pressure read on the vehicle');
    expect(figures.find('clutch-line', 'run.burst-factor')).toBe(undefined);
  });

  it('is not there where nothing was read', () => {
    expect(figuresIn(circuit({})).find('brake-line', 'run.burst-factor')).toBe(undefined);
  });
});
