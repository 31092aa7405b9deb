/** Stopping distances and the decelerations behind them, in the form in which braking standards state them. */

import { type Si, si } from '../quantity/dimension.ts';

/** Standards write S = 0.10 V + k V² with S in metres and V in km/h; the first term is the time that pressure takes. */
const kilometresPerHour = 1 / 3.6;

/** In m, at a speed in m/s. */
export function allowedDistance(k: number, speed: Si<'speed'>): Si<'length'> {
  const v = speed / kilometresPerHour;
  return si('length', 0.1 * v + k * v * v);
}

/** In m/s²: that of the second term, V² / (2 × 3.6² × k V²) = 1 / (25.92 k). */
export function steadyDeceleration(k: number): Si<'acceleration'> {
  return si('acceleration', 1 / (2 * 3.6 ** 2 * k));
}

/** In m/s²: v² / 2 s, the mean over a whole stop from a speed (m/s) in a distance (m). */
export function meanDeceleration(speed: Si<'speed'>, distance: Si<'length'>): Si<'acceleration'> {
  return si('acceleration', (speed * speed) / (2 * distance));
}
