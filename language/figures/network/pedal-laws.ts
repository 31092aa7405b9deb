/** From the foot to the piston of the master: lever, booster, springs; each law rises with the push or stays. */
import { type Si, si } from '../../quantity/index.ts';

export interface Lever {
  readonly ratio: Si<'number'>;
  readonly efficiency: Si<'number'>;
  /** At the pad. */
  readonly returnForce: Si<'force'>;
}

/**
 * Force in the push-rod (N) from the push at the pad (N): (push − return spring) × ratio × efficiency, zero for a push
 * that does not overcome the spring. Source: law of the lever.
 */
export function rodForceOf(push: Si<'force'>, { ratio, efficiency, returnForce }: Lever): Si<'force'> {
  return si('force', Math.max(0, push - returnForce) * ratio * efficiency);
}

/**
 * Force behind a booster (N) from the force before it (N): gain times as much until its help is used up, and the greatest
 * help (N) more from there on. For a gain of 1 or more. Source: run-out of a vacuum booster, as in Limpert, Brake Design
 * and Safety, ch. 5 (from memory); cut-in force and jump-in are left out.
 */
export function boosted(input: Si<'force'>, gain: Si<'number'>, greatestHelp: Si<'force'>): Si<'force'> {
  return si('force', Math.min(gain * input, input + greatestHelp));
}

/** Greatest help (N) of a vacuum booster: efficiency × vacuum (Pa) × working area of its diaphragms (m²). */
export function vacuumHelp(vacuum: Si<'pressure'>, area: Si<'area'>, efficiency: Si<'number'>): Si<'force'> {
  return si('force', efficiency * vacuum * area);
}

/** The same from the line pressure (Pa) at which it is used up, with the piston force (N) at that pressure. */
export function helpAtKnee(pistonForce: Si<'force'>, gain: Si<'number'>): Si<'force'> {
  return si('force', pistonForce * (1 - 1 / gain));
}

/** Gauge pressure (Pa) under a piston: what of the force (N) its spring (N) leaves, on its area (m²). */
export function pressureUnder(force: Si<'force'>, area: Si<'area'>): Si<'pressure'> {
  return si('pressure', Math.max(0, force) / area);
}
