/** How much of the pull of the hand comes through lever, cables and equaliser of a parking brake. */

import { si } from '../quantity/dimension.ts';
import { fromMemory } from './source.ts';

export const usualParkingEfficiency = {
  low: si('number', 0.6),
  high: si('number', 0.8),
  source: fromMemory('brake handbooks: 0.6 to 0.8 for lever, cables and guides together'),
} as const;
