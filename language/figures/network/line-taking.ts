/** What lines take up: a hose swells, a tube stretches. */
import { type Estimate, si } from '../../quantity/index.ts';
import { hoseClassOf } from '../../standards/hose.ts';
import { tubeMaterials } from '../../standards/tube-materials.ts';
import { wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { FigureContext } from '../context.ts';
import { givenFact, needsOf } from '../given.ts';
import { givenDiameter, givenWall } from '../run-tube.ts';
import { tubeGrowthPerPascal } from './displacement-laws.ts';
import { endsOf, marksOf } from './spread.ts';
import type { Takings } from './taking.ts';

/** m³: at most what 49 CFR 571.106 lets its class swell, at least nothing. */
export function hoseTaking(hose: Part): Takings {
  const bore = givenFact(hose, properties.bore);
  const length = givenFact(hose, properties.length);
  const hoseClass = bore.kind === 'given' ? hoseClassOf(bore.estimate.value) : undefined;
  if (length.kind === 'missing' || hoseClass === undefined) {
    const lacks = needsOf([bore, length]).map((need) => ({ weight: 'brake', need }) as const);
    return { takings: [], lacks, assumptions: [] };
  }
  const stated = wordOf(hose, properties.expansion);
  const expansion = stated === 'low' ? 'HL' : 'HR';
  const unmarked =
    stated === undefined ? ['Hoses of which the class is not stated count as of regular expansion.'] : [];
  return {
    takings: [
      {
        part: hose.id,
        what: 'hose',
        marks: marksOf([length.estimate]),
        law: { kind: 'hose', hose: hoseClass, expansion, length: length.estimate },
      },
    ],
    lacks: [],
    assumptions: ['Hoses swell as much as 49 CFR 571.106 lets their class; sound ones swell less.', ...unmarked],
  };
}

/** m³: growth of a thick-walled tube, closed and free to lengthen. */
export function tubeTaking(run: Part, context: FigureContext): Takings {
  const diameter = givenDiameter(run);
  const wall = givenWall(run);
  const length = knownLength(run, context);
  const name = run.tube?.material;
  const material = name === undefined ? undefined : tubeMaterials[name];
  if (diameter.kind === 'missing' || wall.kind === 'missing' || length === undefined || material === undefined) {
    const need = { name: `stretch of ${run.label}`, origin: run.nameOrigin };
    const group = { lead: 'stretch of', label: run.label };
    return { takings: [], lacks: [{ weight: 'small', need, group }], assumptions: [] };
  }
  const outside = diameter.estimate.value;
  const inside = si('length', outside - 2 * wall.estimate.value);
  if (!(inside > 0)) return { takings: [], lacks: [], assumptions: [] };
  const growth = tubeGrowthPerPascal({ outside, inside, ...material });
  const crossSection = (Math.PI / 4) * inside ** 2;
  return {
    takings: [
      {
        part: run.id,
        what: 'tube',
        marks: marksOf([diameter.estimate, wall.estimate, length]),
        law: { kind: 'in-proportion', perPascal: endsOf((end) => crossSection * length[end] * growth) },
      },
    ],
    lacks: [],
    assumptions: [],
  };
}

function knownLength(run: Part, context: FigureContext): Estimate<'length'> | undefined {
  const { result } = context.centrelineLengthOf(run);
  return result.kind === 'known' ? result.estimate : undefined;
}
