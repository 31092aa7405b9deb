/** What every computed figure says of itself: what it is, of what, how much, from what, by which formula, on whose word. */
import type { Dimension, Estimate, WrittenUnit } from '../quantity/index.ts';
import type { Source } from '../standards/source.ts';
import type { Origin } from '../system/origin.ts';

/** What a figure rests on: a fact of the file, a number out of a standard, or another figure. */
export interface Input {
  /** In plain words: "bore of main". */
  readonly name: string;
  /** As it is shown, with its unit; "not known" where it is missing. */
  readonly text: string;
  /** Where the file says it; absent for a standard's number. */
  readonly origin: Origin | undefined;
  readonly source: Source | undefined;
}

/** A fact that would have to be known. */
export interface Need {
  /** "wall of tube main-to-tee" */
  readonly name: string;
  readonly origin: Origin | undefined;
}

export type Result<D extends Dimension = Dimension> =
  | {
      readonly kind: 'known';
      readonly dimension: D;
      readonly estimate: Estimate<D>;
      /** What a total does not contain because it is not known; the total is then "at least". */
      readonly leftOut: readonly Need[];
    }
  | { readonly kind: 'unknown'; readonly dimension: D; readonly waitsFor: readonly Need[] };

export interface Figure<D extends Dimension = Dimension> {
  /** What is computed: `run.cut-length`. */
  readonly id: string;
  /** Path of the part, port or chamber that it belongs to; `load` and the name of a load case; `system` for the whole. */
  readonly subject: string;
  /** "cut length" */
  readonly title: string;
  readonly result: Result<D>;
  /** In words and symbols of the trade: "centreline length + flare allowance at each end". */
  readonly formula: string;
  readonly inputs: readonly Input[];
  readonly source: Source;
  /** What a reader has to know to use it rightly. */
  readonly notes: readonly string[];
  /** The unit that the writer would expect it in. */
  readonly written: WrittenUnit;
}
