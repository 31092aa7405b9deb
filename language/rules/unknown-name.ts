/** unknown-name: a part, port, place or stock that the file does not have. */
import { commonPractice } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const unknownName = problemRule('unknown-name', {
  question: 'Is everything that is named here declared?',
  why: 'A line that leads to a part that is not there is left out of the circuit, and so are the brakes behind it.',
  source: commonPractice('a name stands for one thing, and the thing has to be there'),
  fires: [
    {
      title: 'a port that the tee does not have',
      text: 'tee front { ports feed, left, right: 3/8-24 inverted-flare }\nrun line {\n  tube 3/16 in\n  from front.lft\n}',
    },
  ],
  silent: [
    {
      title: 'a port that it has',
      text: 'tee front { ports feed, left, right: 3/8-24 inverted-flare }\nrun line {\n  tube 3/16 in\n  from front.left\n}',
    },
  ],
});
