/** flare-mismatch: the flare on the tube does not seal in the seat of the port. */
import { published } from '../standards/source.ts';
import { exampleLine } from './joints/example-line.ts';
import { misfitRule } from './joints/misfit-rule.ts';

export const flareMismatch = misfitRule({
  code: 'flare-mismatch',
  cause: 'flare',
  question: 'Does the flare on the tube seal in the seat of the port?',
  why: 'A double flare, a bubble flare and a single flare each need the seat that they are made for. In another one the metal touches on a thin line: it may hold at first and leak or crack later.',
  severity: 'error',
  source: published('SAE J512 and ISO 4038, scope pages; SAE J533 for the flares'),
  acceptable: false,
  fires: [
    {
      title: 'a bubble flare in an inverted-flare port',
      text: exampleLine({ port: '3/8-24 inverted-flare', nut: '3/8-24', flare: 'bubble' }),
    },
    {
      title: 'a double flare in a bubble-flare port',
      text: exampleLine({ port: 'M10x1 bubble', nut: 'M10x1', flare: 'double-45' }),
    },
    {
      title: 'a single 45° flare in an inverted-flare port',
      text: exampleLine({ port: '3/8-24 inverted-flare', nut: '3/8-24', flare: 'single-45' }),
    },
    {
      title: 'a tube without a flare',
      text: exampleLine({ port: '3/8-24 inverted-flare', nut: '3/8-24', flare: 'none' }),
    },
  ],
  silent: [
    {
      title: 'a double flare in an inverted-flare port',
      text: exampleLine({ port: '3/8-24 inverted-flare', nut: '3/8-24', flare: 'double-45' }),
    },
    {
      title: 'a bubble flare in a bubble-flare port',
      text: exampleLine({ port: 'M10x1 bubble', nut: 'M10x1', flare: 'bubble' }),
    },
    { title: 'a flare still to be looked at', text: exampleLine({ port: 'M10x1 bubble', nut: 'M10x1', flare: '?' }) },
    {
      title: 'different flares at the two ends, each in its own seat',
      text: exampleLine({ port: '3/8-24 bubble', nut: '3/8-24', flare: 'double-45', atMain: '{ flare bubble }' }),
    },
  ],
});
