/** How far tube springs back out of a bend, so that it is bent a little past. Calibrate with one bend of the same tube. */

import { fromMemory, type Source } from './source.ts';
import type { TubeMaterialName } from './tube-materials.ts';

export interface SpringBack {
  /** As a part of the bend angle. */
  readonly low: number;
  readonly high: number;
  readonly source: Source;
}

const soft: SpringBack = {
  low: 0.02,
  high: 0.05,
  source: fromMemory('2 % to 5 % of the angle for copper-nickel and soft steel tube'),
};
const stiff: SpringBack = { low: 0.05, high: 0.1, source: fromMemory('5 % to 10 % of the angle for stainless tube') };

/** Undefined for an unknown material and for those of which no figure is known. */
export function springBackOf(material: TubeMaterialName | undefined): SpringBack | undefined {
  switch (material) {
    case 'stainless':
      return stiff;
    case 'copper-nickel':
    case 'steel':
    case 'coated-steel':
      return soft;
    default:
      return undefined;
  }
}
