/** Computing at either limit of what is not known exactly, and putting the answers together again. */
import { type Dimension, type Estimate, exactly, type Si, si } from '../../quantity/index.ts';

/** Which end of an estimate is computed with. */
export type End = 'low' | 'value' | 'high';

/** A number at each end. */
export type Ends = Readonly<Record<End, number>>;

export const endsOf = (at: (end: End) => number): Ends => ({ low: at('low'), value: at('value'), high: at('high') });

/** The end that works against this one: area against pressure. */
export const against: Readonly<Record<End, End>> = { low: 'high', value: 'value', high: 'low' };

/** Whether a figure rests on an `about` or an assumption. */
export interface Marks {
  readonly about: boolean;
  readonly assumed: boolean;
}

export const unmarked: Marks = { about: false, assumed: false };

export function marksOf(from: readonly Marks[]): Marks {
  return { about: from.some((each) => each.about), assumed: from.some((each) => each.assumed) };
}

/** An estimate from its three ends; the ends enclose the value whatever rounding did. */
export function spreadOf<D extends Dimension>(dimension: D, at: (end: End) => number, marks: Marks): Estimate<D> {
  const value = at('value');
  const ends = [at('low'), at('high'), value];
  const low = si(dimension, Math.min(...ends));
  const high = si(dimension, Math.max(...ends));
  return { value: si(dimension, value), low, high, about: marks.about, assumed: marks.assumed };
}

/** A stated quantity or a plain one. */
export function asEstimate<D extends Dimension>(value: Si<D> | Estimate<D>): Estimate<D> {
  return typeof value === 'number' ? exactly(value) : value;
}
