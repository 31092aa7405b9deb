/** Pieces that the JSON of several verbs have in common. */
import type { CircuitFile, Place } from './circuit-file.ts';

export interface JsonMeasuring extends Place {
  readonly part: string;
  readonly fact: string;
  /** Computed with a value that is only assumed. */
  readonly assumed: boolean;
}

/** The measuring list of a file. */
export function measuringJson({ reading, placeOf }: CircuitFile): readonly JsonMeasuring[] {
  return reading.toMeasure.map(({ part, fact, assumed, origin }) => ({ part, fact, assumed, ...placeOf(origin) }));
}

/** With line ends and a last one, so that it can be read and compared. */
export const written = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;
