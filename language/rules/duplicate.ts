/** duplicate: the same thing said twice. */
import { commonPractice } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const duplicate = problemRule('duplicate', {
  question: 'Is each thing said once?',
  why: 'Where a file says a thing twice, a reader cannot know which of the two is on the vehicle; only the first is used.',
  source: commonPractice('one part, one declaration; one fact, one line'),
  fires: [
    {
      title: 'two bores',
      text: 'master main single {\n  bore 3/4 in\n  bore 7/8 in\n  port out: 3/8-24 inverted-flare\n}',
    },
    {
      title: 'two parts of one name',
      text: 'tee front { ports a, b, c: 3/8-24 inverted-flare }\ntee front { ports a, b, c: 3/8-24 inverted-flare }',
    },
  ],
  silent: [{ title: 'one bore', text: 'master main single {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n}' }],
});
