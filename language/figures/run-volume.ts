/** `run.volume`: the fluid in a run of tube. */
import { combineEstimates, writeQuantity } from '../quantity/index.ts';
import { tubeSizeOf } from '../standards/tube-sizes.ts';
import type { Part } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Figure } from './figure.ts';
import { type Given, givenFigure, inputsOf, needsOf } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { givenDiameter, givenWall } from './run-tube.ts';
import { circles } from './sources.ts';
import { millilitres } from './writing.ts';

/** In m³; needs a wall thinner than half the diameter. */
export function runVolume(run: Part, context: FigureContext): Figure<'volume'> {
  const diameter = givenDiameter(run);
  const wall = givenWall(run);
  const centreline = context.centrelineLengthOf(run);
  const length = givenFigure(centreline, run);
  const givens = [diameter, wall, length];
  return {
    id: 'run.volume',
    subject: run.id,
    title: 'fluid in it',
    written: millilitres,
    result: resultOf(run, { diameter, wall, length }),
    formula: 'π/4 × (diameter − 2 × wall)² × centreline length',
    inputs: inputsOf(givens),
    source: circles,
    notes: [...centreline.notes, ...(wall.kind === 'missing' && diameter.kind === 'given' ? usualWalls(diameter) : [])],
  };
}

function resultOf(
  run: Part,
  given: Readonly<Record<'diameter' | 'wall' | 'length', Given<'length'>>>,
): Figure<'volume'>['result'] {
  const { diameter, wall, length } = given;
  if (diameter.kind === 'missing' || wall.kind === 'missing' || length.kind === 'missing') {
    return unknownResult('volume', needsOf([diameter, wall, length]));
  }
  if (diameter.estimate.value <= 2 * wall.estimate.value) {
    const name = `wall of tube ${run.label} that leaves a bore`;
    return unknownResult('volume', [{ name, origin: wall.input.origin }]);
  }
  const volume = combineEstimates(
    'volume',
    (outside, thickness, along) => (Math.PI / 4) * Math.max(0, outside - 2 * thickness) ** 2 * along,
    diameter.estimate,
    wall.estimate,
    length.estimate,
  );
  return knownResult('volume', volume, run);
}

/** What a rule over the counter would be; not computed with, since walls differ. */
function usualWalls(diameter: Extract<Given<'length'>, { kind: 'given' }>): readonly string[] {
  const size = tubeSizeOf(diameter.estimate.value);
  if (size === undefined) return [];
  const { unit } = diameter.written;
  const walls = size.walls.map((each) => writeQuantity(each, { unit, precision: { significant: 2 } }));
  return [`Usual walls of ${size.name} tube: ${walls.join(', ')}. Measure a cut end.`];
}
