/** `hose.volume` and `feed-hose.volume`: the fluid in a hose at rest. */
import { circleArea, combineEstimates, cylinderVolume } from '../quantity/index.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { Figure } from './figure.ts';
import { givenFact, inputsOf, needsOf } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { circles } from './sources.ts';
import { millilitres } from './writing.ts';

/** In m³; without what it swells by under pressure. */
export function hoseVolume(hose: Part): Figure<'volume'> {
  const bore = givenFact(hose, properties.bore);
  const length = givenFact(hose, properties.length);
  const volumeOf = (across: Parameters<typeof circleArea>[0], along: Parameters<typeof cylinderVolume>[1]) =>
    cylinderVolume(circleArea(across), along);
  return {
    id: `${hose.kind}.volume`,
    subject: hose.id,
    title: 'fluid in it',
    written: millilitres,
    result:
      bore.kind === 'given' && length.kind === 'given'
        ? knownResult('volume', combineEstimates('volume', volumeOf, bore.estimate, length.estimate), hose)
        : unknownResult('volume', needsOf([bore, length])),
    formula: 'π/4 × bore² × length',
    inputs: inputsOf([bore, length]),
    source: circles,
    notes: [],
  };
}
