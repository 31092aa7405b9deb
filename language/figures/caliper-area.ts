/** `caliper.area`: what the fluid presses on, on one side of the disc. */
import { circleArea, combineEstimates, type Si } from '../quantity/index.ts';
import { wordOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { Figure } from './figure.ts';
import { type Given, givenFact, inputsOf, needsOf } from './given.ts';
import { areaWriting } from './piston-area.ts';
import { knownResult, unknownResult } from './result.ts';
import { circles } from './sources.ts';

/** In m²; the pistons are whole, and an even number where there are two bores, half of them of each. */
export function caliperArea(caliper: Part): Figure<'area'> {
  const bore = givenFact(caliper, properties.bore);
  const second = caliper.facts.has(properties.secondBore.key) ? givenFact(caliper, properties.secondBore) : undefined;
  const pistons = wholePistons(caliper, second === undefined ? 1 : 2);
  const givens = [pistons, bore, ...(second ? [second] : [])];
  const frame = {
    id: 'caliper.area',
    subject: caliper.id,
    title: 'piston area on one side of the disc',
    written: areaWriting(bore),
    formula: second ? 'pistons/2 × π/4 × (bore² + second-bore²)' : 'pistons × π/4 × bore²',
    inputs: inputsOf(givens),
    source: circles,
    notes:
      wordOf(caliper, properties.mounting) === 'fixed'
        ? ['A fixed caliper has as much on the other side; for the clamping force one side counts.']
        : [],
  };
  if (pistons.kind === 'missing' || bore.kind === 'missing' || second?.kind === 'missing') {
    return { ...frame, result: unknownResult('area', needsOf(givens)) };
  }
  const one = (number: Si<'number'>, across: Si<'length'>) => number * circleArea(across);
  const both = (number: Si<'number'>, across: Si<'length'>, other: Si<'length'>) =>
    (number / 2) * (circleArea(across) + circleArea(other));
  const area = second
    ? combineEstimates('area', both, pistons.estimate, bore.estimate, second.estimate)
    : combineEstimates('area', one, pistons.estimate, bore.estimate);
  return { ...frame, result: knownResult('area', area, caliper) };
}

function wholePistons(caliper: Part, each: 1 | 2): Given<'number'> {
  const pistons = givenFact(caliper, properties.pistons);
  if (pistons.kind === 'missing' || Number.isInteger(pistons.estimate.value / each)) return pistons;
  const words = each === 1 ? 'a whole number' : 'an even number, half of each bore';
  const { origin } = pistons.input;
  const name = `${properties.pistons.key} of ${caliper.label} as ${words}`;
  return { kind: 'missing', needs: [{ name, origin: origin ?? caliper.nameOrigin }], input: pistons.input };
}
