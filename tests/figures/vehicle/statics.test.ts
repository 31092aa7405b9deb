import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axleLoads,
  brakedBy,
  criticalRatio,
  idealForces,
  type Loaded,
  lockRatio,
} from '../../../language/figures/vehicle/statics.ts';
import { si } from '../../../language/quantity/index.ts';
import { figuresIn, shown, value } from '../ask.ts';
import { saloon } from './saloon.ts';

const loaded = (weight: number, wheelbase: number, behindFront: number, gravityHeight: number): Loaded => ({
  weight: si('force', weight),
  wheelbase: si('length', wheelbase),
  behindFront: si('length', behindFront),
  gravityHeight: si('length', gravityHeight),
});
const forces = (front: number, rear: number) => ({ front: si('force', front), rear: si('force', rear) });

describe('loads on the axles', () => {
  // A student buggy's calculation: 250 kg at g 9.81, adhesion 0.68 at all wheels: 1570.177 N and 882 N as printed.
  it('of the buggy: 1570.18 N in front, 882.32 N behind', () => {
    const loads = axleLoads(loaded(250 * 9.81, 1.53, 0.953, 0.592), 0.68);
    expect(loads.front).toBeCloseTo(1570.177, 2);
    expect(loads.rear).toBeCloseTo(882.323, 3);
    expect(0.68 * loads.front).toBeCloseTo(1067.71, 1);
  });

  // A student brake team's data sheet, g 9.8: 858.8764045 N at rest, 154.4047469 N moved at 7.157303371 m/s², as printed.
  it('of the data sheet: 704.47 N stay on the rear axle', () => {
    const sheet = loaded(120 * 9.8, 1.1303, 0.8255, 0.2032);
    const rest = axleLoads(sheet, 0).rear;
    expect(rest).toBeCloseTo(858.8764045, 6);
    const stopping = axleLoads(sheet, 7.157303371 / 9.8).rear;
    expect(rest - stopping).toBeCloseTo(154.4047469, 6);
    expect(stopping).toBeCloseTo(704.4716576, 6);
  });

  // Halliday, Resnick & Walker, Fundamentals of Physics, from memory: 2.0 kN and 3.5 kN on each wheel at 0.40.
  it('of the skidding car of the physics book', () => {
    const loads = axleLoads(loaded(11_000, 4.2, 1.8, 0.75), 0.4);
    expect(loads.rear / 2).toBeCloseTo(1964.29, 2);
    expect(loads.front / 2).toBeCloseTo(3535.71, 2);
    expect((0.4 * loads.rear) / 2).toBeCloseTo(785.714, 3);
    expect((0.4 * loads.front) / 2).toBeCloseTo(1414.29, 2);
  });

  // A worked variant of the same problem prints 3365 N and 5935 N, which do not solve its own two equations.
  it('solve the equations of moment and weight, not what a page prints', () => {
    const loads = axleLoads(loaded(9900, 4.5, 2.3, 1), 0.4);
    expect(loads.rear).toBeCloseTo(4180, 9);
    expect(loads.front).toBeCloseTo(5720, 9);
    expect(2.3 * loads.front - 2.2 * loads.rear).toBeCloseTo(0.4 * 9900, 9);
  });
});

describe('which axle locks', () => {
  // A question bank gives 2.4 m/s², without the load that moves; with it the front brakes alone give 2.80 m/s².
  it('braked in front alone: 2.80 m/s², 19 % more than without the moving load', () => {
    const car = loaded(10_000, 4, 2.8, 0.8);
    expect(9.81 * lockRatio(car, 'front', 1, 0.8)).toBeCloseTo(2.80286, 5);
    expect(lockRatio(car, 'rear', 1, 0.8)).toBe(Number.POSITIVE_INFINITY);
  });

  const saloonLoaded = loaded(1400 * 9.80665, 2.65, 1.2, 0.56);

  // Worked apart from this program by the formulas of handbooks, for shares of the brake force in front.
  it.each([
    [0.65, 0.486607, 0.910161, 0.697928, 0.279833, 0.328617],
    [0.7, 0.723214, 0.824449, 0.772325, 0.257854, 0.373832],
    [0.75, 0.959821, 0.753491, 0.864475, 0.239077, 0.433474],
    [0.8, 1.19643, 0.69378, 0.981595, 0.222848, 0.515759],
  ])('with a share of %d in front', (share, critical, frontDry, rearDry, frontWet, rearWet) => {
    expect(criticalRatio(saloonLoaded, share)).toBeCloseTo(critical, 5);
    expect(lockRatio(saloonLoaded, 'front', share, 0.8)).toBeCloseTo(frontDry, 5);
    expect(lockRatio(saloonLoaded, 'rear', share, 0.8)).toBeCloseTo(rearDry, 5);
    expect(lockRatio(saloonLoaded, 'front', share, 0.3)).toBeCloseTo(frontWet, 5);
    expect(lockRatio(saloonLoaded, 'rear', share, 0.3)).toBeCloseTo(rearWet, 5);
  });

  // The same source; the rear force also from the closed form of the ideal parabola.
  it.each([
    [0.2, 1618.5, 1127.36],
    [0.4, 3469.11, 2022.61],
    [0.6, 5551.82, 2685.76],
    [0.8, 7866.64, 3116.81],
    [1, 10413.6, 3315.76],
  ])('ideal forces at %d g', (z, front, rear) => {
    const ideal = idealForces(saloonLoaded, z);
    expect(ideal.front / front).toBeCloseTo(1, 5);
    expect(ideal.rear / rear).toBeCloseTo(1, 5);
    const { weight: w, wheelbase: l, behindFront, gravityHeight: h } = saloonLoaded;
    const arm = l - behindFront;
    const parabola = (w / (2 * h)) * (Math.sqrt(arm ** 2 + (4 * h * l * ideal.front) / w) - arm) - ideal.front;
    expect(ideal.rear).toBeCloseTo(parabola, 6);
  });
});

const anyLoaded = fc
  .record({
    weight: fc.double({ min: 2000, max: 40_000, noNaN: true }),
    wheelbase: fc.double({ min: 1.5, max: 4, noNaN: true }),
    place: fc.double({ min: 0.3, max: 0.7, noNaN: true }),
    height: fc.double({ min: 0.2, max: 1.2, noNaN: true }),
  })
  .map(({ weight, wheelbase, place, height }) => loaded(weight, wheelbase, place * wheelbase, height));

describe('statics', () => {
  it('carries the whole weight at every deceleration, and balances moments about the ground', () => {
    fc.assert(
      fc.property(anyLoaded, fc.double({ min: 0, max: 1.2, noNaN: true }), (car, z) => {
        const { front, rear } = axleLoads(car, z);
        expect((front + rear) / car.weight).toBeCloseTo(1, 9);
        const moment = rear * (car.wheelbase - car.behindFront) - front * car.behindFront;
        expect((moment + z * car.weight * car.gravityHeight) / car.weight).toBeCloseTo(0, 9);
      }),
    );
  });

  it('uses the same adhesion on both axles with ideal forces, and that is the braking ratio', () => {
    fc.assert(
      fc.property(anyLoaded, fc.double({ min: 0.05, max: 1, noNaN: true }), (car, z) => {
        fc.pre(axleLoads(car, z).rear > 0.01 * car.weight);
        const { adhesion, z: reached } = brakedBy(idealForces(car, z), car);
        expect(reached).toBeCloseTo(z, 9);
        expect(adhesion.front).toBeCloseTo(z, 6);
        expect(adhesion.rear).toBeCloseTo(z, 6);
      }),
    );
  });

  it('never brakes harder than the adhesion of the axle that uses more', () => {
    fc.assert(
      fc.property(
        anyLoaded,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        (car, share, z) => {
          const all = z * car.weight;
          const { adhesion } = brakedBy(forces(share * all, (1 - share) * all), car);
          expect(Math.max(adhesion.front, adhesion.rear)).toBeGreaterThanOrEqual(z - 1e-9);
        },
      ),
    );
  });

  it('says the lift of the rear axle as no load and no limit to what it would use', () => {
    const { adhesion } = brakedBy(forces(20_000, 100), loaded(10_000, 2, 0.7, 1));
    expect(adhesion.rear).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('a load case', () => {
  it('by its axles and by its centre of gravity is the same', () => {
    const [front, rear] = [(1400 * (2.65 - 1.2)) / 2.65, (1400 * 1.2) / 2.65];
    const byAxles = figuresIn(saloon({ load: `front ${front} kg rear ${rear} kg cg-height 0.560 m` }));
    const byCentre = figuresIn(saloon());
    for (const id of ['load.mass', 'load.front-share', 'load.transfer', 'load.deceleration-at-push']) {
      expect(value(byAxles, 'load driver', id) / value(byCentre, 'load driver', id), id).toBeCloseTo(1, 9);
    }
    expect(value(byAxles, 'load driver', 'load.cg-behind-front-axle')).toBeCloseTo(1.2, 9);
    expect(byCentre.find('load driver', 'load.cg-behind-front-axle')).toBeUndefined();
  });

  it('weighed within limits shows them', () => {
    const figures = figuresIn(saloon({ load: 'front 690 kg ± 10 kg rear 560 kg ± 10 kg cg-height 0.68 m' }));
    expect(shown(figures, 'load driver', 'load.mass')).toBe('1250 kg ± 20 kg');
    expect(shown(figures, 'load driver', 'load.front-share')).toBe('0.552 ± 0.008');
  });
});
