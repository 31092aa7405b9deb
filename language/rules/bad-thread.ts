/** bad-thread: a thread that cannot be, or that lacks its pitch. */
import { commonPractice } from '../standards/source.ts';
import { problemRule } from './problem-rule.ts';

export const badThread = problemRule('bad-thread', {
  question: 'Is this the name of a thread?',
  why: 'Whether a nut fits a port is decided by the thread; one without its pitch, or one that cannot be cut, decides nothing.',
  source: commonPractice('threads are named by diameter and pitch, or diameter and threads to the inch'),
  fires: [
    { title: 'a pitch that cannot be cut', text: 'master main single {\n  bore 3/4 in\n  port out: M10x9 bubble\n}' },
  ],
  silent: [
    {
      title: 'a metric thread with its pitch',
      text: 'master main single {\n  bore 3/4 in\n  port out: M10x1 bubble\n}',
    },
    { title: 'a thread still to be measured', text: 'master main single {\n  bore 3/4 in\n  port out: ? bubble\n}' },
  ],
});
