import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendArc, bendGain, bendShare, bendStartForOutside, setback } from '../../language/figures/bend.ts';
import { type Si, si } from '../../language/quantity/dimension.ts';
import { type Estimate, exactly } from '../../language/quantity/estimate.ts';
import { degrees, inch, mm } from '../../language/standards/written-units.ts';

function around<D extends 'length' | 'angle'>(value: Si<D>, dimension: D, slack: number): Estimate<D> {
  return { ...exactly(value), low: si(dimension, value - slack), high: si(dimension, value + slack) };
}

describe('one bend', () => {
  // A workshop note on bending 1/4 in tube with a lever bender: radius 5/8 in, arc .98 in.
  it('of 90° at 5/8 in is .98 in long', () => {
    expect(bendArc(inch(5 / 8), degrees(90)) / 0.0254).toBeCloseTo(0.98, 2);
    expect(bendArc(inch(5 / 8), degrees(90)) / 0.0254).toBeCloseTo((Math.PI * 0.625) / 2, 12);
  });

  // Geometry worked by hand for 15 mm: the corner of a square on the quarter circle, and 45°.
  it('at 15 mm gains 6.438 mm at 90° and 0.6454 mm at 45°, and sets back 15 mm at 90°', () => {
    expect(bendGain(mm(15), degrees(90)) * 1000).toBeCloseTo(6.438055, 6);
    expect(bendGain(mm(15), degrees(45)) * 1000).toBeCloseTo(0.645434, 6);
    expect(setback(mm(15), degrees(90)) * 1000).toBeCloseTo(15, 12);
  });

  // Handbook form of the same: gain of a right angle is 0.4292 R.
  it('of 90° gains 0.4292 R', () => {
    expect(bendGain(si('length', 1), degrees(90))).toBeCloseTo(0.4292, 4);
  });

  // A caption on marking a bend: outside 25 in from the reference, die radius 6 in, tube 2 in: mark at 18 in.
  it('is marked at outside less radius less half the tube', () => {
    const bend = { radius: inch(6), angle: degrees(90), tubeOd: inch(2) };
    expect(bendStartForOutside(inch(25), bend) / 0.0254).toBeCloseTo(18, 12);
  });

  it('shares within its limits whatever radius and angle turn out to be, with none, one or two legs to the corner', () => {
    const unitShare = fc.double({ min: -1, max: 1, noNaN: true });
    const input = [
      fc.double({ min: 0.006, max: 0.05, noNaN: true }),
      fc.double({ min: 0.2, max: 2.6, noNaN: true }),
    ] as const;
    fc.assert(
      fc.property(
        ...input,
        unitShare,
        unitShare,
        fc.constantFrom(0, 1, 2),
        (radius, angle, moreRadius, moreAngle, legs) => {
          const share = bendShare(
            around(si('length', radius), 'length', 0.003),
            around(si('angle', angle), 'angle', 0.15),
            legs,
          );
          const [r, a] = [si('length', radius + 0.003 * moreRadius), si('angle', angle + 0.15 * moreAngle)];
          const real = bendArc(r, a) - legs * setback(r, a);
          expect(real).toBeGreaterThanOrEqual(share.low - 1e-12);
          expect(real).toBeLessThanOrEqual(share.high + 1e-12);
        },
      ),
    );
  });

  it('with one leg to the corner is longest at 90°, and the limits know it', () => {
    const angle = around(degrees(88), 'angle', 0.2);
    const share = bendShare(exactly(mm(15)), angle, 1);
    expect(share.high).toBeCloseTo(0.015 * (Math.PI / 2 - 1), 12);
  });
});
