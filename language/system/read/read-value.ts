/** Value in the text → what the writer states, with problems placed on the very word. */
import type { Amount, Measure, Value } from '../../grammar/generated/ast.ts';
import { isUnknown } from '../../grammar/generated/ast.ts';
import { type Dimension, type QuantityProblem, readStated, type Stated, type Term } from '../../quantity/index.ts';
import type { Origin } from '../origin.ts';
import { replace } from '../problem.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';

/** Whose value it is, for the measuring list: `rear-left cylinder`, `bore`. */
export interface ValueOwner {
  readonly part: string;
  readonly fact: string;
}

/** What is stated, or nothing where the text is broken or wrong; the notes then say why. */
export function readValue<D extends Dimension>(
  value: Value | undefined,
  dimension: D,
  owner: ValueOwner,
  notes: ReadingNotes,
): Stated<D> | undefined {
  if (value === undefined) return undefined;
  if (isUnknown(value)) {
    const assumed = value.assumed;
    notes.toMeasure.push({ ...owner, assumed: assumed !== undefined, origin: originOf(value) });
    if (assumed === undefined) return { kind: 'unknown' };
    return readMeasure(assumed, dimension, 'assumed', owner, notes);
  }
  return readMeasure(value, dimension, 'measured', owner, notes);
}

function readMeasure<D extends Dimension>(
  measure: Measure,
  dimension: D,
  standing: 'assumed' | 'measured',
  owner: ValueOwner,
  notes: ReadingNotes,
): Stated<D> | undefined {
  const terms = termsOf(measure.amount);
  if (terms.length === 0) return undefined; // the parser has said what is missing
  const { stated, problems } = readStated(
    {
      unknown: standing === 'assumed',
      assumed: standing === 'assumed',
      about: measure.about,
      terms,
      ...(measure.tolerance ? { toleranceTerms: termsOf(measure.tolerance) } : {}),
      ...(measure.upper ? { toTerms: termsOf(measure.upper) } : {}),
    },
    dimension,
  );
  for (const problem of problems) {
    const origin = placeOf(problem, measure);
    notes.problems.push({
      code: 'quantity',
      message: `${owner.fact}: ${problem.message}`,
      origin,
      ...(problem.fix
        ? {
            mends: [
              {
                title: problem.fix.label,
                edits: [replace(origin, problem.fix.replacement)],
                ...(meantOneWay.has(problem.code) ? { safe: true } : {}),
              },
            ],
          }
        : {}),
    });
  }
  return stated;
}

/** A unit in another spelling, and the ends of a range the wrong way round. */
const meantOneWay: ReadonlySet<QuantityProblem['code']> = new Set(['unknown-unit', 'range-order']);

function termsOf(amount: Amount | undefined): Term[] {
  const terms = amount?.terms ?? [];
  return terms
    .filter((term) => typeof term.number === 'string')
    .map((term) => (term.unit === undefined ? { number: term.number } : { number: term.number, unit: term.unit }));
}

function placeOf(problem: QuantityProblem, measure: Measure): Origin {
  const amounts = { terms: measure.amount, toleranceTerms: measure.tolerance, toTerms: measure.upper };
  const amount = problem.part === undefined ? undefined : amounts[problem.part];
  if (amount === undefined) return originOf(measure);
  const term = problem.term === undefined ? undefined : amount.terms[problem.term];
  if (term === undefined) return originOf(amount);
  return problem.at === undefined || problem.at === 'term' ? originOf(term) : originOfProperty(term, problem.at);
}
