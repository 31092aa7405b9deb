/** misplaced: a part inside something that cannot hold it. */
import { commonPractice } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const misplaced = problemRule('misplaced', {
  question: 'Does this part stand where such a part belongs?',
  why: 'A wheel cylinder by itself moves no shoes, and a caliper in a drum brake presses on nothing: what holds a part says what it does.',
  source: commonPractice('how the parts of a brake are built into each other'),
  fires: [
    {
      title: 'a caliper in a drum brake',
      text: 'drum-brake left {\n  caliper { mounting sliding  port feed: M10x1 bubble }\n}',
    },
  ],
  silent: [
    {
      title: 'a caliper in a disc brake',
      text: 'disc-brake left {\n  caliper { mounting sliding  port feed: M10x1 bubble }\n}',
    },
  ],
});
