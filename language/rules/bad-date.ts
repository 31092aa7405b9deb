/** bad-date: a day that the calendar does not have, or a date without its day. */
import { published } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const badDate = problemRule('bad-date', {
  question: 'Is this a day of the calendar?',
  why: 'Records are read in the order of their days; one without a true day cannot be put among them.',
  source: published('ISO 8601, calendar dates'),
  fires: [
    {
      title: 'a thirtieth of February',
      text: 'master main single {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n  2026-02-30 clean\n}',
    },
    {
      title: 'a record without its day',
      text: 'master main single {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n  2026-02 clean\n}',
    },
  ],
  silent: [
    {
      title: 'a leap day',
      text: 'master main single {\n  bore 3/4 in\n  port out: 3/8-24 inverted-flare\n  2024-02-29 clean\n}',
    },
  ],
});
