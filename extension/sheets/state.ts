/** What the page of a sheet remembers over a reload of the window; checked before use. */
import type { CircuitView, SheetName } from '../../server/protocol.ts';

/** Which sheet of which file, for which of its circuits. */
export interface SheetSubject {
  readonly uri: string;
  readonly sheet: SheetName;
  readonly circuit: CircuitView;
}

export interface SheetState extends SheetSubject {
  readonly version: 1;
  /** How far down it was read, in CSS pixels. */
  readonly scroll: number;
}

const sheetNames: readonly SheetName[] = ['lines', 'parts', 'measure'];

/** Undefined if what was stored is not a state of this version. */
export function readSheetState(stored: unknown): SheetState | undefined {
  if (!isRecord(stored) || stored['version'] !== 1) return undefined;
  const { uri, circuit, scroll } = stored;
  const sheet = sheetNames.find((name) => name === stored['sheet']);
  if (typeof uri !== 'string' || sheet === undefined || (circuit !== 'planned' && circuit !== 'found'))
    return undefined;
  const isPlace = typeof scroll === 'number' && Number.isFinite(scroll) && scroll >= 0;
  return { version: 1, uri, sheet, circuit, scroll: isPlace ? scroll : 0 };
}

export function sameSheet(a: SheetSubject, b: SheetSubject): boolean {
  return a.uri === b.uri && a.sheet === b.sheet;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
