/** What residual valves hold in drum and in disc brakes. */

import { commonPractice } from './source.ts';
import { psi } from './written-units.ts';

export const residualUse = {
  drums: { usual: psi(10) },
  /** Above `most` pads drag. */
  discs: { usual: psi(2), most: psi(4) },
  source: commonPractice('valves are sold for 10 psi (drums) and 2 psi (discs, with the master below them)'),
} as const;
