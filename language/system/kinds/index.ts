/** The table of part kinds: what the notation can name, in one place. */
import { actuation } from './actuation.ts';
import { junctions } from './junctions.ts';
import type { KindRow, PartKind, PropertyRow } from './kind-row.ts';
import { lines } from './lines.ts';
import * as p from './properties.ts';
import { valves } from './valves.ts';
import { wheels } from './wheels.ts';

export const kindRows: readonly KindRow[] = [...actuation, ...lines, ...junctions, ...valves, ...wheels];

const byKeyword: ReadonlyMap<string, KindRow> = new Map(kindRows.map((row) => [row.keyword, row]));

/** The row of a kind; every kind has one (a test proves it). */
export function kindRow(kind: PartKind): KindRow {
  const row = byKeyword.get(kind);
  if (row === undefined) throw new Error(`The kind ${kind} has no row.`);
  return row;
}

/** The row that a word of the text names, if it is a kind. */
export function findKind(word: string): KindRow | undefined {
  return byKeyword.get(word);
}

/** The facts that may be said of the vehicle, of a load case, of the fluid. */
export const vehicleProperties: readonly PropertyRow[] = [
  p.vehicleClass,
  p.firstUse,
  p.wheelbase,
  p.trackFront,
  p.trackRear,
  p.tyreRadius,
  p.tyreRadiusFront,
  p.tyreRadiusRear,
  p.split,
  p.datum,
];
export const loadProperties: readonly PropertyRow[] = [p.front, p.rear, p.mass, p.gravityHeight, p.gravityBehindFront];
export const fluidProperties: readonly PropertyRow[] = [p.filled];
export const fluidGrades: readonly string[] = p.fluidGrade.words;

export type { FluidRule, KindRow, MeasureRow, PartKind, PropertyRow, SymbolName, WordRow } from './kind-row.ts';
export * as properties from './properties.ts';
