/** `run.burst` and `run.burst-barlow`: the pressure at which the tube of a run bursts, by two named methods. */
import { combineEstimates, findUnit, type Si, type Unit, writeQuantity } from '../quantity/index.ts';
import { fromMemory, published } from '../standards/source.ts';
import { type TubeMaterial, tubeMaterials } from '../standards/tube-materials.ts';
import type { Part } from '../system/part.ts';
import type { Figure, Input } from './figure.ts';
import { inputsOf, needsOf } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { givenDiameter, givenWall } from './run-tube.ts';
import { barlowBurst, lameBurst } from './tube-strength.ts';
import { inFamilyOf, millimetres } from './writing.ts';

/** In Pa, gauge; with the least tensile strength of the material. */
export function runBurst(run: Part): Figure<'pressure'> {
  return tubePressure(run, {
    id: 'run.burst',
    title: 'burst pressure, thick wall',
    method: (diameter, wall, { leastTensile }) => lameBurst(diameter, wall, leastTensile),
    formula: 'tensile strength × (Z − 1) / (Z + 1), Z = (diameter / bore)²: the hoop stress at the bore reaches it',
    source: published('Lamé’s thick cylinder, as in Boresi & Schmidt, Advanced Mechanics of Materials, chapter 11'),
  });
}

/** In Pa, gauge; always the lower of the two. */
export function runBurstBarlow(run: Part): Figure<'pressure'> {
  return tubePressure(run, {
    id: 'run.burst-barlow',
    title: 'burst pressure, Barlow',
    method: (diameter, wall, { leastTensile }) => barlowBurst(diameter, wall, leastTensile),
    formula: '2 × tensile strength × wall / outside diameter',
    source: fromMemory('Barlow’s formula with the outside diameter, as tube makers print it'),
  });
}

export interface TubePressure extends Pick<Figure, 'id' | 'title' | 'formula' | 'source'> {
  /** Rises or falls in each size alone. */
  readonly method: (diameter: Si<'length'>, wall: Si<'length'>, material: TubeMaterial) => Si<'pressure'>;
}

/** A pressure that follows from the tube of a run and its material; waits for what of them is not known. */
export function tubePressure(run: Part, { method, ...about }: TubePressure): Figure<'pressure'> {
  const [diameter, wall, material] = [givenDiameter(run), givenWall(run), materialOf(run)];
  const frame = {
    ...about,
    subject: run.id,
    written: inFamilyOf(diameter.kind === 'given' ? diameter.written : millimetres, 'pressure'),
    inputs: [...inputsOf([diameter, wall]), ...(material ? [strengthInput(material)] : [])],
    notes: ['For straight, sound tube of the least strength of its kind; bends, dents and rust take from it.'],
  };
  if (diameter.kind === 'missing' || wall.kind === 'missing' || material === undefined) {
    const unsaid = { name: `material of tube ${run.label}`, origin: run.tube?.origin ?? run.nameOrigin };
    const needs = [...needsOf([diameter, wall]), ...(material ? [] : [unsaid])];
    return { ...frame, result: unknownResult('pressure', needs) };
  }
  const pressure = combineEstimates(
    'pressure',
    (outside, thickness) => method(outside, thickness, material),
    diameter.estimate,
    wall.estimate,
  );
  return { ...frame, result: knownResult('pressure', pressure, run) };
}

/** What the tube is made of; undefined where the file does not say. */
export function materialOf({ tube }: Part): TubeMaterial | undefined {
  return tube?.material && tubeMaterials[tube.material];
}

function strengthInput({ words, leastTensile, strengthSource }: TubeMaterial): Input {
  const text = writeQuantity(leastTensile, { unit: megapascal, precision: { significant: 3 } });
  return { name: `least tensile strength of ${words}`, text, origin: undefined, source: strengthSource };
}

const megapascal = unitOf('MPa');

function unitOf(symbol: string): Unit {
  const unit = findUnit(symbol);
  if (unit === undefined) throw new Error(`no unit is spelt ${symbol}`);
  return unit;
}
