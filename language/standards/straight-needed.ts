/** How much straight tube hands and tools need: behind a flare for bar and nut, between bends for the bender's hook. */

import { type Si, si } from '../quantity/dimension.ts';
import { commonPractice, fromMemory } from './source.ts';
import { mm } from './written-units.ts';

export const straightBehindFlare = {
  /** With less, a flaring bar and a nut find no room. */
  least: mm(25),
  /** With this much there is room for every usual bar and for long nuts. */
  comfortable: mm(40),
  source: commonPractice('25 mm to 40 mm of straight tube behind each flare, for the nut and the flaring bar'),
} as const;

const betweenBendsSource = fromMemory(
  'rotary bending: the clamp holds at least two outside diameters of straight tube',
);

/** Straight between two bends that a bender can hold, in m, for a tube (outside diameter in m): 2 D. */
export function straightBetweenBends(tubeOd: Si<'length'>) {
  return { least: si('length', 2 * tubeOd), source: betweenBendsSource };
}
