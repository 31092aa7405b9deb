/** What the compiler refuses, and the arithmetic that keeps dimensions. */
import { describe, expect, test } from 'vitest';
import {
  add,
  arcLength,
  circleArea,
  circleDiameter,
  combineEstimates,
  cylinderVolume,
  differenceOf,
  type Estimate,
  exactly,
  negated,
  overArea,
  ratioOf,
  type Si,
  scale,
  si,
  subtract,
  sumEstimates,
  sweptLength,
  timesArea,
  timesArm,
} from '../../language/quantity/index.ts';

const metre = si('length', 1);
const pascal = si('pressure', 1);

// Each line must fail to compile; `tsc -p tests` complains of every one that does not.
// @ts-expect-error a pressure is not added to a length
void (() => add(metre, pascal));
// @ts-expect-error nor taken from it
void (() => subtract(metre, pascal));
// @ts-expect-error nor held against it
void (() => ratioOf(metre, pascal));
// @ts-expect-error a plain number has no unit
void (() => circleArea(0.02));
// @ts-expect-error the area comes second
void (() => timesArea(circleArea(metre), pascal));
// @ts-expect-error a diameter is not an area
void (() => timesArea(pascal, metre));
// @ts-expect-error a pressure is no length
void ((): Si<'length'> => pascal);
// @ts-expect-error the sum of two lengths is a plain number until `add` makes it a length
void ((): Si<'length'> => metre + metre);
// @ts-expect-error estimates of two dimensions are not summed
void (() => sumEstimates('length', [exactly(metre), exactly(pascal)]));
// @ts-expect-error nor subtracted
void (() => differenceOf(exactly(metre), exactly(pascal)));
// @ts-expect-error a function of a length is not given a pressure
void (() => combineEstimates('area', (d: Si<'length'>) => circleArea(d), exactly(pascal)));
// @ts-expect-error an estimate of a pressure is none of a length
void ((): Estimate<'length'> => exactly(pascal));
// @ts-expect-error there is no such dimension
void (() => si('lenght', 1));

describe('arithmetic', () => {
  test('sums, differences, factors and ratios', () => {
    expect(add(metre, si('length', 2))).toBe(3);
    expect(subtract(metre, si('length', 2))).toBe(-1);
    expect(scale(pascal, 6.2)).toBe(6.2);
    expect(negated(metre)).toBe(-1);
    expect(Object.is(negated(si('angle', 0)), 0)).toBe(true);
    expect(ratioOf(si('length', 3), si('length', 2))).toBe(1.5);
  });

  test('circles: the diameter of its area is the diameter', () => {
    // Area of a circle of diameter 1: π/4 (any handbook of geometry).
    expect(circleArea(metre)).toBeCloseTo(0.7853981633974483, 15);
    expect(circleDiameter(circleArea(si('length', 0.0254)))).toBeCloseTo(0.0254, 15);
  });

  test('a cylinder, filled and emptied over its length', () => {
    const area = circleArea(si('length', 0.022225));
    const volume = cylinderVolume(area, si('length', 0.016));
    expect(sweptLength(volume, area)).toBeCloseTo(0.016, 15);
  });

  test('pressure, area and force', () => {
    const area = circleArea(si('length', 0.0254));
    // 1000 psi on a piston of 1 in: π/4 × 1000 lbf = 785.398 lbf, each 4.448 222 N (NIST SP 811).
    const force = timesArea(si('pressure', 6894757.293168361), area);
    expect(force / 4.4482216152605).toBeCloseTo(785.398163, 5);
    expect(overArea(force, area)).toBeCloseTo(6894757.293168361, 6);
  });

  test('torque and arc', () => {
    expect(timesArm(si('force', 300), si('length', 0.2))).toBeCloseTo(60, 12);
    expect(arcLength(si('length', 0.016), si('angle', Math.PI / 2))).toBeCloseTo(0.025132741, 9);
  });
});
