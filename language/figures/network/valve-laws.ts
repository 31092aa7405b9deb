/** Outlet pressure of each kind of valve from its inlet pressure while the pedal goes down; each rises or stays. */
import { type Si, si } from '../../quantity/index.ts';

/**
 * Proportioning valve, gauge Pa: as the inlet up to the split point, from there `slope` for each Pa more.
 * Slope 0 (a limiter) to 1. Source: common practice for fixed-slope reducing valves.
 */
export function proportioned(inlet: Si<'pressure'>, splitPoint: Si<'pressure'>, slope: Si<'number'>): Si<'pressure'> {
  return inlet <= splitPoint ? inlet : si('pressure', splitPoint + slope * (inlet - splitPoint));
}

/**
 * Metering valve, gauge Pa: nothing until it opens, all from `fullAt` on, on a straight line between. Common practice;
 * the creep before it opens is left out.
 */
export function metered(inlet: Si<'pressure'>, opensAt: Si<'pressure'>, fullAt: Si<'pressure'>): Si<'pressure'> {
  if (inlet >= fullAt) return inlet;
  if (inlet <= opensAt) return si('pressure', 0);
  return si('pressure', (fullAt * (inlet - opensAt)) / (fullAt - opensAt));
}

/** Check valve in its direction, gauge Pa: what is left after the spring that holds it shut. */
export function checked(inlet: Si<'pressure'>, cracking: Si<'pressure'>): Si<'pressure'> {
  return si('pressure', Math.max(0, inlet - cracking));
}

/**
 * Booster in the line, gauge Pa: gain times the inlet until the outlet reaches the knee, then as much more as the inlet
 * rises.
 */
export function lineBoosted(inlet: Si<'pressure'>, gain: Si<'number'>, knee: Si<'pressure'>): Si<'pressure'> {
  return si('pressure', Math.min(gain * inlet, inlet + knee * (1 - 1 / gain)));
}

/**
 * Pressure (Pa) of a column of fluid: density (kg/m³) × standard gravity × height (m), negative for a place above.
 * Source: hydrostatics.
 */
export function staticHead(density: Si<'density'>, height: Si<'length'>): Si<'pressure'> {
  return si('pressure', density * 9.806_65 * height);
}
