import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contextOf } from '../../../language/figures/context.ts';
import { balanceOf } from '../../../language/figures/vehicle/balance-of.ts';
import { type BrakeCurve, brakeCurve } from '../../../language/figures/vehicle/brake-curve.ts';
import { type BalanceQuestion, balanceAt, firstLock, rearAhead } from '../../../language/figures/vehicle/lock-order.ts';
import { criticalRatio, type Loaded, lockRatio } from '../../../language/figures/vehicle/statics.ts';
import { si } from '../../../language/quantity/index.ts';
import { readCircuit } from '../../support/read.ts';
import { estimate, figure, figuresIn, lacks, shown, value } from '../ask.ts';
import { type Saloon, saloon } from './saloon.ts';

const g = 9.80665;

function questionOf(text: string): BalanceQuestion {
  const { braking } = contextOf(readCircuit(text).planned);
  const axles = braking.axles();
  const [load] = braking.loads();
  const balance = axles && load && balanceOf(load, axles);
  if (balance?.kind !== 'ready') throw new Error(balance?.needs.map(({ name }) => name).join(', ') ?? 'no brakes');
  return balance.question;
}

/** The saloon with larger cylinders behind. */
const strongRear: Saloon = { rearBore: '23.81 mm' };
const withValve = (valve: string): Saloon => ({ ...strongRear, valve });

describe('the first axle to lock', () => {
  // Worked apart from this program in steps of 5 kPa: adhesion, axle, pressure of the step in MPa, deceleration there.
  const sweeps: readonly [string, Saloon, readonly (readonly [number, 'front' | 'rear', number, number])[]][] = [
    [
      'no valve',
      {},
      [
        [0.3, 'front', 2.1, 0.22799],
        [0.6, 'front', 4.565, 0.518721],
        [0.8, 'front', 6.515, 0.748712],
        [1, 'rear', 8.5, 0.98283],
      ],
    ],
    [
      'large cylinders behind, no valve',
      strongRear,
      [
        [0.3, 'front', 2.12, 0.258266],
        [0.6, 'rear', 4.605, 0.59418],
        [0.8, 'rear', 5.53, 0.719219],
        [1, 'rear', 6.315, 0.825333],
      ],
    ],
    [
      'a valve of 20 bar and 0.30',
      withValve('split-point 20 bar slope 0.30'),
      [
        [0.3, 'front', 2.115, 0.253736],
        [0.6, 'front', 4.54, 0.500251],
        [0.8, 'front', 6.4, 0.68933],
        [1, 'front', 8.51, 0.903823],
      ],
    ],
    [
      'a valve of 30 bar and 0.30',
      withValve('split-point 30 bar slope 0.30'),
      [
        [0.6, 'front', 4.595, 0.539363],
        [0.8, 'front', 6.485, 0.731492],
        [1, 'front', 8.615, 0.948018],
      ],
    ],
    [
      'a valve of 30 bar and 0.50',
      withValve('split-point 30 bar slope 0.50'),
      [
        [0.6, 'front', 4.625, 0.557976],
        [0.8, 'front', 6.565, 0.773768],
        [1, 'rear', 8.345, 0.971763],
      ],
    ],
  ];
  it.each(sweeps)('with %s', (_words, facts, rows) => {
    const question = questionOf(saloon(facts));
    for (const [adhesion, axle, step, z] of rows) {
      const lock = firstLock(question, adhesion);
      expect(lock?.axle, `${adhesion}`).toBe(axle);
      // The step is the first one at which it has locked.
      expect(lock?.master, `${adhesion}`).toBeLessThanOrEqual(step * 1e6);
      expect(lock?.master, `${adhesion}`).toBeGreaterThan(step * 1e6 - 5000);
      expect(balanceAt(question, step * 1e6).braked.z, `${adhesion}`).toBeCloseTo(z, 5);
    }
  });

  // The same source: where the rear overtakes the front, at the first step.
  it.each([
    ['no valve', {}, 0.963369],
    ['large cylinders behind', strongRear, 0.580663],
    ['a valve of 30 bar and 0.30', withValve('split-point 30 bar slope 0.30'), 1.21588],
    ['a valve of 30 bar and 0.50', withValve('split-point 30 bar slope 0.50'), 0.927826],
  ])('is the rear above a deceleration, with %s', (_words, facts: Saloon, z) => {
    const found = value(figuresIn(saloon(facts)), 'load driver', 'load.rear-first-above') / g;
    expect(found).toBeLessThanOrEqual(z + 1e-6);
    expect(found).toBeGreaterThan(z - 0.001);
  });

  it('is the front at every deceleration below 120 bar with a valve of 20 bar and 0.30', () => {
    const spans = rearAhead(questionOf(saloon(withValve('split-point 20 bar slope 0.30'))));
    expect(spans.every(({ from }) => from.master > 12e6)).toBe(true);
  });

  it('is told for each road, with the axle in words', () => {
    const figures = figuresIn(saloon(strongRear));
    const dry = figure(figures, 'load driver', 'load.first-lock-dry');
    expect(dry.title).toBe('deceleration at which the rear axle locks first on a dry road (adhesion 0.8)');
    expect(dry.notes).toContain('A rear axle that locks first lets the vehicle spin.');
    expect(value(figures, 'load driver', 'load.first-lock-dry') / g).toBeCloseTo(0.719, 3);
    expect(figure(figures, 'load driver', 'load.first-lock-slippery').title).toMatch(/the front axle locks first/);
  });

  it('shows what the valve is worth', () => {
    const figures = figuresIn(saloon(withValve('split-point 30 bar slope 0.50')));
    expect(value(figures, 'load driver', 'load.rear-first-above') / g).toBeCloseTo(0.927, 2);
    expect(value(figures, 'load driver', 'load.rear-first-above-without-valve') / g).toBeCloseTo(0.58, 2);
    expect(figuresIn(saloon()).find('load driver', 'load.rear-first-above-without-valve')).toBeUndefined();
  });
});

describe('the saloon at 400 N', () => {
  // Worked apart from this program: 0.673473 g, 0.73771 in front, 0.530835 behind, 75.5253 % in front.
  const figures = figuresIn(saloon());
  const at = (id: string) => value(figures, 'load driver', id);

  it('stops with 0.673 g', () => {
    expect(at('load.deceleration-at-push') / g).toBeCloseTo(0.673473, 6);
    expect(at('load.front-brake-share-at-push')).toBeCloseTo(0.755253, 6);
  });

  it('uses 0.738 of the road in front and 0.531 behind', () => {
    expect(at('load.front-adhesion-at-push')).toBeCloseTo(0.73771, 5);
    expect(at('load.rear-adhesion-at-push')).toBeCloseTo(0.530835, 6);
  });

  // 9466.2 N on the front axle of 13729 N.
  it('would want 69 % in front', () => {
    expect(at('load.ideal-front-share-at-push')).toBeCloseTo(9466.2 / (9466.2 + 4263.11), 5);
  });

  it('carries what is rough and what is assumed', () => {
    const assumed = figuresIn(
      saloon({ rearBore: '? assume 19.05 mm', load: 'mass about 1400 kg cg-behind-front-axle 1.2 m cg-height 0.56 m' }),
    );
    const { about, assumed: isAssumed } = estimate(assumed, 'load driver', 'load.first-lock-dry');
    expect([about, isAssumed]).toEqual([true, true]);
  });

  it('asks for what is missing, each thing by name', () => {
    const bare = figuresIn(saloon({ load: 'mass 1400 kg', tyres: '', valve: 'split-point 30 bar' }));
    expect(lacks(bare, 'load driver', 'load.first-lock-dry')).toEqual([
      'cg-behind-front-axle of load driver',
      'cg-height of load driver',
      'tyre-radius of saloon',
      'slope of limiter',
    ]);
  });

  it('asks for the line of brakes that nothing presses, and never shows a stop without brakes', () => {
    const cut = figuresIn(saloon().replaceAll(/run to-rear-(left|right) \{[^}]*\}/g, ''));
    expect(lacks(cut, 'load driver', 'load.first-lock-dry')).toEqual([
      'a line that presses rear-left',
      'a line that presses rear-right',
    ]);
    expect(shown(cut, 'load driver', 'load.deceleration-at-push')).toBe('not known');
  });
});

describe('laws of the balance', () => {
  const anyLoaded = fc
    .record({
      weight: fc.double({ min: 4000, max: 30_000, noNaN: true }),
      wheelbase: fc.double({ min: 2, max: 3.5, noNaN: true }),
      place: fc.double({ min: 0.35, max: 0.65, noNaN: true }),
      height: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
    })
    .map(
      ({ weight, wheelbase, place, height }): Loaded => ({
        weight: si('force', weight),
        wheelbase: si('length', wheelbase),
        behindFront: si('length', place * wheelbase),
        gravityHeight: si('length', height),
      }),
    );
  const anyShare = fc.double({ min: 0.4, max: 0.9, noNaN: true });
  const fixed = (weight: number, share: number): BrakeCurve =>
    brakeCurve((master) => {
      const all = (2 * weight * master) / 20e6;
      return { front: si('force', share * all), rear: si('force', (1 - share) * all) };
    });

  it('the sweep finds what the closed form says of a fixed share', () => {
    fc.assert(
      fc.property(anyLoaded, anyShare, fc.double({ min: 0.1, max: 0.95, noNaN: true }), (loaded, share, adhesion) => {
        const [front, rear] = (['front', 'rear'] as const).map((axle) => lockRatio(loaded, axle, share, adhesion));
        fc.pre(front !== undefined && rear !== undefined && Math.abs(front - rear) > 1e-6);
        const lock = firstLock({ curve: fixed(loaded.weight, share), loaded }, adhesion);
        expect(lock?.braked.z).toBeCloseTo(Math.min(front ?? 0, rear ?? 0), 6);
        expect(lock?.axle).toBe((front ?? 0) < (rear ?? 0) ? 'front' : 'rear');
      }),
    );
  });

  it('the rear is ahead from the critical deceleration on', () => {
    fc.assert(
      fc.property(anyLoaded, anyShare, (loaded, share) => {
        const critical = criticalRatio(loaded, share);
        fc.pre(critical > 0.02 && critical < 1.4);
        const [span] = rearAhead({ curve: fixed(loaded.weight, share), loaded });
        expect(span?.from.braked.z).toBeCloseTo(critical, 6);
        expect(span?.to).toBeUndefined();
      }),
    );
  });

  it('the bore of the master changes the push, not the order of locking', () => {
    const [wide, narrow] = ['bore 25.4 mm', 'bore 19.05 mm'].map((bore) =>
      figuresIn(saloon().replace('bore 22.225 mm', bore)),
    );
    if (wide === undefined || narrow === undefined) throw new Error('two bores');
    expect(value(wide, 'load driver', 'load.first-lock-dry')).toBe(value(narrow, 'load driver', 'load.first-lock-dry'));
    expect(value(wide, 'load driver', 'load.deceleration-at-push')).toBeLessThan(
      value(narrow, 'load driver', 'load.deceleration-at-push'),
    );
  });

  // The floating piston balances its forces: the chamber of the smaller bore has the higher pressure.
  it('a step in the master moves the balance by the areas of its bores', () => {
    const stepped = saloon()
      .replace('secondary {', 'secondary { bore 19.05 mm')
      .replace('primary {', 'primary { bore 22.225 mm');
    const [plain, step] = [questionOf(saloon()), questionOf(stepped)];
    const pressure = 4e6;
    const raised = pressure * (22.225 / 19.05) ** 2;
    expect(balanceAt(step, pressure).forces.front).toBe(balanceAt(plain, pressure).forces.front);
    expect(balanceAt(step, pressure).forces.rear).toBeCloseTo(balanceAt(plain, raised).forces.rear, 6);
  });
});
