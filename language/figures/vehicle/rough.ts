/** How figures of a vehicle are labelled and marked: which load case they belong to, and how sure they are. */
import {
  type Dimension,
  type Estimate,
  exactly,
  isKnown,
  plainUnit,
  type Si,
  si,
  type WrittenUnit,
  writeQuantity,
  writtenIn,
} from '../../quantity/index.ts';
import type { Input, Result } from '../figure.ts';
import { unknownResult } from '../result.ts';
import { inFamilyOf, millimetres } from '../writing.ts';
import type { LoadFacts } from './load-case.ts';

export const loadPrefix = 'load ';

/** `load empty`: no part can be called so, for names have no spaces. */
export const loadSubject = ({ load }: Pick<LoadFacts, 'load'>): string => loadPrefix + load.name;

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

/** Decelerations in the family in which the writer measures the wheelbase. */
export function decelerationLike({ wheelbase }: Pick<LoadFacts, 'wheelbase'>): WrittenUnit {
  return inFamilyOf(wheelbase.kind === 'given' ? wheelbase.written : millimetres, 'acceleration');
}

/** `0.58 g`: a braking ratio as the trade says it. */
export const inGravities = (z: number): string => `${z.toFixed(2)} g`;

/** Pressures in notes, where no writer's unit is at hand. */
export function plainPressure(pascals: number): string {
  const { unit } = inFamilyOf(millimetres, 'pressure');
  return writeQuantity(si('pressure', pascals), { unit, precision: { significant: 3 } });
}

/** Plain numbers. */
export const plainWriting: WrittenUnit = writtenIn(plainUnit);

/** A share, or a grade as the road sign says it: `20 %`. */
export const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** Each name is told once. */
export function inputsOnce(inputs: readonly Input[]): readonly Input[] {
  return [...new Map(inputs.map((input) => [input.name, input])).values()];
}
