/** The ends that brake hoses are made with: how each seals, and whether it can be tightened without twisting the hose. */

import type { Gender, SeatName } from './seats.ts';
import { commonPractice, published, type Source } from './source.ts';

export interface HoseEnd {
  readonly words: string;
  readonly gender: Gender;
  readonly seats: readonly SeatName[];
  /** `with-hose`: the hose turns as it is screwed in; `free`: something else turns and the hose stays still. */
  readonly tightening: 'with-hose' | 'free';
  /** Where a hose's stated length is measured to at this end. */
  readonly measuredTo: 'end' | 'bolt-hole centre';
  readonly source: Source;
}

const trade = commonPractice('ends of brake hoses as sold');

const hoseEnds: readonly HoseEnd[] = [
  {
    words: 'a male end screwed straight in',
    gender: 'male',
    seats: ['washer', 'inverted-flare', 'bubble', 'taper', 'o-ring'],
    tightening: 'with-hose',
    measuredTo: 'end',
    source: trade,
  },
  {
    words: 'a female end held in a bracket, into which a tube nut goes',
    gender: 'female',
    seats: ['inverted-flare', 'bubble'],
    tightening: 'free',
    measuredTo: 'end',
    source: trade,
  },
  {
    words: 'a female swivel nut over a nose',
    gender: 'female',
    seats: ['37-degree', '45-degree'],
    tightening: 'free',
    measuredTo: 'end',
    source: trade,
  },
  {
    words: 'a banjo under a hollow bolt',
    gender: 'female',
    seats: ['banjo'],
    tightening: 'free',
    measuredTo: 'bolt-hole centre',
    source: published(
      'a hose maker’s page: banjo hoses are measured to the centre of the bolt hole, others end to end',
    ),
  },
];

/** The row for an end of this gender and seat; undefined for one that hoses are not sold with. */
export const hoseEndOf = (gender: Gender, seat: SeatName): HoseEnd | undefined =>
  hoseEnds.find((end) => end.gender === gender && end.seats.includes(seat));
