/** Writes what came out of a computation in the writer's unit. */
import { isKnown, notKnown, writeEstimate, writeLowerLimit } from '../quantity/index.ts';
import type { Figure } from './figure.ts';

/** `1379 mm`, `about 52 in (assumed)`, `at least 412.3 mL`, `not known`. Never a number that is none. */
export function writeResult({ result, written }: Pick<Figure, 'result' | 'written'>): string {
  if (result.kind === 'unknown' || !isKnown(result.estimate)) return notKnown;
  const { estimate, leftOut } = result;
  if (leftOut.length === 0) return writeEstimate(estimate, { like: written });
  // Of a sum with gaps only the lower limit holds.
  const least = estimate.about ? estimate.value : estimate.low;
  const [about, assumed] = [estimate.about ? 'about ' : '', estimate.assumed ? ' (assumed)' : ''];
  return `at least ${about}${writeLowerLimit(least, { like: written })}${assumed}`;
}
