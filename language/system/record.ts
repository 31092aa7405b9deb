/** What was found, decided and done about a part, what was measured on the vehicle, and which findings are accepted. */
import type { Dimension } from '../quantity/index.ts';
import type { Origin } from './origin.ts';
import type { Measured } from './part.ts';

export type Work = 'clean' | 'reseal' | 'replace' | 'remove' | 'fit';

export interface PartRecord {
  readonly date: string;
  readonly verb: 'found' | 'keep' | Work | 'done';
  /** With `done`: what was done, where the writer says it. */
  readonly work: Work | undefined;
  readonly note: string | undefined;
  readonly number: string | undefined;
  readonly bought: string | undefined;
  readonly arrived: string | undefined;
  readonly origin: Origin;
}

export interface Reading {
  readonly date: string;
  readonly quantity: string;
  readonly value: Measured<Dimension>;
  readonly push: Measured<'force'> | undefined;
  readonly after: Measured<'time'> | undefined;
  readonly origin: Origin;
}

/** A finding that the writer answers with a reason. */
export interface Accept {
  readonly rule: string;
  readonly ruleOrigin: Origin;
  /** The path of the part or port, or the circuit as a whole as the cause. */
  readonly target: { readonly kind: 'circuit' } | { readonly kind: 'path'; readonly path: string };
  readonly date: string;
  readonly reason: string;
  readonly origin: Origin;
}
