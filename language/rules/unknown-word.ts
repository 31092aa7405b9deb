/** unknown-word: a fact, reading or choice that the notation does not have. */
import { commonPractice } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const unknownWord = problemRule('unknown-word', {
  question: 'Is this a word that the notation has at this place?',
  why: 'What is written under a word that is not known is not read, so it is missing from every figure and check.',
  source: commonPractice('the words of the trade that the language reference lists'),
  fires: [
    { title: 'a misspelt fact', text: 'master main single {\n  boer 3/4 in\n  port out: 3/8-24 inverted-flare\n}' },
    {
      title: 'a way of arranging shoes that there is not',
      text: 'drum-brake left {\n  shoes sideways\n  cylinder { port feed: 3/8-24 inverted-flare }\n}',
    },
  ],
  silent: [
    {
      title: 'the fact spelt rightly',
      text: 'master main single {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n}',
    },
    {
      title: 'shoes as they are arranged',
      text: 'drum-brake left {\n  shoes leading-trailing\n  cylinder { port feed: 3/8-24 inverted-flare }\n}',
    },
  ],
});
