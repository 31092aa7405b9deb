/** copper-tube: plain copper in a brake line, which the local rule allows or forbids. */
import { tubeMaterials } from '../standards/tube-materials.ts';
import { allParts } from '../system/system.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Rule } from './rule.ts';

const made = (material: string) => `run line { tube 3/16 in wall 0.028 in ${material}  length 600 mm }\n`;

const { copper } = tubeMaterials;

export const copperTube: Rule = {
  code: 'copper-tube',
  severity: 'warning',
  acceptable: true,
  question: 'Is plain copper tube allowed where the vehicle is used?',
  why: 'Plain copper hardens as it shakes and cracks at its flares. Some places forbid it, in others it is still fitted: the local rule decides.',
  source: copper.remarkSource,
  fires: [{ title: 'a line of plain copper', text: made('copper') }],
  silent: [
    { title: 'a line of copper-nickel, which is another metal', text: made('copper-nickel') },
    { title: 'a line of steel', text: made('steel') },
    { title: 'tube of a material that is not stated', text: made('') },
  ],
  check: ({ system }) =>
    oncePerPlace(
      allParts(system).flatMap((run) =>
        run.tube?.material === 'copper'
          ? [
              {
                message: `${run.label} is plain copper. It ${copper.remark}. 90/10 copper-nickel bends and flares as easily and is the usual way out; if copper is allowed and stays, accept this with the rule that says so.`,
                origin: placeOfFact(run.tube.origin, run),
                subject: run.id,
              },
            ]
          : [],
      ),
    ),
};
