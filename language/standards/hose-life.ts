/** How long the trade leaves a brake hose on a vehicle. No standard limits it; the maker's schedule is the rule. */

import { commonPractice } from './source.ts';

export const hoseLife = {
  /** From here on it is looked at with suspicion. */
  years: 6,
  source: commonPractice('hoses are changed all together at about six years; old ones swell shut inside'),
} as const;
