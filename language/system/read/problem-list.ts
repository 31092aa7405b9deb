/** Collects what reading finds wrong and what is still to be measured, while the rest is read on. */
import type { Problem } from '../problem.ts';
import type { ToMeasure } from '../system.ts';

export interface ReadingNotes {
  readonly problems: Problem[];
  readonly toMeasure: ToMeasure[];
}
