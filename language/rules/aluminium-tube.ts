/** aluminium-tube: aluminium in a brake line. */
import { tubeMaterials } from '../standards/tube-materials.ts';
import { allParts } from '../system/system.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Rule } from './rule.ts';

const made = (material: string) => `run line { tube 3/16 in wall 0.028 in ${material}  length 600 mm }\n`;

const { aluminium } = tubeMaterials;

export const aluminiumTube: Rule = {
  code: 'aluminium-tube',
  severity: 'error',
  acceptable: false,
  question: 'Is any line of aluminium?',
  why: 'Aluminium tube tires as it shakes, corrodes beside steel and copper, and breaks without warning.',
  source: aluminium.remarkSource,
  fires: [{ title: 'a line of aluminium', text: made('aluminium') }],
  silent: [
    { title: 'a line of steel', text: made('steel') },
    { title: 'tube of a material that is not stated', text: made('') },
  ],
  check: ({ system }) =>
    oncePerPlace(
      allParts(system).flatMap((run) =>
        run.tube?.material === 'aluminium'
          ? [
              {
                message: `${run.label} is aluminium, which ${aluminium.remark}. Make it of steel or 90/10 copper-nickel before the vehicle moves.`,
                origin: placeOfFact(run.tube.origin, run),
                subject: run.id,
              },
            ]
          : [],
      ),
    ),
};
