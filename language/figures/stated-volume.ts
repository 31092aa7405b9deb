/** The fluid in parts whose insides follow from no measure: what the file states, or not known. */
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { Figure } from './figure.ts';
import { givenFact } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { asStated } from './sources.ts';
import { millilitres } from './writing.ts';

/** In m³; `family` is what its kinds have in common: `junction` for `junction.volume`. */
export function statedVolume(part: Part, family: string): Figure<'volume'> {
  const volume = givenFact(part, properties.volume);
  return {
    id: `${family}.volume`,
    subject: part.id,
    title: 'fluid in it',
    written: volume.kind === 'given' ? volume.written : millilitres,
    result:
      volume.kind === 'given' ? knownResult('volume', volume.estimate, part) : unknownResult('volume', volume.needs),
    formula: 'the stated volume',
    inputs: [volume.input],
    source: asStated,
    notes: volume.kind === 'given' ? [] : ['To measure it, fill it from a syringe and read off what it takes.'],
  };
}
