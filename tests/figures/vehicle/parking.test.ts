import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forceOnGrade, heldGrade, loadsOnGrade } from '../../../language/figures/vehicle/grade.ts';
import type { Loaded } from '../../../language/figures/vehicle/statics.ts';
import { si } from '../../../language/quantity/index.ts';
import { figure, figuresIn, lacks, value } from '../ask.ts';
import { saloon, saloonDefaults } from './saloon.ts';

const g = 9.80665;
const car: Loaded = {
  weight: si('force', 1400 * g),
  wheelbase: si('length', 2.65),
  behindFront: si('length', 1.2),
  gravityHeight: si('length', 0.56),
};
const forces = (front: number, rear: number) => ({ front: si('force', front), rear: si('force', rear) });
const handbrake = (facts: string) => `parking-brake hand { site wheels acts-on rear-left, rear-right ${facts} }`;
const usual = 'lever-ratio 6 hand-force 150 N efficiency 0.7 pull-ratio 5 cable {}';

describe('a vehicle on a grade', () => {
  // By statics: with the rear wheels held to the limit of grip, tan α = µ l_f / (L − µ h) uphill, / (L + µ h) downhill.
  it('slips where its held axle has no more grip', () => {
    const strong = forces(0, 1e6);
    const up = heldGrade(car, { forces: strong, adhesion: 0.6, heading: 'uphill' });
    expect(up.grade).toBeCloseTo((0.6 * 1.2) / (2.65 - 0.6 * 0.56), 9);
    const down = heldGrade(car, { forces: strong, adhesion: 0.6, heading: 'downhill' });
    expect(down.grade).toBeCloseTo((0.6 * 1.2) / (2.65 + 0.6 * 0.56), 9);
    expect([up.limit, down.limit]).toEqual(['grip', 'grip']);
  });

  // weight × sin α = the force of the brakes.
  it('rolls where its brakes give way', () => {
    const held = heldGrade(car, { forces: forces(0, 2000), adhesion: 0.8, heading: 'downhill' });
    expect(Math.sin(Math.atan(held.grade)) * car.weight).toBeCloseTo(2000, 6);
    expect(held.limit).toBe('brake');
    expect(forceOnGrade(car, held.grade)).toBeCloseTo(2000, 6);
  });

  // 20 % and 30 % are 11.31° and 16.70° (49 CFR 571.105 S5.2).
  it('pulls with the sine of the angle', () => {
    expect(forceOnGrade(car, 0.2) / car.weight).toBeCloseTo(Math.sin((11.31 * Math.PI) / 180), 4);
    expect(forceOnGrade(car, 0.3) / car.weight).toBeCloseTo(Math.sin((16.7 * Math.PI) / 180), 4);
  });

  it('is carried whole, and its moments balance, on any grade', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        fc.constantFrom('uphill', 'downhill'),
        (grade, heading) => {
          const { front, rear } = loadsOnGrade(car, grade, heading);
          const angle = Math.atan(grade);
          expect(front + rear).toBeCloseTo(car.weight * Math.cos(angle), 6);
          const lean = (heading === 'uphill' ? 1 : -1) * Math.sin(angle) * car.weight * 0.56;
          expect(rear * (2.65 - 1.2) - front * 1.2).toBeCloseTo(lean, 6);
        },
      ),
    );
  });

  it('is never held on a steeper grade by less force', () => {
    const force = fc.double({ min: 0, max: 6000, noNaN: true });
    fc.assert(
      fc.property(force, force, (one, other) => {
        const [less, more] = one < other ? [one, other] : [other, one];
        const grades = [less, more].map(
          (rear) => heldGrade(car, { forces: forces(0, rear), adhesion: 0.8, heading: 'uphill' }).grade,
        );
        expect(grades[0]).toBeLessThanOrEqual((grades[1] ?? 0) + 1e-12);
      }),
    );
  });
});

describe('the parking brake', () => {
  const factorBrake = 'shoes leading-trailing push-out 5 bar brake-factor 2 drum 228.6 mm linings { friction 0.36 }';
  const figures = figuresIn(
    saloon({ rearBrake: factorBrake, more: handbrake(usual), vehicle: 'class car first-use 2005' }),
  );

  // By hand: 150 N × 6 × 0.7 × 5 on the shoes of both brakes, × 2 × 0.1143 m / 0.305 m at the tyres.
  it('comes from hand to tyre by lever, cable and shoe', () => {
    const atTyres = (150 * 6 * 0.7 * 5 * 2 * 0.1143) / 0.305;
    const sine = atTyres / (1400 * g);
    expect(value(figures, 'load driver', 'load.parking-grade-downhill')).toBeCloseTo(Math.tan(Math.asin(sine)), 6);
    expect(value(figures, 'load driver', 'load.parking-grade-uphill')).toBeCloseTo(Math.tan(Math.asin(sine)), 6);
    const needed = (1400 * g * Math.sin(Math.atan(0.2))) / (atTyres / 150);
    expect(value(figures, 'load driver', 'load.parking-pull')).toBeCloseTo(needed, 6);
  });

  it('tells what is asked, and to chock the wheels', () => {
    const { notes } = figure(figures, 'load driver', 'load.parking-grade-uphill');
    expect(notes.join(' ')).toMatch(/20 % is asked by 49 CFR 571\.135 S7\.12\.2/);
    expect(notes.join(' ')).toMatch(/chock the wheels/);
  });

  it('asks 30 % of a car of 1985 (49 CFR 571.105 S5.2.1)', () => {
    const old = figuresIn(
      saloon({ rearBrake: factorBrake, more: handbrake(usual), vehicle: 'class car first-use 1985' }),
    );
    expect(figure(old, 'load driver', 'load.parking-pull').title).toBe('pull at the hand that holds a grade of 30 %');
  });

  it('holds less up the grade with shoes that lead one way only', () => {
    const twoLeading = saloonDefaults.rearBrake.replace('leading-trailing', 'two-leading');
    const found = figuresIn(saloon({ rearBrake: twoLeading, more: handbrake(usual) }));
    expect(value(found, 'load driver', 'load.parking-grade-uphill')).toBeLessThan(
      value(found, 'load driver', 'load.parking-grade-downhill'),
    );
  });

  it('takes the friction at rest where it is stated', () => {
    const resting = saloonDefaults.rearBrake.replace('friction 0.36', 'friction 0.36 static-friction 0.42');
    const [rubbing, atRest] = [saloonDefaults.rearBrake, resting].map((rearBrake) =>
      value(figuresIn(saloon({ rearBrake, more: handbrake(usual) })), 'load driver', 'load.parking-grade-downhill'),
    );
    expect(atRest).toBeGreaterThan(rubbing ?? Number.NaN);
  });

  it('on the transmission holds as much more as the axle turns it', () => {
    const transmission = (ratio: string) =>
      figuresIn(
        saloon({
          more: `drum-brake shaft { wheel rear shoes leading-trailing brake-factor 2 drum 160 mm }
            parking-brake hand { site transmission acts-on shaft lever-ratio 6 hand-force 60 N efficiency 0.7 pull-ratio 5 ${ratio} }`,
        }),
      );
    const one = value(transmission('axle-ratio 1'), 'load driver', 'load.parking-grade-downhill');
    const four = value(transmission('axle-ratio 4'), 'load driver', 'load.parking-grade-downhill');
    expect(Math.sin(Math.atan(four)) / Math.sin(Math.atan(one))).toBeCloseTo(4, 6);
    expect(lacks(transmission(''), 'load driver', 'load.parking-grade-downhill')).toEqual(['axle-ratio of hand']);
  });

  it('asks for what is not stated, each once', () => {
    const bare = figuresIn(saloon({ rearBrake: factorBrake, more: handbrake('') }));
    expect(lacks(bare, 'load driver', 'load.parking-grade-uphill')).toEqual([
      'hand-force of hand',
      'lever-ratio of hand',
      'pull-ratio of hand',
    ]);
  });
});
