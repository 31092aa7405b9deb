/** What can be wrong with a quantity in a file, as data that an editor can place and mend. */

import type { NumberProblem } from './number.ts';

export type QuantityProblemCode =
  | NumberProblem['code']
  | 'unknown-unit'
  | 'wrong-dimension'
  | 'missing-unit'
  | 'unexpected-unit'
  | 'lb-as-force'
  | 'ambiguous-volume'
  | 'not-compound'
  | 'missing-value'
  | 'tolerance-not-positive'
  | 'range-order'
  | 'not-together';

export interface QuantityProblem {
  readonly code: QuantityProblemCode;
  readonly message: string;
  /** A replacement for exactly the text that `part`, `term` and `at` point to. */
  readonly fix?: { readonly label: string; readonly replacement: string };
  /** Which list of terms it is in; absent where the whole quantity is meant. */
  readonly part?: 'terms' | 'toleranceTerms' | 'toTerms';
  /** Index of the term in that list; absent where the whole list is meant. */
  readonly term?: number;
  /** What of the term: its number, its unit, or all of it. */
  readonly at?: 'number' | 'unit' | 'term';
}
