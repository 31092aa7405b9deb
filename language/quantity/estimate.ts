/** Computing with what a writer said: a value between two limits, and whether anything about it is rough or assumed. */

import { alike, type Dimension, type Si, si } from './dimension.ts';
import type { Known, Stated } from './stated.ts';

/**
 * low ≤ value ≤ high always. Where a formula gives no number all three are NaN, every comparison is false, and it is
 * written as "not known".
 */
export interface Estimate<D extends Dimension = Dimension> {
  readonly value: Si<D>;
  readonly low: Si<D>;
  readonly high: Si<D>;
  /** Rests on an `about`: the limits then claim nothing. */
  readonly about: boolean;
  /** Rests on a `? assume`. */
  readonly assumed: boolean;
}

/** What is said, ready to compute with; a range counts as its middle between its ends. Undefined for `?`. */
export function estimateOf<D extends Dimension>(stated: Stated<D>): Estimate<D> | undefined {
  switch (stated.kind) {
    case 'unknown':
      return undefined;
    case 'assumed':
      return { ...estimateOfKnown(stated.assumption), assumed: true };
    default:
      return estimateOfKnown(stated);
  }
}

/** A value without doubt: a constant of a standard, a count. */
export function exactly<D extends Dimension>(value: Si<D>): Estimate<D> {
  return { value, low: value, high: value, about: false, assumed: false };
}

/** Whether a number came out at all. */
export function isKnown(estimate: Estimate): boolean {
  return Number.isFinite(estimate.value) && Number.isFinite(estimate.low) && Number.isFinite(estimate.high);
}

/** Sum of independent estimates; zero for none. */
export function sumEstimates<D extends Dimension>(
  dimension: D,
  estimates: readonly Estimate<NoInfer<D>>[],
): Estimate<D> {
  const total = (pick: (estimate: Estimate) => number) => estimates.reduce((sum, each) => sum + pick(each), 0);
  const ends = [total((each) => each.low), total((each) => each.high)];
  return settle(
    si(
      dimension,
      total((each) => each.value),
    ),
    ends,
    estimates,
  );
}

/** First minus second, taken as independent of each other: a thing less itself keeps its width. */
export function differenceOf<D extends Dimension>(first: Estimate<D>, second: Estimate<NoInfer<D>>): Estimate<D> {
  const ends = [first.low - second.high, first.high - second.low];
  return settle(alike(first.value, first.value - second.value), ends, [first, second]);
}

/** The estimate times a plain factor, which may be negative. */
export function scaleEstimate<D extends Dimension>(estimate: Estimate<D>, factor: number): Estimate<D> {
  const ends = [estimate.low * factor, estimate.high * factor];
  return settle(alike(estimate.value, estimate.value * factor), ends, [estimate]);
}

/** A function that only rises or only falls over the estimate's width, applied to it: the limits are then exact. */
export function mapEstimate<D extends Dimension, A extends Dimension>(
  dimension: D,
  compute: (value: Si<A>) => number,
  estimate: Estimate<A>,
): Estimate<D> {
  const ends = [compute(estimate.low), compute(estimate.high)];
  return settle(si(dimension, compute(estimate.value)), ends, [estimate]);
}

/**
 * A function of several estimates, evaluated at every corner of their limits. The limits are exact for functions
 * that rise or fall in each argument alone, whatever the others are; for others they may be too narrow, so split
 * those. The estimates count as independent: give the function each measured thing once. At most 12 of them.
 */
export function combineEstimates<D extends Dimension, const Ds extends readonly Dimension[]>(
  dimension: D,
  compute: (...values: Values<Ds>) => number,
  ...estimates: Estimates<Ds>
): Estimate<D> {
  const inputs: readonly Estimate[] = estimates;
  if (inputs.length > 12) throw new RangeError(`combineEstimates takes at most 12 estimates, not ${inputs.length}`);
  // Corner by corner in the order of the arguments, which is what `Values<Ds>` says and the compiler cannot see.
  const at = (corner: readonly number[]) => compute(...(corner as unknown as Values<Ds>));
  return settle(si(dimension, at(inputs.map((each) => each.value))), corners(inputs).map(at), inputs);
}

type Estimates<Ds extends readonly Dimension[]> = { readonly [K in keyof Ds]: Estimate<Ds[K]> };
type Values<Ds extends readonly Dimension[]> = { [K in keyof Ds]: Si<Ds[K]> };

function corners(inputs: readonly Estimate[]): readonly (readonly number[])[] {
  return inputs.reduce<readonly (readonly number[])[]>(
    (found, { low, high }) =>
      found.flatMap((corner) =>
        low === high
          ? [[...corner, low]]
          : [
              [...corner, low],
              [...corner, high],
            ],
      ),
    [[]],
  );
}

/** The middle is one of the ends considered, so that rounding can never push it outside. */
function settle<D extends Dimension>(value: Si<D>, ends: readonly number[], from: readonly Estimate[]): Estimate<D> {
  const marks = { about: from.some((each) => each.about), assumed: from.some((each) => each.assumed) };
  const [low, high] = [Math.min(value, ...ends), Math.max(value, ...ends)];
  if (!Number.isFinite(low) || !Number.isFinite(high) || Number.isNaN(value)) {
    const none = alike(value, Number.NaN);
    return { value: none, low: none, high: none, ...marks };
  }
  return { value, low: alike(value, low), high: alike(value, high), ...marks };
}

function estimateOfKnown<D extends Dimension>(known: Known<D>): Estimate<D> {
  switch (known.kind) {
    case 'exact':
      return exactly(known.value);
    case 'about':
      return { ...exactly(known.value), about: true };
    case 'toleranced': {
      const { value, low, high } = known;
      return { value, low, high, about: false, assumed: false };
    }
    case 'range': {
      const { low, high } = known;
      return { value: alike(low, low + (high - low) / 2), low, high, about: false, assumed: false };
    }
  }
}
