import { describe, expect, it } from 'vitest';
import { si } from '../../language/quantity/dimension.ts';
import { fluidNames, fluids, fluidsMix } from '../../language/standards/fluids.ts';
import { pressureMarkExceeded, pressureMarks } from '../../language/standards/line-pressure.ts';
import { type Magnitude, magnitudes, oddity } from '../../language/standards/magnitudes.ts';
import { inch, megapascal, mm, psi } from '../../language/standards/written-units.ts';

describe('brake fluids (49 CFR 571.116)', () => {
  it.each([
    ['dot-3', 205, 140],
    ['dot-4', 230, 155],
    ['dot-5', 260, 180],
    ['dot-5.1', 260, 180],
  ] as const)('%s boils at no less than %f °C dry and %f °C wet', (name, dry, wet) => {
    expect((fluids[name].boiling?.dry ?? 0) - 273.15).toBeCloseTo(dry, 9);
    expect((fluids[name].boiling?.wet ?? 0) - 273.15).toBeCloseTo(wet, 9);
  });

  it('glycol fluids mix, silicone and mineral oil mix with nothing else, in either order', () => {
    const glycol = ['dot-3', 'dot-4', 'dot-5.1'];
    for (const a of fluidNames)
      for (const b of fluidNames) {
        const expected = a === b || (glycol.includes(a) && glycol.includes(b)) ? 'mixes' : 'must-not-mix';
        expect(fluidsMix(a, b).kind).toBe(expected);
      }
    expect(fluidsMix('mineral', 'dot-4')).toMatchObject({ why: expect.stringContaining('seals') });
    expect(fluidsMix('dot-5', 'dot-4')).toMatchObject({ why: expect.stringContaining('layers') });
  });

  it('have ranges the right way round', () => {
    for (const name of fluidNames) {
      expect(fluids[name].name).toBe(name);
      expect(fluids[name].density.low).toBeLessThan(fluids[name].density.high);
      expect(fluids[name].bulkModulus.low).toBeLessThan(fluids[name].bulkModulus.high);
    }
  });
});

describe('line pressures', () => {
  it('stand in rising order', () => {
    const marks = Object.values(pressureMarks).map(({ pressure }) => pressure);
    expect(marks).toEqual([...marks].sort((a, b) => a - b));
  });

  it('4000 psi is not above the proof of a hose, a little more is', () => {
    expect(pressureMarkExceeded(psi(900))).toBeUndefined();
    expect(pressureMarkExceeded(psi(4000))).toBe(pressureMarks.highestInService);
    expect(pressureMarkExceeded(megapascal(28))).toBe(pressureMarks.hoseProof);
  });
});

describe('magnitudes', () => {
  it('a 3 m bore is asked about, and so is a pressure above the proof of a hose', () => {
    expect(oddity(magnitudes.masterBore, si('length', 3))?.kind).toBe('larger-than-any');
    expect(oddity(magnitudes.linePressure, megapascal(30))?.kind).toBe('larger-than-any');
    expect(oddity(magnitudes.liningFriction, si('number', 38))?.kind).toBe('larger-than-any');
    expect(oddity(magnitudes.tubeOd, mm(0.475))?.kind).toBe('smaller-than-any');
  });

  // Sizes met in the trade: bores 3/4 to 1 1/4 in (common practice), pedal ratios 3.5 to 7, hose bores 1/8 to 1/4 in
  it.each([
    [magnitudes.masterBore, [inch(0.75), inch(1.25), inch(1.5)]],
    [magnitudes.cylinderBore, [inch(0.625), inch(1.25), inch(2)]],
    [magnitudes.pistonBore, [mm(22), mm(54), mm(86)]],
    [magnitudes.tubeOd, [inch(1 / 8), inch(3 / 16), mm(4.75), inch(1 / 2)]],
    [magnitudes.tubeWall, [inch(0.028), mm(0.9)]],
    [magnitudes.hoseBore, [inch(1 / 8), mm(3), inch(1 / 4), mm(8)]],
    [magnitudes.drumDiameter, [inch(7), inch(11), inch(15)]],
    [magnitudes.pedalTravel, [mm(50), mm(190)]],
    [magnitudes.bendRadius, [mm(12), mm(25), mm(300)]],
  ] satisfies readonly (readonly [Magnitude<'length'>, readonly ReturnType<typeof mm>[]])[])(
    'real sizes pass: %o',
    (magnitude, sizes) => {
      for (const size of sizes) expect(oddity(magnitude, size)).toBeUndefined();
    },
  );

  it('real pressures and ratios pass', () => {
    for (const ratio of [3.5, 6.2, 7]) expect(oddity(magnitudes.pedalRatio, si('number', ratio))).toBeUndefined();
    for (const pressure of [psi(2), psi(10), psi(25)])
      expect(oddity(magnitudes.residualPressure, pressure)).toBeUndefined();
    for (const pressure of [psi(20), psi(60), psi(120)])
      expect(oddity(magnitudes.switchPressure, pressure)).toBeUndefined();
  });

  it('every range has width and says why', () => {
    for (const { low, high, why } of Object.values(magnitudes)) {
      expect(low).toBeLessThan(high);
      expect(why).not.toBe('');
    }
  });
});
