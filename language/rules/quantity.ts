/** quantity: a number without its unit, a unit that does not exist or one of the wrong kind. */
import { published } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const quantity = problemRule('quantity', {
  question: 'Is every number a quantity of the right kind, with its unit?',
  why: 'A pressure where a length belongs, or a number without a unit, makes every figure that rests on it wrong; so no figure is worked out from it until it is written rightly.',
  source: published('NIST SP 811, for the units and what they measure'),
  fires: [
    { title: 'a bore without a unit', text: 'master main single {\n  bore 3/4\n  port out: 3/8-24 inverted-flare\n}' },
    {
      title: 'a pressure where a length belongs',
      text: 'master main single {\n  bore 60 psi\n  port out: 3/8-24 inverted-flare\n}',
    },
  ],
  silent: [
    { title: 'a bore in inches', text: 'master main single {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n}' },
    {
      title: 'a bore still to be measured',
      text: 'master main single {\n  bore ?\n  port out: 3/8-24 inverted-flare\n}',
    },
  ],
});
