/** `cylinder.area`, `cylinder.second-area`, `cylinder.total-area`: what the fluid presses on in a wheel cylinder. */
import { scaleEstimate, sumEstimates } from '../quantity/index.ts';
import { wordOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { Figure, Need } from './figure.ts';
import { givenFact, givenFigure, inputsOf, needsOf } from './given.ts';
import { pistonArea } from './piston-area.ts';
import { knownResult, unknownResult } from './result.ts';
import { circles } from './sources.ts';

/** In m²: one piston, in a stepped cylinder that of the bore named first. Its pressure pushes one shoe. */
export function cylinderArea(cylinder: Part): Figure<'area'> {
  const title = isStepped(cylinder) ? 'area of the first piston' : 'area of a piston';
  return pistonArea(cylinder, givenFact(cylinder, properties.bore), { id: 'cylinder.area', title });
}

/** In m²; only a stepped cylinder has it. */
export function cylinderSecondArea(cylinder: Part): Figure<'area'> | undefined {
  if (!isStepped(cylinder)) return undefined;
  const second = givenFact(cylinder, properties.secondBore);
  return pistonArea(cylinder, second, { id: 'cylinder.second-area', title: 'area of the second piston' });
}

/** In m²: all its pistons together, which tells the fluid that they move. */
export function cylinderTotalArea(cylinder: Part): Figure<'area'> {
  const first = cylinderArea(cylinder);
  const second = cylinderSecondArea(cylinder);
  const areas = [first, ...(second ? [second] : [])].map((each) => givenFigure(each, cylinder));
  const pistons = pistonsOf(cylinder);
  const frame = {
    id: 'cylinder.total-area',
    subject: cylinder.id,
    title: 'area of all pistons',
    written: first.written,
    inputs: inputsOf(areas),
    source: circles,
    notes: [],
  };
  const formulas = { single: 'area of the one piston', double: '2 × area of a piston', stepped: 'first + second area' };
  const formula = pistons === undefined ? 'area of a piston × pistons' : formulas[pistons];
  const known = areas.flatMap((area) => (area.kind === 'given' ? area.estimate : []));
  if (pistons === undefined || known.length < areas.length) {
    const ends: readonly Need[] =
      pistons === undefined ? [{ name: `ends of ${cylinder.label}`, origin: cylinder.nameOrigin }] : [];
    return { ...frame, formula, result: unknownResult('area', [...needsOf(areas), ...ends]) };
  }
  // Both pistons of one bore share its limits, so the sum is the area taken twice, not two areas.
  const total = scaleEstimate(sumEstimates('area', known), pistons === 'double' ? 2 : 1);
  return { ...frame, formula, result: knownResult('area', total, cylinder) };
}

export function isStepped(cylinder: Part): boolean {
  return cylinder.facts.has(properties.secondBore.key);
}

/** Two bores mean two pistons; otherwise the file has to say whether there are one or two. */
function pistonsOf(cylinder: Part): 'single' | 'double' | 'stepped' | undefined {
  if (isStepped(cylinder)) return 'stepped';
  const ends = wordOf(cylinder, properties.ends);
  return ends === 'single' || ends === 'double' ? ends : undefined;
}
