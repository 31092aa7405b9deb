/** How figures of a vehicle are labelled and marked: which load case they belong to, and how sure they are. */
import { type Dimension, type Estimate, exactly, isKnown, type Si } from '../../quantity/index.ts';
import type { Result } from '../figure.ts';
import { unknownResult } from '../result.ts';
import type { LoadFacts } from './load-case.ts';

/** `load empty`: no part can be called so, for names have no spaces. */
export const loadSubject = ({ load }: Pick<LoadFacts, 'load'>): string => `load ${load.name}`;

/** Known if a finite number came out. */
export function knownOf<D extends Dimension>(
  dimension: D,
  estimate: Estimate<D>,
  { load }: Pick<LoadFacts, 'load'>,
): Result<D> {
  if (isKnown(estimate)) return { kind: 'known', dimension, estimate, leftOut: [] };
  return unknownResult(dimension, [{ name: `sizes of load ${load.name} that give a number`, origin: load.origin }]);
}

/** What a search over middle values finds is rough as soon as anything that it rests on has limits. */
export function roughly<D extends Dimension>(value: Si<D>, from: readonly Estimate[]): Estimate<D> {
  return {
    ...exactly(value),
    about: from.some(({ about, low, high }) => about || low < high),
    assumed: from.some(({ assumed }) => assumed),
  };
}
