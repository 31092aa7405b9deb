/** What a computation is given: a number with where it comes from, or what would have to be known. */
import { alike, type Dimension } from '../quantity/dimension.ts';
import { type Estimate, estimateOf, notKnown, type Stated, type WrittenUnit, writeStated } from '../quantity/index.ts';
import { factOrigin, measureOf } from '../system/fact-of.ts';
import type { MeasureRow } from '../system/kinds/index.ts';
import type { Origin } from '../system/origin.ts';
import type { Part } from '../system/part.ts';
import type { Figure, Input, Need } from './figure.ts';
import { writeResult } from './write-result.ts';

export type Given<D extends Dimension = Dimension> =
  | {
      readonly kind: 'given';
      readonly estimate: Estimate<D>;
      readonly input: Input;
      readonly written: WrittenUnit;
      /** What a sum among the inputs lacks. */
      readonly leftOut: readonly Need[];
    }
  | { readonly kind: 'missing'; readonly needs: readonly Need[]; readonly input: Input };

/** A fact that is a size: more than zero, or it is missing. A lower limit below zero counts as zero. */
export function givenFact<D extends Dimension>(part: Part, row: MeasureRow<D>): Given<D> {
  const origin = factOrigin(part, row) ?? part.nameOrigin;
  return givenSize({ name: `${row.key} of ${part.label}`, stated: measureOf(part, row), origin });
}

/** A fact that may be nothing, as an angle from where it is counted or a pressure that springs ask for. */
export function givenFromZero<D extends Dimension>(part: Part, row: MeasureRow<D>): Given<D> {
  const stated = measureOf(part, row);
  const estimate = stated && estimateOf(stated);
  const written = stated && writtenOf(stated);
  if (estimate?.value !== 0 || stated === undefined || written === undefined) return givenFact(part, row);
  const name = `${row.key} of ${part.label}`;
  const input: Input = { name, text: writeStated(stated), origin: factOrigin(part, row), source: undefined };
  return { kind: 'given', estimate: { ...estimate, low: estimate.value }, input, written, leftOut: [] };
}

export function givenSize<D extends Dimension>(size: {
  readonly name: string;
  readonly stated: Stated<D> | undefined;
  readonly origin: Origin;
}): Given<D> {
  const { name, stated, origin } = size;
  const estimate = stated && estimateOf(stated);
  const written = stated && writtenOf(stated);
  const text = stated === undefined || stated.kind === 'unknown' ? notKnown : writeStated(stated);
  const input: Input = { name, text, origin, source: undefined };
  if (estimate === undefined || written === undefined) return { kind: 'missing', needs: [{ name, origin }], input };
  if (!(estimate.value > 0)) return { kind: 'missing', needs: [{ name: `${name}, more than zero`, origin }], input };
  const low = alike(estimate.value, Math.max(0, estimate.low));
  return { kind: 'given', estimate: { ...estimate, low }, input, written, leftOut: [] };
}

/** Another figure of the same part. */
export function givenFigure<D extends Dimension>(figure: Figure<D>, part: Part): Given<D> {
  const { result, written } = figure;
  const input: Input = {
    name: `${figure.title} of ${part.label}`,
    text: writeResult(figure),
    origin: part.nameOrigin,
    source: undefined,
  };
  if (result.kind === 'unknown') return { kind: 'missing', needs: result.waitsFor, input };
  return { kind: 'given', estimate: result.estimate, input, written, leftOut: result.leftOut };
}

/** The unit in which something is stated; undefined for `?`. */
export function writtenOf(stated: Stated): WrittenUnit | undefined {
  if (stated.kind === 'unknown') return undefined;
  return stated.kind === 'assumed' ? stated.assumption.written : stated.written;
}

export function needsOf(givens: readonly Given[]): readonly Need[] {
  return givens.flatMap((given) => (given.kind === 'missing' ? given.needs : []));
}

export function inputsOf(givens: readonly Given[]): readonly Input[] {
  return givens.map(({ input }) => input);
}
