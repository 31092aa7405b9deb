/** `cylinder.displacement-per-mm`: the fluid that goes into a wheel cylinder while its pistons move out by 1 mm each. */
import { cylinderVolume, mapEstimate, si } from '../quantity/index.ts';
import type { Part } from '../system/part.ts';
import { cylinderTotalArea } from './cylinder-area.ts';
import type { Figure } from './figure.ts';
import { givenFigure } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { circles } from './sources.ts';
import { millilitres } from './writing.ts';

const travel = si('length', 0.001);

/** In m³ for 1 mm of travel of each piston. */
export function cylinderDisplacementPerMm(cylinder: Part): Figure<'volume'> {
  const area = givenFigure(cylinderTotalArea(cylinder), cylinder);
  return {
    id: 'cylinder.displacement-per-mm',
    subject: cylinder.id,
    title: 'fluid for 1 mm of travel of each piston',
    written: millilitres,
    result:
      area.kind === 'given'
        ? knownResult(
            'volume',
            mapEstimate('volume', (each) => cylinderVolume(each, travel), area.estimate),
            cylinder,
          )
        : unknownResult('volume', area.needs),
    formula: 'area of all pistons × 1 mm',
    inputs: [area.input],
    source: circles,
    notes: [],
  };
}
