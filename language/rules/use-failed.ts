/** use-failed: a file that cannot be used. */
import { commonPractice } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const useFailed = problemRule('use-failed', {
  question: 'Is the file that this one uses there, and can it be read?',
  why: 'Stock and parts out of a file that cannot be read are missing here, and lines made of them are not checked.',
  source: commonPractice('a file is named by its way from this one and lies in the same folder of work'),
  fires: [{ title: 'a file that is not there', text: 'use "stock-room.circuit"' }],
  silent: [{ title: 'a file that stands by itself', text: 'tee front { ports a, b, c: 3/8-24 inverted-flare }' }],
});
