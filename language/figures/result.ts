/** Makes results: known ones that are numbers indeed, unknown ones that name each thing once. */
import { type Dimension, type Estimate, isKnown } from '../quantity/index.ts';
import type { Part } from '../system/part.ts';
import type { Need, Result } from './figure.ts';

/** Known if a finite number came out; sizes out of all proportion give none. */
export function knownResult<D extends Dimension>(dimension: D, estimate: Estimate<D>, part: Part): Result<D> {
  if (isKnown(estimate)) return { kind: 'known', dimension, estimate, leftOut: [] };
  return unknownResult(dimension, [{ name: `sizes of ${part.label} that give a number`, origin: part.nameOrigin }]);
}

export function unknownResult<D extends Dimension>(dimension: D, needs: readonly Need[]): Result<D> {
  return { kind: 'unknown', dimension, waitsFor: eachOnce(needs) };
}

/** The needs in their order, none twice. */
export function eachOnce(needs: readonly Need[]): readonly Need[] {
  const byName = new Map<string, Need>();
  for (const need of needs) if (!byName.has(need.name)) byName.set(need.name, need);
  return [...byName.values()];
}
