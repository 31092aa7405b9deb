/** How far apart the clips of a rigid line may be. No standard fixes it; the figures are those of the trade. */

import { commonPractice } from './source.ts';
import { inch } from './written-units.ts';

export const clipSpacing = {
  /** Within this the trade is content everywhere. */
  close: inch(12),
  /** Beyond this a line is held too loosely. */
  farthest: inch(18),
  /** A clip belongs within this of a hose end. */
  besideHoseEnd: inch(3),
  source: commonPractice('a clip every 12 in to 18 in, closer at bends, and within 3 in of a hose end'),
} as const;
