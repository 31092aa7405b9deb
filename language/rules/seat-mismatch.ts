/** seat-mismatch: the threads go together and the joint cannot seal. */
import { commonPractice } from '../standards/source.ts';
import { misfitRule } from './joints/misfit-rule.ts';

const hoseInto = (seat: string): string => `disc-brake left {
  caliper {
    mounting sliding
    port feed: M10x1 ${seat}
    bleeder {}
  }
}

tee front {
  ports feed, left, right: M10x1 bubble
}

hose left-hose {
  length 300 mm
  from front.left: M10x1 male bubble swivel
  to left.caliper.feed: M10x1 male washer
}
`;

export const seatMismatch = misfitRule({
  code: 'seat-mismatch',
  cause: 'seat',
  question: 'Are both sides of the joint made to seal in the same way?',
  why: 'The thread only pulls the joint together; the seat makes it tight. Two ends can share a thread and still not seal: the joint screws up, feels tight, holds for a while and then lets the fluid out under the pedal.',
  severity: 'error',
  source: commonPractice('what each kind of seat seals on: SAE J512, ISO 4038, SAE J1291 for theirs'),
  acceptable: false,
  fires: [
    { title: 'a hose end for a copper washer in a bubble-flare port', text: hoseInto('bubble') },
    {
      title: 'a tube nut in a port for a copper washer',
      text: 'master main single {\n  bore 3/4 in\n  port out: M10x1 washer\n}\n\nrun line {\n  tube 4.75 mm steel\n  nut M10x1\n  flare bubble\n  from main.out\n}\n',
    },
    {
      title: 'a banjo on an inverted-flare port',
      text: 'master main single {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n}\n\nhose front {\n  length 300 mm\n  from main.out: banjo 10 mm\n}\n',
    },
  ],
  silent: [
    { title: 'a hose end for a copper washer on a washer face', text: hoseInto('washer') },
    { title: 'the same on a face made for a banjo', text: hoseInto('banjo') },
    { title: 'a port whose seat nobody has looked at', text: hoseInto('female') },
  ],
});
