/** Threads that start into one another and strip: the mistake that holds at the bench and lets go under the pedal. */

import { fromMemory, published, type Source } from './source.ts';

export interface StrippingPair {
  readonly threads: readonly [string, string];
  readonly why: string;
  readonly source: Source;
}

/** Pairs that feel right for a turn or two, then cut each other's flanks away; named as in `threads`. */
export const strippingPairs: readonly StrippingPair[] = [
  {
    threads: ['3/8-24', 'M10x1'],
    why: '3/8-24 is 9.53 mm with 1.06 mm pitch, M10x1 is 10 mm with 1 mm pitch: they start into each other and strip',
    source: published('warning printed in trade lists of American and metric brake threads; sizes from the names'),
  },
  {
    threads: ['7/16-20', '7/16-24'],
    why: 'both are 7/16 in across, with 20 against 24 threads to the inch: they start and then cross',
    source: published(
      'trade lists: 7/16-20 is the 45° and 37° flare series, 7/16-24 the inverted flare; sizes from the names',
    ),
  },
  pairFromSizes('9/16-18', '9/16-20', 'both are 9/16 in across, with 18 against 20 threads to the inch'),
  pairFromSizes('9/16-18', 'M14x1.5', '14.29 mm with 1.41 mm pitch against 14 mm with 1.5 mm pitch'),
  pairFromSizes(
    '1/2-20',
    'M12x1.25',
    '12.7 mm with 1.27 mm pitch against 12 mm with 1.25 mm pitch: the metric one goes right in and hangs by its tips',
  ),
  pairFromSizes('5/16-24', 'M8x1', '7.94 mm with 1.06 mm pitch against 8 mm with 1 mm pitch'),
  pairFromSizes('5/16-24', '5/16-28', 'both are 5/16 in across, with 24 against 28 threads to the inch'),
  pairFromSizes('M8x1', 'M8x1.25', 'both are 8 mm across, with 1 mm against 1.25 mm pitch'),
  pairFromSizes('M10x1', 'M10x1.25', 'both are 10 mm across, with 1 mm against 1.25 mm pitch'),
  pairFromSizes('M10x1.25', 'M10x1.5', 'both are 10 mm across, with 1.25 mm against 1.5 mm pitch'),
  pairFromSizes('M12x1', 'M12x1.25', 'both are 12 mm across, with 1 mm against 1.25 mm pitch'),
  pairFromSizes('M12x1.25', 'M12x1.5', 'both are 12 mm across, with 1.25 mm against 1.5 mm pitch'),
  pairFromSizes('M12x1', 'M12x1.5', 'both are 12 mm across, with 1 mm against 1.5 mm pitch'),
  pairFromSizes('1/8 NPT', '1/8 BSP', '27 threads to the inch with 60° flanks on a taper against 28 with 55° flanks'),
  pairFromSizes(
    '1/8 NPT',
    '1/8 BSPT',
    '27 threads to the inch with 60° flanks against 28 with 55° flanks, both tapered',
  ),
  pairFromSizes('1/4 NPT', '1/4 BSP', '18 threads to the inch with 60° flanks on a taper against 19 with 55° flanks'),
  pairFromSizes(
    '1/4 NPT',
    '1/4 BSPT',
    '18 threads to the inch with 60° flanks against 19 with 55° flanks, both tapered',
  ),
  pairFromSizes('3/8 NPT', '3/8 BSP', '18 threads to the inch with 60° flanks on a taper against 19 with 55° flanks'),
  pairFromSizes('1/8 BSP', 'M10x1', '9.73 mm with 0.91 mm pitch against 10 mm with 1 mm pitch'),
  pairFromSizes('1/8 BSP', '3/8-24', '9.73 mm with 0.91 mm pitch against 9.53 mm with 1.06 mm pitch'),
  pairFromSizes('3/8-24', '3/8 BSF', 'both are 3/8 in across, with 24 against 20 threads to the inch and other flanks'),
  pairFromSizes(
    '7/16-20',
    '7/16 BSF',
    'both are 7/16 in across, with 20 against 18 threads to the inch and other flanks',
  ),
  pairFromSizes(
    '5/16-24',
    '5/16 BSF',
    'both are 5/16 in across, with 24 against 22 threads to the inch and other flanks',
  ),
  pairFromSizes('1/4-28', '1/4 BSF', 'both are 1/4 in across, with 28 against 26 threads to the inch and other flanks'),
];

function pairFromSizes(first: string, second: string, sizes: string): StrippingPair {
  return {
    threads: [first, second],
    why: `${sizes}: they start into each other and strip`,
    source: fromMemory('known from the bench; the sizes follow from the names of the threads'),
  };
}
