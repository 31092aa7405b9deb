/** What a rule is: one question about a circuit, why it is asked, and what must and must not make it speak. */
import type { Figures } from '../figures/index.ts';
import type { Source } from '../standards/source.ts';
import type { Origin } from '../system/origin.ts';
import type { Mend, Related } from '../system/problem.ts';
import type { FileReading, System } from '../system/system.ts';

/** `question`: the file does not say enough to judge; it goes on the measuring list and never fails a check. */
export type Severity = 'error' | 'warning' | 'question' | 'information';

export interface RuleContext {
  readonly reading: FileReading;
  /** The state that is judged. */
  readonly system: System;
  readonly figures: Figures;
}

/** What a rule has to say; the code and the usual severity are the rule's. */
export interface Remark {
  readonly severity?: Severity;
  readonly message: string;
  /** The word to underline. */
  readonly origin: Origin;
  /** Path of the part, port or chamber that it is about; `circuit` for a cause that lies in the circuit as a whole. */
  readonly subject: string;
  /** Other paths that an `accept` may name, and that the picture marks. */
  readonly also?: readonly string[];
  readonly related?: readonly Related[];
  readonly mends?: readonly Mend[];
  /** Holds a fault that must not be accepted away, though others of its rule may be. */
  readonly binding?: true;
  /** Not in use: shown greyed. */
  readonly unused?: true;
}

/** A small circuit in the notation; the tests run it. */
export interface Example {
  /** What it shows, as a test would be called. */
  readonly title: string;
  readonly text: string;
}

export interface Rule {
  readonly code: string;
  /** The question that it asks: "Does the nut fit the thread of the port?" */
  readonly question: string;
  /** Why it matters to the person at the bench. */
  readonly why: string;
  readonly severity: Severity;
  readonly source: Source;
  /** False for what must not be accepted away. */
  readonly acceptable: boolean;
  readonly fires: readonly Example[];
  readonly silent: readonly Example[];
  check(context: RuleContext): readonly Remark[];
}

export interface Finding extends Remark {
  readonly code: string;
  readonly severity: Severity;
}
