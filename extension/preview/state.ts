/** What a preview remembers over a reload of the window; checked before use, since an older version may have written it. */
import type { CircuitView, Placement } from '../../server/protocol.ts';

export interface PreviewState {
  readonly version: 1;
  readonly uri: string;
  readonly circuit: CircuitView;
  /** Undefined while the picture is fitted to the panel. */
  readonly view?: View;
  readonly selected?: string;
  readonly list: 'open' | 'closed';
  readonly placement?: Placement;
}

/** The point (x, y) of the picture lies in the middle of the panel, however large that is. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export function freshState(uri: string, circuit: CircuitView): PreviewState {
  return { version: 1, uri, circuit, list: 'closed' };
}

/** Undefined if what was stored is not a state of this version. */
export function readState(stored: unknown): PreviewState | undefined {
  if (!isRecord(stored) || stored['version'] !== 1) return undefined;
  const { uri, circuit } = stored;
  if (typeof uri !== 'string' || (circuit !== 'planned' && circuit !== 'found')) return undefined;
  const view = readView(stored['view']);
  const { selected, placement } = stored;
  return {
    version: 1,
    uri,
    circuit,
    list: stored['list'] === 'open' ? 'open' : 'closed',
    ...(view === undefined ? {} : { view }),
    ...(typeof selected === 'string' ? { selected } : {}),
    ...(typeof placement === 'string' ? { placement } : {}),
  };
}

function readView(stored: unknown): View | undefined {
  if (!isRecord(stored)) return undefined;
  const { scale, x, y } = stored;
  if (!isNumber(scale) || !isNumber(x) || !isNumber(y) || scale <= 0) return undefined;
  return { scale, x, y };
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
