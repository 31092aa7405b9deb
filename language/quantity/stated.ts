/** What a writer may say about a quantity: exactly, within limits, roughly, as a range, as an assumption, not at all. */

import { type Amount, type ReadAmount, readAmount, type Term, type WrittenUnit } from './amount.ts';
import { type Dimension, type Si, si } from './dimension.ts';
import type { QuantityProblem } from './problem.ts';

/** A statement with a number in it. */
export type Known<D extends Dimension> =
  | { readonly kind: 'exact'; readonly value: Si<D>; readonly written: WrittenUnit }
  | {
      /** Hard limits either way: `52 in ± 1/2 in`. */
      readonly kind: 'toleranced';
      readonly value: Si<D>;
      readonly low: Si<D>;
      readonly high: Si<D>;
      readonly written: WrittenUnit;
      readonly toleranceWritten: WrittenUnit;
    }
  /** Claims no width: `about 2 in`. */
  | { readonly kind: 'about'; readonly value: Si<D>; readonly written: WrittenUnit }
  /** A property with two ends: `60 .. 120 psi`. */
  | { readonly kind: 'range'; readonly low: Si<D>; readonly high: Si<D>; readonly written: WrittenUnit };

export type Stated<D extends Dimension = Dimension> =
  | Known<D>
  | { readonly kind: 'unknown' }
  /** Computed with, marked, and still to be measured: `? assume 1 in`. */
  | { readonly kind: 'assumed'; readonly assumption: Known<D> };

/** The words of a quantity as the grammar finds them, without their meaning. */
export interface StatedParts {
  /** `?` */
  readonly unknown?: boolean;
  /** `? assume …`: the terms are the assumption. */
  readonly assumed?: boolean;
  readonly about?: boolean;
  readonly terms: readonly Term[];
  readonly toleranceTerms?: readonly Term[];
  readonly toTerms?: readonly Term[];
}

export interface ReadStated<D extends Dimension> {
  /** Absent as soon as there is a problem: a doubtful figure is not computed with. */
  readonly stated?: Stated<D>;
  readonly problems: readonly QuantityProblem[];
}

/** Reads what is said about a quantity of the expected dimension. Never throws. */
export function readStated<D extends Dimension>(parts: StatedParts, expected: D): ReadStated<D> {
  if (parts.unknown && !parts.assumed && parts.terms.length === 0) return { stated: { kind: 'unknown' }, problems: [] };
  const { known, problems } = readKnown(parts, expected);
  if (!known) return { problems };
  return { stated: parts.assumed ? { kind: 'assumed', assumption: known } : known, problems };
}

interface ReadKnown<D extends Dimension> {
  readonly known?: Known<D>;
  readonly problems: readonly QuantityProblem[];
}

function readKnown<D extends Dimension>(parts: StatedParts, expected: D): ReadKnown<D> {
  const { terms, toleranceTerms, toTerms, about } = parts;
  if (about && (toleranceTerms || toTerms)) {
    return problem('not-together', 'about claims no limits: write either about, or limits with ± or .. , not both.');
  }
  if (toleranceTerms && toTerms) {
    return problem('not-together', 'A range has no tolerance: write either ± or .. , not both.');
  }
  if (toTerms) return readRange(terms, toTerms, expected);
  if (toleranceTerms) return readToleranced(terms, toleranceTerms, expected);
  const { amount, problems } = readAmount(terms, expected);
  if (!amount) return { problems: placed(problems, 'terms') };
  return { known: { kind: about ? 'about' : 'exact', value: amount.value, written: amount.written }, problems: [] };
}

function readRange<D extends Dimension>(from: readonly Term[], to: readonly Term[], expected: D): ReadKnown<D> {
  const low = readBeside(from, to, expected);
  const high = readAmount(to, expected);
  if (!low.amount || !high.amount) return { problems: bothProblems(low.problems, high.problems, 'toTerms') };
  if (low.amount.value > high.amount.value) {
    const replacement = `${text(to)} .. ${text(withUnitOf(from, to))}`;
    return {
      problems: [
        {
          code: 'range-order',
          message: `A range goes from the lower to the higher: write ${replacement}.`,
          fix: { label: 'Swap the two ends', replacement },
        },
      ],
    };
  }
  const known = {
    kind: 'range',
    low: low.amount.value,
    high: high.amount.value,
    written: high.amount.written,
  } as const;
  return { known, problems: [] };
}

function readToleranced<D extends Dimension>(
  terms: readonly Term[],
  plusMinus: readonly Term[],
  expected: D,
): ReadKnown<D> {
  const middle = readBeside(terms, plusMinus, expected);
  const width: { readonly amount?: Amount; readonly problems: readonly QuantityProblem[] } =
    expected === 'temperature' ? readAmount(plusMinus, 'temperature-difference') : readAmount(plusMinus, expected);
  if (!middle.amount || !width.amount) {
    return { problems: bothProblems(middle.problems, width.problems, 'toleranceTerms') };
  }
  const { value, written } = middle.amount;
  if (width.amount.value <= 0) {
    const message = `± ${text(plusMinus)} allows nothing: a tolerance is more than zero. Leave it out if there is none.`;
    return { problems: [{ code: 'tolerance-not-positive', message, part: 'toleranceTerms' }] };
  }
  const [low, high] = [si(expected, value - width.amount.value), si(expected, value + width.amount.value)];
  return {
    known: { kind: 'toleranced', value, low, high, written, toleranceWritten: width.amount.written },
    problems: [],
  };
}

/** Reads the first of two; a unit that is only lent to it is complained of where it stands, not here. */
function readBeside<D extends Dimension>(terms: readonly Term[], other: readonly Term[], expected: D): ReadAmount<D> {
  const whole = withUnitOf(terms, other);
  const read = readAmount(whole, expected);
  return whole === terms ? read : { ...read, problems: read.problems.filter((each) => each.at !== 'unit') };
}

/** `60 .. 120 psi`: the first of two takes the second's unit where it has none of its own. */
function withUnitOf(terms: readonly Term[], other: readonly Term[]): readonly Term[] {
  const [only, ...more] = terms;
  const unit = other.at(-1)?.unit;
  if (!only || more.length > 0 || only.unit !== undefined || unit === undefined || other.length > 1) return terms;
  return [{ number: only.number, unit }];
}

function bothProblems(
  first: readonly QuantityProblem[],
  second: readonly QuantityProblem[],
  secondPart: 'toleranceTerms' | 'toTerms',
): readonly QuantityProblem[] {
  return [...placed(first, 'terms'), ...placed(second, secondPart)];
}

function placed(problems: readonly QuantityProblem[], part: 'terms' | 'toleranceTerms' | 'toTerms') {
  return problems.map((each): QuantityProblem => ({ ...each, part }));
}

function problem<D extends Dimension>(code: QuantityProblem['code'], message: string): ReadKnown<D> {
  return { problems: [{ code, message }] };
}

function text(terms: readonly Term[]): string {
  return terms.map((term) => (term.unit === undefined ? term.number : `${term.number} ${term.unit}`)).join(' ');
}
