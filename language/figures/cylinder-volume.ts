/** `cylinder.volume`: the fluid that stands in a wheel cylinder at rest. */
import { circleArea, combineEstimates, type Si, si } from '../quantity/index.ts';
import { wordOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { isStepped } from './cylinder-area.ts';
import type { Figure } from './figure.ts';
import { type Given, givenFact, inputsOf, needsOf } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { circles } from './sources.ts';
import { statedVolume } from './stated-volume.ts';
import { millilitres } from './writing.ts';

/** In m³. A stated volume goes before bore and gap. */
export function cylinderVolumeAtRest(cylinder: Part): Figure<'volume'> {
  const stated = statedVolume(cylinder, 'cylinder');
  if (stated.result.kind === 'known') return stated;
  const bore = givenFact(cylinder, properties.bore);
  const second = isStepped(cylinder) ? [givenFact(cylinder, properties.secondBore)] : [];
  const gap = givenFact(cylinder, properties.cupGap);
  const frame = { ...stated, written: millilitres, source: circles, inputs: inputsOf([bore, ...second, gap]) };
  const needs = needsOf([bore, ...second, gap]);
  const [other] = second;
  if (bore.kind === 'missing' || gap.kind === 'missing' || other?.kind === 'missing') {
    const notes = [`Stating the volume of ${cylinder.label} serves as well.`];
    return { ...frame, formula: 'π/4 × bore² × cup-gap', result: unknownResult('volume', needs), notes };
  }
  const expanders = wordOf(cylinder, properties.expanders) === 'yes';
  const notes = expanders ? ['The cup expanders take up some of this.'] : [];
  if (other === undefined) {
    const volume = combineEstimates('volume', cylinderOf, bore.estimate, gap.estimate);
    return { ...frame, formula: 'π/4 × bore² × cup-gap', result: knownResult('volume', volume, cylinder), notes };
  }
  const step = 'Where between the cups the step lies is not known: the limits are all of it in one bore or the other.';
  const volume = between(bore, other, gap);
  const formula = 'π/4 × middle of both bores² × cup-gap';
  return { ...frame, formula, result: knownResult('volume', volume, cylinder), notes: [step, ...notes] };
}

const cylinderOf = (across: Si<'length'>, along: Si<'length'>): Si<'volume'> =>
  si('volume', circleArea(across) * along);

type GivenLength = Extract<Given<'length'>, { kind: 'given' }>;

/** Half of the gap in each bore, within limits that hold wherever the step is. */
function between(first: GivenLength, second: GivenLength, gap: GivenLength) {
  const [a, b] = [first, second].map((bore) => combineEstimates('volume', cylinderOf, bore.estimate, gap.estimate));
  const halves = combineEstimates(
    'volume',
    (one, other, along) => (cylinderOf(one, along) + cylinderOf(other, along)) / 2,
    first.estimate,
    second.estimate,
    gap.estimate,
  );
  if (a === undefined || b === undefined) return halves;
  return { ...halves, low: si('volume', Math.min(a.low, b.low)), high: si('volume', Math.max(a.high, b.high)) };
}
