/** thread-mismatch: two threads at a joint that are not one thread. */
import { published } from '../standards/source.ts';
import { exampleLine } from './joints/example-line.ts';
import { misfitRule } from './joints/misfit-rule.ts';

export const threadMismatch = misfitRule({
  code: 'thread-mismatch',
  cause: 'thread',
  question: 'Are both threads of the joint one and the same?',
  why: 'Some threads start into one another, feel right and strip when they are tightened, or let go at the first hard stop. Others do not start at all, and the right nut has to be bought before the line is made.',
  severity: 'error',
  source: published('SAE J512 inverted-flare and ISO 4038 tube nuts, as printed in trade lists of brake threads'),
  acceptable: true,
  fires: [
    {
      title: 'a metric nut in an inch port',
      text: exampleLine({ port: '3/8-24 inverted-flare', nut: 'M10x1', flare: 'double-45' }),
    },
    {
      title: 'the nut of the next size of tube',
      text: exampleLine({ port: '7/16-24 inverted-flare', nut: '3/8-24', flare: 'double-45' }),
    },
  ],
  silent: [
    {
      title: 'one thread on both sides',
      text: exampleLine({ port: '3/8-24 inverted-flare', nut: '3/8-24', flare: 'double-45' }),
    },
    {
      title: 'one thread in two spellings',
      text: exampleLine({ port: '3/8 UNF inverted-flare', nut: '3/8-24', flare: 'double-45' }),
    },
    {
      title: 'a port that is still to be measured',
      text: exampleLine({ port: '? inverted-flare', nut: 'M10x1', flare: 'double-45' }),
    },
    {
      title: 'an oversize nut at the master',
      text: exampleLine({ port: '1/2-20 inverted-flare', nut: '3/8-24', flare: 'double-45', atMain: '{ nut 1/2-20 }' }),
    },
  ],
});
