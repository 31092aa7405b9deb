/** How brake fluid is sold and how much of it a filling takes. */

import { type Si, si } from '../quantity/dimension.ts';
import { commonPractice } from './source.ts';

export interface Bottle {
  readonly words: string;
  readonly volume: Si<'volume'>;
}

/** Falling by size within each way of selling. The US liquid pint is 473.176 mL (NIST SP 811). */
export const fluidBottles = {
  litres: [
    { words: '1 L bottle', volume: si('volume', 1e-3) },
    { words: '0.5 L bottle', volume: si('volume', 0.5e-3) },
  ],
  pints: [{ words: 'US pint (16 fl oz) bottle', volume: si('volume', 473.176473e-6) }],
} as const satisfies Readonly<Record<string, readonly Bottle[]>>;

/** To fill, bleed and flush: this many times what the system holds. */
export const fillingFactor = {
  times: 3,
  source: commonPractice('three times what the system holds, to fill, bleed and flush it'),
} as const;

export interface BottleCount {
  readonly bottle: Bottle;
  readonly count: number;
}

/** The fewest bottles that hold a volume (m³), the least left over among those; none for nothing or no number. */
export function bottlesFor(volume: Si<'volume'>, sold: readonly Bottle[]): readonly BottleCount[] {
  const counts: BottleCount[] = [];
  let rest = Number.isFinite(volume) ? Math.max(0, volume) - 1e-9 : 0;
  for (const [index, bottle] of sold.entries()) {
    const smaller = sold[index + 1];
    const whole = Math.floor(rest / bottle.volume);
    const over = rest - whole * bottle.volume;
    // What one smaller bottle cannot hold goes into one more of these.
    const count = over > (smaller?.volume ?? 0) ? whole + 1 : whole;
    if (count > 0) counts.push({ bottle, count });
    rest -= count * bottle.volume;
    if (rest <= 0) break;
  }
  return counts;
}
