/**
 * Brake fluids: grades, boiling points, and what may meet what.
 * Source: 49 CFR 571.116 (FMVSS 116) S5.1, S5.1.10, S5.2.2.3; densities and stiffness from memory.
 */

import { type Si, si } from '../quantity/dimension.ts';
import { commonPractice, fromMemory, published, type Source } from './source.ts';
import { celsius, megapascal } from './written-units.ts';

export const fluidNames = ['dot-3', 'dot-4', 'dot-5', 'dot-5.1', 'mineral'] as const;

export type FluidName = (typeof fluidNames)[number];

export type FluidBase = 'glycol' | 'silicone' | 'mineral';

export interface Range<T> {
  readonly low: T;
  readonly high: T;
}

export interface Fluid {
  readonly name: FluidName;
  readonly words: string;
  readonly base: FluidBase;
  /** Least reflux boiling points, dry and with 3.7 % water; the standard sets none for mineral oil. */
  readonly boiling?: { readonly dry: Si<'temperature'>; readonly wet: Si<'temperature'> };
  readonly colour: string;
  readonly density: Range<Si<'density'>>;
  /** Resistance to squeezing when clean, free of air, at 20 °C to 40 °C. */
  readonly bulkModulus: Range<Si<'pressure'>>;
  readonly source: Source;
  readonly physicalSource: Source;
}

export type Mixing =
  | { readonly kind: 'mixes'; readonly remark: string; readonly source: Source }
  | { readonly kind: 'must-not-mix'; readonly why: string; readonly source: Source };

const grades = published('49 CFR 571.116 S5.1.1, S5.1.2, S5.1.14');
const remembered = fromMemory('usual ranges of density and bulk modulus; wide and doubtful');

const range = <T>(low: T, high: T): Range<T> => ({ low, high });
const density = (low: number, high: number) => range(si('density', low), si('density', high));
const gigapascal = (low: number, high: number) => range(megapascal(low * 1000), megapascal(high * 1000));

const glycol = {
  base: 'glycol',
  colour: 'colourless to amber',
  density: density(1030, 1070),
  bulkModulus: gigapascal(1.5, 2.1),
  source: grades,
  physicalSource: remembered,
} as const;

export const fluids: Readonly<Record<FluidName, Fluid>> = {
  'dot-3': { name: 'dot-3', words: 'DOT 3', boiling: { dry: celsius(205), wet: celsius(140) }, ...glycol },
  'dot-4': { name: 'dot-4', words: 'DOT 4', boiling: { dry: celsius(230), wet: celsius(155) }, ...glycol },
  'dot-5.1': { name: 'dot-5.1', words: 'DOT 5.1', boiling: { dry: celsius(260), wet: celsius(180) }, ...glycol },
  'dot-5': {
    name: 'dot-5',
    words: 'DOT 5 (silicone)',
    base: 'silicone',
    boiling: { dry: celsius(260), wet: celsius(180) },
    colour: 'purple',
    density: density(930, 970),
    bulkModulus: gigapascal(1.0, 1.3),
    source: grades,
    physicalSource: remembered,
  },
  mineral: {
    name: 'mineral',
    words: 'mineral oil',
    base: 'mineral',
    colour: 'green',
    density: density(830, 890),
    bulkModulus: gigapascal(1.4, 1.9),
    source: published('49 CFR 571.116 S5.1.14'),
    physicalSource: remembered,
  },
};

/** Whether two fluids may meet in one system, and why not where they must not. */
export function fluidsMix(a: FluidName, b: FluidName): Mixing {
  const bases = [fluids[a].base, fluids[b].base];
  if (a === b) return { kind: 'mixes', remark: 'it is the same fluid', source: commonPractice('same grade') };
  if (bases.includes('mineral') && !bases.every((base) => base === 'mineral')) {
    return {
      kind: 'must-not-mix',
      why: 'mineral oil and DOT fluids each ruin the rubber of the other’s seals, and a brake whose seals swell fails',
      source: published(
        '49 CFR 571.116 S5.2.2.3(e): mineral oil is not compatible with rubber parts of DOT-fluid systems',
      ),
    };
  }
  if (bases.includes('silicone')) {
    return {
      kind: 'must-not-mix',
      why: 'silicone does not dissolve in glycol fluids: they lie in layers, and water gathers at the lowest point',
      source: published('49 CFR 571.116 S5.1.10 excuses silicone from the test against layering; common practice'),
    };
  }
  return {
    kind: 'mixes',
    remark: 'glycol fluids mix with each other, and the mixture boils no higher than the poorer one',
    source: commonPractice('DOT 3, DOT 4 and DOT 5.1 mix'),
  };
}
