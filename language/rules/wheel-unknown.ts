/** wheel-unknown: a wheel brake of which the file does not say where it sits. */
import { commonPractice } from '../standards/source.ts';
import { wheelBrakesOf } from '../system/wheel-brakes.ts';
import { drumBrake, oneCircuit } from './example-parts.ts';
import type { Rule } from './rule.ts';
import { listed } from './wording.ts';

export const wheelUnknown: Rule = {
  code: 'wheel-unknown',
  severity: 'question',
  acceptable: true,
  question: 'At which wheel does each brake sit?',
  why: 'What is left after a leak, and how the brakes share the work, depends on axle and side.',
  source: commonPractice('names such as front-left; the fact wheel where the name does not say it'),
  fires: [
    {
      title: 'a brake with a name that says nothing',
      text: `master main single { port out: 3/8-24 inverted-flare }\n${drumBrake('brake-one')}`,
    },
    {
      title: 'nearside, which is left in one country and right in another',
      text: `master main single { port out: 3/8-24 inverted-flare }\n${drumBrake('nearside-front')}`,
    },
  ],
  silent: [
    { title: 'brakes named for their wheels', text: oneCircuit },
    {
      title: 'the wheel as a fact',
      text: `master main single { port out: 3/8-24 inverted-flare }\n${drumBrake('brake-one').replace('{', '{ wheel rear-left ')}`,
    },
    { title: 'a file without a master', text: drumBrake('brake-one') },
  ],
  check: ({ system }) => {
    if (system.circuits.length === 0) return [];
    return wheelBrakesOf(system).flatMap(({ brake, wheel }) => {
      const open = [wheel.axle === undefined ? 'axle' : '', wheel.side === undefined ? 'side' : ''].filter(Boolean);
      if (open.length === 0) return [];
      const message = `The name of ${brake.label} does not say its ${listed(open)}. Write for instance “wheel front-left” in it, or “wheel front” if the axle has one wheel.`;
      return [{ message, origin: brake.nameOrigin, subject: brake.id }];
    });
  },
};
