/** Laws of the network: fluid is kept, more push never gives less, and another way of solving finds the same. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pushFor } from '../../../language/figures/index.ts';
import { si } from '../../../language/quantity/index.ts';
import { carFigures, chamber, ids, number, pressed, volumeOf } from './reference-car.ts';

const area = (bore: number) => (Math.PI / 4) * bore ** 2;
const cutOff = 0.4e-3;

/** Cars whose chambers bottom, whose pedal meets the floor, whose circuits leak, and sound ones. */
const cars = fc.record({
  bore: fc.integer({ min: 15, max: 32 }),
  strokes: fc.tuple(fc.integer({ min: 3, max: 40 }), fc.integer({ min: 3, max: 40 })),
  travel: fc.constantFrom('', ' travel 60 mm', ' travel 200 mm'),
  clearance: fc.integer({ min: 1, max: 30 }),
  failed: fc.constantFrom([], ['front-feed'], ['rear-right'], ['front-left', 'rear-tee']),
  air: fc.double({ min: 0, max: 2e-6, noNaN: true }),
});

type Car = typeof cars extends fc.Arbitrary<infer T> ? T : never;

const figuresOfCar = ({ bore, strokes, travel, clearance }: Car) =>
  carFigures({
    bore: `${bore} mm`,
    strokes: [`${strokes[0]} mm`, `${strokes[1]} mm`],
    pedal: `ratio 6 efficiency 0.95 free-play 2 mm${travel}`,
    shoeClearance: `${clearance / 10} mm`,
  });

const optionsOf = ({ failed, air }: Car) => ({ failed: ids(...failed), air: si('volume', air) });
const pushes = fc.double({ min: 0, max: 1500, noNaN: true });
const runs = { numRuns: 40 };

describe('the network', () => {
  it('takes up what the master displaces', () => {
    fc.assert(
      fc.property(cars, fc.double({ min: 5, max: 1500, noNaN: true }), (car, push) => {
        const answer = pressed(figuresOfCar(car), push, optionsOf(car));
        for (const each of answer.chambers) {
          if (each.pressure.kind === 'unknown') continue;
          const displaced = area(car.bore * 1e-3) * Math.max(0, number(each.stroke) - cutOff);
          const taken = volumeOf(answer, ({ chamber: of }) => of === each.id);
          // At a floor that is met before any force stands, the cut-off is not used up either.
          if (answer.atFloor && number(each.pressure) < 2000) continue;
          expect(Math.abs(taken - displaced)).toBeLessThan(1e-12 + 1e-6 * displaced);
        }
      }),
      runs,
    );
  });

  it('gives no less pressure, stroke or travel for more push', () => {
    fc.assert(
      fc.property(cars, pushes, pushes, (car, a, b) => {
        const figures = figuresOfCar(car);
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((push) => pressed(figures, push, optionsOf(car)));
        if (less === undefined || more === undefined) throw new Error('two answers are missing');
        expect(number(more.pedalTravel)).toBeGreaterThanOrEqual(number(less.pedalTravel) - 1e-9);
        for (const [index, each] of less.chambers.entries()) {
          const other = more.chambers[index];
          expect(number(other?.pressure)).toBeGreaterThanOrEqual(number(each.pressure) - 1);
          expect(number(other?.stroke)).toBeGreaterThanOrEqual(number(each.stroke) - 1e-9);
        }
      }),
      runs,
    );
  });

  it('keeps every range in order, and every number a number', () => {
    fc.assert(
      fc.property(cars, pushes, (car, push) => {
        const answer = pressed(figuresOfCar(car), push, optionsOf(car));
        const results = answer.chambers.flatMap(({ pressure, stroke }) => [pressure, stroke]);
        for (const result of [...results, answer.pedalTravel, answer.rodForce, answer.pistonForce]) {
          if (result.kind === 'unknown') throw new Error('everything is stated');
          const { low, value, high } = result.estimate;
          expect([low, value, high].every(Number.isFinite)).toBe(true);
          expect(low).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(high);
          expect(low).toBeGreaterThanOrEqual(0);
        }
      }),
      runs,
    );
  });

  it('never goes beyond a stop or the floor', () => {
    fc.assert(
      fc.property(cars, pushes, (car, push) => {
        const answer = pressed(figuresOfCar(car), push, optionsOf(car));
        answer.chambers.forEach(({ stroke }, index) => {
          expect(number(stroke)).toBeLessThanOrEqual((car.strokes[index] ?? 0) * 1e-3 + 1e-12);
        });
        const floor = /travel (\d+)/.exec(car.travel)?.[1];
        if (floor !== undefined) expect(number(answer.pedalTravel)).toBeLessThanOrEqual(Number(floor) * 1e-3 + 1e-9);
      }),
      runs,
    );
  });

  // The sums of the car written out by hand, each circuit on its own line, solved by a bisection of their own.
  it('agrees with the car summed up by hand', () => {
    const mega = 1e6;
    const bulk = 1.8e9;
    const tubeBore = (4.762e-3 - 2 * 0.711e-3) as number;
    const hoseVolume = (length: number) => area(3.175e-3) * length;
    const tube = (length: number) => area(tubeBore) * length;
    const stretch = (() => {
      const [e, nu, inner, outer] = [207e9, 0.29, (tubeBore / 2) ** 2, (4.762e-3 / 2) ** 2];
      return (3 * (1 - 2 * nu) * inner + 2 * (1 + nu) * outer) / (e * (outer - inner));
    })();
    const perMetre = [
      [0, 0],
      [1000, 0.66],
      [1500, 0.79],
      [2900, 1.21],
      [10_000, 1.21 + (0.42 / 1400) * 7100],
    ].map(([psi = 0, cm3 = 0]) => [psi * 6894.757_293_168, (cm3 * 1e-6) / 0.3048] as const);
    const swell = (p: number) => {
      const next = Math.max(
        1,
        perMetre.findIndex(([at]) => at >= p),
      );
      const [[p0, v0], [p1, v1]] = [perMetre[next - 1] ?? [0, 0], perMetre[next] ?? [1, 0]];
      return v0 + ((v1 - v0) * (p - p0)) / (p1 - p0);
    };
    const front = (bore: number, stroke: number) => (p: number) =>
      2 * area(0.054) * 0.25e-3 * Math.min(1, p / 1000) +
      (2 * 0.15e-6 * p) / mega +
      0.5 * swell(p) +
      tube(3.6) * stretch * p +
      ((60e-6 + 0.001e-6 + tube(3.6) + hoseVolume(0.5) + area(bore) * stroke) * p) / bulk;
    const tip = 0.17 / (0.09 * Math.sin((72.5 * Math.PI) / 180));
    const rear = (bore: number, stroke: number, gap: number) => (p: number) =>
      4 * area(0.019_05) * gap * tip * Math.min(1, p / 1000) +
      (2 * 0.12e-6 * p) / mega +
      0.3 * swell(p) +
      tube(5.2) * stretch * p +
      ((6e-6 + 0.001e-6 + tube(5.2) + hoseVolume(0.3) + area(bore) * stroke) * p) / bulk;
    fc.assert(
      fc.property(cars, fc.double({ min: 50, max: 1200, noNaN: true }), (car, push) => {
        const bore = car.bore * 1e-3;
        const [s1, s2] = [car.strokes[0] * 1e-3, car.strokes[1] * 1e-3];
        const [v1, v2] = [front(bore, s1), rear(bore, s2, car.clearance * 1e-4)];
        const stateAt = (force: number) => {
          // The largest pressure, up to force over area, whose volume the stroke gives.
          const solve = (volume: (p: number) => number, stroke: number) => {
            const most = force / area(bore);
            const room = area(bore) * Math.max(0, stroke - cutOff);
            if (volume(most) <= room) return most;
            let [low, high] = [0, most];
            while (high - low > 1e-12 * most) {
              const middle = (low + high) / 2;
              if (volume(middle) > room) high = middle;
              else low = middle;
            }
            return low;
          };
          return { p1: solve(v1, s1), p2: solve(v2, s2) };
        };
        const { p1, p2 } = stateAt(push * 6 * 0.95);
        const answer = pressed(figuresOfCar({ ...car, travel: '', failed: [], air: 0 }), push);
        const near = (name: string, p: number) =>
          expect(Math.abs(number(chamber(answer, name).pressure) - p)).toBeLessThan(0.01 + 1e-6 * p);
        near('main.primary', p1);
        near('main.secondary', p2);
        const x = (v: number, stroke: number) => Math.min(stroke, cutOff + v / area(bore));
        const travel = 2e-3 + 6 * (x(v1(p1), s1) + x(v2(p2), s2));
        expect(Math.abs(number(answer.pedalTravel) - travel)).toBeLessThan(1e-6 * travel);
      }),
      runs,
    );
  });
});

describe('the push for a target', () => {
  it('brings about just that', () => {
    const figures = carFigures();
    const measure = (answer: ReturnType<typeof pressed>) => number(chamber(answer, 'main.primary').pressure);
    fc.assert(
      fc.property(fc.double({ min: 1e5, max: 1.2e7, noNaN: true }), (reach) => {
        const answer = pushFor(figures, { measure, reach });
        if (answer.kind !== 'push') throw new Error(answer.kind);
        expect(answer.push).toBeCloseTo((reach * area(0.022_225)) / (6 * 0.95), 1);
        expect(measure(answer.applied)).toBeGreaterThanOrEqual(reach);
      }),
      { numRuns: 30 },
    );
  });

  it('is out of reach where a circuit leaks', () => {
    const measure = (answer: ReturnType<typeof pressed>) => number(chamber(answer, 'main.primary').pressure);
    const answer = pushFor(carFigures(), { measure, reach: 1e5, failed: ids('front-feed') });
    expect(answer).toMatchObject({ kind: 'out-of-reach', reached: 0 });
  });

  it('is not known where the bore is not', () => {
    const measure = () => undefined;
    const answer = pushFor(carFigures({ bore: '?' }), { measure, reach: 1e5 });
    if (answer.kind !== 'unknown') throw new Error(answer.kind);
    expect(answer.waitsFor.map(({ name }) => name)).toContain('bore of main');
  });
});
