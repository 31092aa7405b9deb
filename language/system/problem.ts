/** What reading a file finds wrong with its text, with the edit that would mend it where one edit can. */
import type { Origin } from './origin.ts';

export interface Edit {
  readonly uri: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A repair that the writer may choose. */
export interface Mend {
  readonly title: string;
  readonly edits: readonly Edit[];
  /** It can be meant no other way, so it may be done together with others and without asking. */
  readonly safe?: true;
}

export interface Related {
  readonly message: string;
  readonly origin: Origin;
}

export type ProblemCode =
  | 'quantity'
  | 'unknown-name'
  | 'unknown-word'
  | 'misplaced'
  | 'missing'
  | 'duplicate'
  | 'bad-thread'
  | 'bad-date'
  | 'use-failed';

export interface Problem {
  readonly code: ProblemCode;
  readonly message: string;
  readonly origin: Origin;
  readonly related?: readonly Related[];
  readonly mends?: readonly Mend[];
}

/** The edit that puts `text` in the place of an origin. */
export function replace(origin: Origin, text: string): Edit {
  return { ...origin, text };
}
