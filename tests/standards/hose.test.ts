import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { si } from '../../language/quantity/dimension.ts';
import {
  coldBendCylinder,
  type ExpansionClass,
  expansionLimitAt,
  hoseClasses,
  hoseClassOf,
} from '../../language/standards/hose.ts';
import { hoseEndOf } from '../../language/standards/hose-ends.ts';
import { inch, megapascal, mm, psi } from '../../language/standards/written-units.ts';

function classOf(bore: number) {
  const found = hoseClassOf(mm(bore));
  if (!found) throw new Error('no class');
  return found;
}

describe('brake hose (49 CFR 571.106)', () => {
  // Table I in cm³/m, worked from cc/ft with 3.28084 ft/m
  it.each([
    [3.2, 'HR', [2.165, 2.592, 3.97]],
    [3.2, 'HL', [1.083, 1.378, 2.001]],
    [4.8, 'HR', [2.822, 3.346, 5.479]],
    [4.8, 'HL', [1.804, 2.362, 2.986]],
    [6.3, 'HR', [3.412, 4.265]],
    [6.3, 'HL', [2.69, 3.839]],
  ] as const)('%f mm bore %s swells at most %j cm³/m at 1000, 1500, 2900 psi', (bore, type, growths) => {
    const pressures = [1000, 1500, 2900];
    for (const [index, growth] of growths.entries()) {
      const limit = expansionLimitAt(classOf(bore), type, psi(pressures[index] ?? 0));
      expect(Math.abs((limit ?? 0) * 1e6 - growth)).toBeLessThan(0.0006);
    }
  });

  it.each([
    [inch(1 / 8), 7000],
    [mm(3.2), 7000],
    [mm(3), 7000],
    [inch(3 / 16), 5000],
    [mm(5), 5000],
    [inch(1 / 4), 5000],
  ])('bore %f m bursts at no less than %f psi and holds 4000 psi', (bore, burst) => {
    expect(hoseClassOf(bore)?.burst).toBe(psi(burst));
    expect((hoseClassOf(bore)?.hold ?? 0) / 1e6).toBeCloseTo(27.58, 2);
  });

  it('3/16 in and 5 mm bore are of the middle class, 1/4 in of the last', () => {
    expect(hoseClassOf(inch(3 / 16))).toBe(hoseClasses[1]);
    expect(hoseClassOf(mm(5))).toBe(hoseClasses[1]);
    expect(hoseClassOf(inch(1 / 4))).toBe(hoseClasses[2]);
    expect(hoseClassOf(mm(0))).toBeUndefined();
    expect(hoseClassOf(si('length', Number.NaN))).toBeUndefined();
  });

  it('growth rises with pressure, low expansion grows less, and nothing is said beyond the tested pressures', () => {
    const pressures = fc.double({ min: 0, max: 20e6, noNaN: true });
    fc.assert(
      fc.property(pressures, pressures, fc.constantFrom(...hoseClasses), (a, b, hose) => {
        const at = (pressure: number, type: ExpansionClass) => expansionLimitAt(hose, type, si('pressure', pressure));
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const grown = [at(low, 'HL'), at(low, 'HR'), at(high, 'HR')];
        for (const growth of grown) if (growth === undefined) return;
        expect(grown[0]).toBeLessThanOrEqual(grown[1] ?? 0);
        expect(grown[1]).toBeLessThanOrEqual(grown[2] ?? 0);
      }),
    );
    expect(expansionLimitAt(classOf(6.3), 'HR', megapascal(12))).toBeUndefined();
    expect(expansionLimitAt(classOf(3), 'HR', megapascal(-1))).toBeUndefined();
    expect(expansionLimitAt(classOf(3), 'HR', megapascal(0))).toBe(0);
  });

  // S6.6.1(b)
  it.each([
    [2.5, 63.5],
    [3, 76.2],
    [3.175, 76.2],
    [4.7625, 88.9],
    [6, 88.9],
    [6.35, 88.9],
    [8, 101.6],
  ])('%f mm bore is bent cold round %f mm', (bore, cylinder) => {
    expect((coldBendCylinder(mm(bore)) ?? 0) * 1000).toBeCloseTo(cylinder, 9);
  });
});

describe('hose ends', () => {
  it('only the male end that is screwed straight in turns the hose with it', () => {
    expect(hoseEndOf('male', 'washer')?.tightening).toBe('with-hose');
    expect(hoseEndOf('female', 'inverted-flare')?.tightening).toBe('free');
    expect(hoseEndOf('female', 'banjo')).toMatchObject({ tightening: 'free', measuredTo: 'bolt-hole centre' });
    expect(hoseEndOf('male', 'banjo')).toBeUndefined();
  });
});
