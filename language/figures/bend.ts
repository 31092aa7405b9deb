/**
 * The geometry of one bend in tube: arc, setback from corner to tangent, gain, and where to mark it.
 * Plain plane geometry on the centre line (Machinery's Handbook bending chapter, from memory): no spring-back, no stretch.
 * Angles are deflections: 0 is straight on, π turns back. Radii are to the centre line.
 */

import { type Dimension, type Si, si } from '../quantity/dimension.ts';
import { combineEstimates, type Estimate } from '../quantity/estimate.ts';

/** From this deflection on the corner lies so far outside that lengths to it mean nothing (setback over 114 radii). */
export const hairpin = si('angle', (179 * Math.PI) / 180);

/** Length in m of a bend of radius R (m) and angle θ (rad): R θ. */
export const bendArc = (radius: Si<'length'>, angle: Si<'angle'>): Si<'length'> => si('length', radius * angle);

/** Distance in m from tangent point to corner: R tan(θ/2). For 0 ≤ θ < π; not finite or negative beyond. */
export const setback = (radius: Si<'length'>, angle: Si<'angle'>): Si<'length'> =>
  si('length', radius * Math.tan(angle / 2));

/** How much shorter in m the bend is than the two legs to its corner: 2 R tan(θ/2) − R θ. For 0 ≤ θ < π. */
export const bendGain = (radius: Si<'length'>, angle: Si<'angle'>): Si<'length'> =>
  si('length', 2 * setback(radius, angle) - bendArc(radius, angle));

/**
 * Distance in m from the reference to the start of a bend whose far outside is to stand `outside` from the reference:
 * A − (R + D/2) tan(θ/2), which for 90° is A − R − D/2. For 0 ≤ θ < π.
 */
export function bendStartForOutside(
  outside: Si<'length'>,
  bend: { readonly radius: Si<'length'>; readonly angle: Si<'angle'>; readonly tubeOd: Si<'length'> },
): Si<'length'> {
  return si('length', outside - (bend.radius + bend.tubeOd / 2) * Math.tan(bend.angle / 2));
}

/** Arc with its tolerance: rises in both. */
export const arcOf = (radius: Estimate<'length'>, angle: Estimate<'angle'>): Estimate<'length'> =>
  combineEstimates('length', bendArc, radius, angle);

/** Setback with its tolerance: rises in both. */
export const setbackOf = (radius: Estimate<'length'>, angle: Estimate<'angle'>): Estimate<'length'> =>
  combineEstimates('length', setback, radius, angle);

/**
 * What a bend adds to a length made up of its legs: its arc less a setback for each leg measured to the corner. Taken
 * as one function of radius and angle, so that a doubtful radius is not counted as two.
 */
export function bendShare(
  radius: Estimate<'length'>,
  angle: Estimate<'angle'>,
  legsToCorner: 0 | 1 | 2,
): Estimate<'length'> {
  const share = (r: Si<'length'>, a: Si<'angle'>) => bendArc(r, a) - legsToCorner * setback(r, a);
  const whole = combineEstimates('length', share, radius, angle);
  if (legsToCorner !== 1 || angle.low >= square || angle.high <= square) return whole;
  // With one such leg the share rises up to 90° and falls after: the top belongs to the limits too.
  const top = combineEstimates('length', share, radius, { ...angle, value: square, low: square, high: square });
  return { ...whole, low: least(whole.low, top.low), high: greatest(whole.high, top.high) };
}

const square = si('angle', Math.PI / 2);

const least = <D extends Dimension>(a: Si<D>, b: Si<D>): Si<D> => (a < b ? a : b);
const greatest = <D extends Dimension>(a: Si<D>, b: Si<D>): Si<D> => (a > b ? a : b);
