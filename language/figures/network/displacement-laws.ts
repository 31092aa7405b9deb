/** How much fluid each kind of thing takes up under pressure; all laws rise with pressure and begin at zero. */
import { type Si, si } from '../../quantity/index.ts';
import { type ExpansionClass, expansionLimitAt, type HoseClass } from '../../standards/hose.ts';

/** Standard atmosphere in Pa, which free air stands under before the pedal is pushed. */
const atmosphere: Si<'pressure'> = si('pressure', 101_325);

/** Pressure over which running clearances are taken to close: next to nothing beside any working pressure. */
export const closingPressure: Si<'pressure'> = si('pressure', 1000);

/**
 * Loss of volume in m³ of fluid (m³) under a gauge pressure (Pa): V p / B with the secant bulk modulus B (Pa).
 * For p much smaller than B. Source: definition of the bulk modulus, as in Esposito, Fluid Power with Applications, ch. 2.
 */
export function fluidSqueeze(volume: Si<'volume'>, pressure: Si<'pressure'>, modulus: Si<'pressure'>): Si<'volume'> {
  return si('volume', (volume * pressure) / modulus);
}

/**
 * Loss of volume in m³ of free air that fills `volume` (m³) at atmospheric pressure: V (1 − pₐ/(pₐ + p)). For a held
 * pedal: the air keeps its temperature. Source: Boyle’s law.
 */
export function airSqueeze(volume: Si<'volume'>, pressure: Si<'pressure'>): Si<'volume'> {
  return si('volume', (volume * pressure) / (atmosphere + pressure));
}

export interface ElasticTube {
  readonly outside: Si<'length'>;
  readonly inside: Si<'length'>;
  readonly elasticModulus: Si<'pressure'>;
  readonly poisson: Si<'number'>;
}

/**
 * Growth of the volume of a closed tube, free to lengthen, as a share of its volume for each Pa: a thick wall after Lamé.
 * For a wall that stays elastic and an inside smaller than the outside; NaN or infinite otherwise.
 * Source: thick cylinders under internal pressure, as in Roark’s Formulas for Stress and Strain (from memory).
 */
export function tubeGrowthPerPascal({ outside, inside, elasticModulus, poisson }: ElasticTube): number {
  const inner = (inside / 2) ** 2;
  const outer = (outside / 2) ** 2;
  return (3 * (1 - 2 * poisson) * inner + 2 * (1 + poisson) * outer) / (elasticModulus * (outer - inner));
}

/**
 * The most by which a metre of hose may swell (m³/m) at a gauge pressure (Pa): the limits of 49 CFR 571.106, and above
 * the last tested pressure on the last line drawn on. Zero for no pressure or less.
 */
export function hoseGrowth(
  hose: HoseClass,
  expansion: ExpansionClass,
  pressure: Si<'pressure'>,
): Si<'volume-per-length'> {
  if (!(pressure > 0)) return si('volume-per-length', 0);
  const tested = expansionLimitAt(hose, expansion, pressure);
  if (tested !== undefined) return tested;
  const [before, last] = hose.expansion[expansion].slice(-2);
  if (before === undefined || last === undefined) return si('volume-per-length', 0);
  const slope = (last.growth - before.growth) / (last.pressure - before.pressure);
  return si('volume-per-length', last.growth + slope * (pressure - last.pressure));
}

/** What share of a running clearance is closed at a gauge pressure (Pa), 0 to 1: all of it from `closes` (Pa) on. */
export function shareClosed(pressure: Si<'pressure'>, closes: Si<'pressure'> = closingPressure): number {
  return Math.min(1, Math.max(0, pressure / closes));
}
