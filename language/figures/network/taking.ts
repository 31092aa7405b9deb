/** The shape of what takes fluid up when pressure rises, and of what would have to be known of it. */
import type { PartId } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import type { TakingKind } from './application.ts';
import type { Marks } from './spread.ts';
import type { TakingLaw } from './taking-law.ts';

export interface Taking {
  readonly part: PartId;
  readonly what: TakingKind;
  readonly marks: Marks;
  readonly law: TakingLaw;
}

/** `gap`: without it the stroke means little. `brake`: counts. `small`: walls of tube, fluid in a tee. */
export interface Lack {
  readonly weight: 'gap' | 'brake' | 'small';
  readonly need: Need;
  /** For small ones, which are told together: "fluid in", "stretch of". */
  readonly group?: { readonly lead: string; readonly label: string };
}

export interface Takings {
  readonly takings: readonly Taking[];
  readonly lacks: readonly Lack[];
  readonly assumptions: readonly string[];
}

export const noTakings: Takings = { takings: [], lacks: [], assumptions: [] };

export function takingsTogether(each: readonly Takings[]): Takings {
  return {
    takings: each.flatMap(({ takings }) => takings),
    lacks: each.flatMap(({ lacks }) => lacks),
    assumptions: [...new Set(each.flatMap(({ assumptions }) => assumptions))],
  };
}
