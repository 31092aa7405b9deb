/** gender-mismatch: male meets male, or female meets female. */
import { commonPractice } from '../standards/source.ts';
import { misfitRule } from './joints/misfit-rule.ts';

const hoseWith = (end: string): string => `master main single {
  bore 3/4 in
  port out: 3/8-24 inverted-flare
}

hose front-hose {
  length 300 mm
  from main.out: 3/8-24 male inverted-flare
  to left.cylinder.feed: 3/8-24 ${end} inverted-flare swivel
}

drum-brake left {
  cylinder {
    port feed: 3/8-24 inverted-flare
    bleeder {}
  }
}
`;

export const genderMismatch = misfitRule({
  code: 'gender-mismatch',
  cause: 'gender',
  question: 'Does a male end meet a female one?',
  why: 'Two ends of a kind do not go together at all; whoever makes the line finds out with the fluid already drained.',
  severity: 'error',
  source: commonPractice('a male thread goes into a female one'),
  acceptable: true,
  fires: [
    { title: 'a female hose end at a female port', text: hoseWith('female') },
    {
      title: 'two lines that meet nut against nut',
      text: `stock line {
  tube 3/16 in steel
  nut 3/8-24
  flare double-45
}

run front of line { to rear.from }
run rear of line {}
`,
    },
  ],
  silent: [
    { title: 'a male hose end in a female port', text: hoseWith('male') },
    {
      title: 'a nut drawn over a 37° nose, which is male',
      text: `tee front {
  ports feed, left, right: 7/16-20 37-degree
}

run line {
  tube 1/4 in steel
  nut 7/16-20
  flare single-37
  from front.left
}
`,
    },
  ],
});
