/** length-disagrees: a run whose stated length is not that of its route. */
import { developmentOf, lengthsApart } from '../figures/index.ts';
import { lengthWriting } from '../figures/run-route.ts';
import { writeEstimate } from '../quantity/index.ts';
import { commonPractice } from '../standards/source.ts';
import { factOrigin } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import { allParts } from '../system/system.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Rule } from './rule.ts';
import { written } from './wording.ts';

const both = (length: string) => `run line {
  tube 3/16 in
  length ${length}
  route straight 300 mm, bend 90 deg radius 25 mm, straight 300 mm
}
`;

export const lengthDisagrees: Rule = {
  code: 'length-disagrees',
  severity: 'warning',
  acceptable: true,
  question: 'Is the stated length of the run that of its route?',
  why: 'Tube that is cut by the wrong one of the two is scrap, or is stretched to reach.',
  source: commonPractice('a tape along a bent tube is out by 3 mm or 1 % of the length, 10 % where it says about'),
  fires: [{ title: 'a length that is 40 mm over the route', text: both('680 mm') }],
  silent: [
    { title: 'a length that agrees', text: both('640 mm') },
    { title: 'limits that reach the route', text: both('680 mm ± 45 mm') },
    { title: 'a rough length', text: both('about 690 mm') },
    { title: 'a length that is not known', text: both('?') },
  ],
  check: ({ system }) =>
    oncePerPlace(
      allParts(system).flatMap((run) => {
        const apart = run.route && lengthsApart(run, { developmentOf });
        if (apart === undefined) return [];
        const like = lengthWriting(run);
        const [stated, developed] = [apart.stated, apart.developed].map((length) => writeEstimate(length, { like }));
        return [
          {
            message: `${run.label} is ${stated} long by its length and ${developed} by its route: they are ${written(apart.by, like)} apart. Figures take the route; measure again and mend one of the two.`,
            origin: factOrigin(run, properties.length) ?? run.nameOrigin,
            subject: run.id,
            related: run.route ? [{ message: `the route: ${developed}`, origin: run.route.origin }] : [],
          },
        ];
      }),
    ),
};
