/** `reservoir.volume`: what a reservoir holds at its full mark. */
import { sumEstimates } from '../quantity/index.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { Figure } from './figure.ts';
import { givenFact, inputsOf, needsOf } from './given.ts';
import { eachOnce, knownResult, unknownResult } from './result.ts';
import { asStated, sum } from './sources.ts';
import { millilitres } from './writing.ts';

/** In m³: its own capacity, else that of its compartments together. */
export function reservoirVolume(reservoir: Part): Figure<'volume'> {
  const own = givenFact(reservoir, properties.capacity);
  const frame = { id: 'reservoir.volume', subject: reservoir.id, title: 'fluid at the full mark', notes: [] };
  const stated = { ...frame, formula: 'the stated capacity', inputs: [own.input], source: asStated };
  if (own.kind === 'given') {
    return { ...stated, written: own.written, result: knownResult('volume', own.estimate, reservoir) };
  }
  const compartments = reservoir.parts
    .filter(({ kind }) => kind === 'compartment')
    .map((compartment) => givenFact(compartment, properties.capacity));
  const known = compartments.flatMap((each) => (each.kind === 'given' ? each : []));
  const [first] = known;
  if (first === undefined) {
    const result = unknownResult('volume', [...own.needs, ...needsOf(compartments)]);
    return { ...stated, written: millilitres, result };
  }
  const total = knownResult(
    'volume',
    sumEstimates(
      'volume',
      known.map(({ estimate }) => estimate),
    ),
    reservoir,
  );
  return {
    ...frame,
    written: first.written,
    result: total.kind === 'known' ? { ...total, leftOut: eachOnce(needsOf(compartments)) } : total,
    formula: 'capacities of the compartments added up',
    inputs: inputsOf(compartments),
    source: sum,
  };
}
