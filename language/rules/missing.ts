/** missing: something that the part cannot be understood without. */
import { commonPractice } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const missing = problemRule('missing', {
  question: 'Is everything said that this part cannot be understood without?',
  why: 'Some words decide how many circuits there are or how a part works; without them the circuit cannot be read.',
  source: commonPractice('what has to be known of a part before anything can be worked out'),
  fires: [
    {
      title: 'a master that does not say whether it is single or tandem',
      text: 'master main {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n}',
    },
  ],
  silent: [
    { title: 'a single master', text: 'master main single {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n}' },
  ],
});
