/**
 * Brake hose: bore classes with the strength and the greatest swelling that they must show.
 * Source: 49 CFR 571.106 (FMVSS 106) S5.3.2 with Table I, S5.3.1, S6.6.1(b). Limits, not what a given hose does: real
 * hoses swell less. The stored text prints the heads of the 1,500 psi pair in the other order; read to the sense here.
 */

import { type Si, si } from '../quantity/dimension.ts';
import { published, type Source } from './source.ts';
import { inch, mm, psi } from './written-units.ts';

/** `HR` regular, `HL` low expansion: the letters printed on the hose. */
export type ExpansionClass = 'HR' | 'HL';

export interface ExpansionLimit {
  readonly pressure: Si<'pressure'>;
  /** Greatest growth of volume per length of free hose. */
  readonly growth: Si<'volume-per-length'>;
}

export interface HoseClass {
  readonly words: string;
  /** Largest nominal bore of the class; none for the last. */
  readonly boreUpTo?: Si<'length'>;
  readonly hold: Si<'pressure'>;
  readonly burst: Si<'pressure'>;
  readonly expansion: Readonly<Record<ExpansionClass, readonly ExpansionLimit[]>>;
  readonly source: Source;
}

const table = published('49 CFR 571.106 S5.3.2 and Table I');

export const hoseClasses: readonly HoseClass[] = [
  {
    words: 'bore up to 1/8 in (3 mm)',
    boreUpTo: mm(3.25),
    hold: psi(4000),
    burst: psi(7000),
    expansion: { HR: limits(0.66, 0.79, 1.21), HL: limits(0.33, 0.42, 0.61) },
    source: table,
  },
  {
    words: 'bore over 1/8 in (3 mm) up to 3/16 in (5 mm)',
    boreUpTo: mm(5.05),
    hold: psi(4000),
    burst: psi(5000),
    expansion: { HR: limits(0.86, 1.02, 1.67), HL: limits(0.55, 0.72, 0.91) },
    source: table,
  },
  {
    words: 'bore over 3/16 in (5 mm)',
    hold: psi(4000),
    burst: psi(5000),
    expansion: { HR: limits(1.04, 1.3), HL: limits(0.82, 1.17) },
    source: table,
  },
];

/** Limits in cm³ per foot at 1,000, 1,500 and 2,900 psi, as the table prints them. */
function limits(...perFoot: readonly number[]): readonly ExpansionLimit[] {
  const pressures = [1000, 1500, 2900];
  return perFoot.map((growth, index) => ({
    pressure: psi(pressures[index] ?? 0),
    growth: si('volume-per-length', (growth * 1e-6) / 0.3048),
  }));
}

/**
 * The class of a hose by nominal bore (metres). 1/8 in hose written as 3.2 mm stays in the first class and 3/16 in hose
 * in the second. Undefined for a bore that is not positive.
 */
export function hoseClassOf(bore: Si<'length'>): HoseClass | undefined {
  if (!(bore > 0)) return undefined;
  return hoseClasses.find(({ boreUpTo }) => boreUpTo === undefined || bore <= boreUpTo);
}

/**
 * Greatest growth of volume per length (m³/m) that the class allows at a gauge pressure (Pa), on straight lines from no
 * growth at no pressure through the tested pressures. Undefined below zero and above the last tested pressure.
 */
export function expansionLimitAt(
  hose: HoseClass,
  expansion: ExpansionClass,
  pressure: Si<'pressure'>,
): Si<'volume-per-length'> | undefined {
  let from = { pressure: 0, growth: 0 };
  if (!(pressure >= 0)) return undefined;
  for (const to of hose.expansion[expansion]) {
    if (pressure <= to.pressure) {
      const share = (pressure - from.pressure) / (to.pressure - from.pressure);
      return si('volume-per-length', from.growth + share * (to.growth - from.growth));
    }
    from = to;
  }
  return undefined;
}

export interface ColdBend {
  readonly boreUpTo?: Si<'length'>;
  readonly cylinder: Si<'length'>;
}

/** Diameters of the cylinders that cold hose is bent round in the test (S6.6.1(b)); half of one is a test radius, not a rule for fitting. */
const coldBends: readonly ColdBend[] = [
  { boreUpTo: mm(2.99), cylinder: inch(2.5) },
  { boreUpTo: mm(3.25), cylinder: inch(3) },
  { boreUpTo: inch(1 / 4), cylinder: inch(3.5) },
  { cylinder: inch(4) },
];

/** The cold-bend cylinder's diameter for a nominal bore (metres). */
export function coldBendCylinder(bore: Si<'length'>): Si<'length'> | undefined {
  if (!(bore > 0)) return undefined;
  return coldBends.find(({ boreUpTo }) => boreUpTo === undefined || bore <= boreUpTo)?.cylinder;
}
