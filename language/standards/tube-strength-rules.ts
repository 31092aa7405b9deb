/** What is asked of a tube beyond bearing the pressure once: a factor on bursting, and how much of the wall may be gone. */

import { fromMemory, published } from './source.ts';

/** Burst over the highest working pressure. */
export const burstingFactor = {
  least: 4,
  source: fromMemory('the common rule for hydraulic lines: a factor of at least 4 on bursting, 6 to 8 for shock'),
} as const;

/** Share of the wall that rust or chafing may have taken when an inspection rejects the tube. */
export const wallLoss = {
  share: 1 / 3,
  source: published('a national inspection manual: a rigid pipe is rejected when a third of its wall is gone'),
} as const;
