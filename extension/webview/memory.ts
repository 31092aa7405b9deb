/** What the page remembers over a reload; every change is handed to the host at once. */
import type { CircuitView, Placement } from '../../server/protocol.ts';
import { freshState, type PreviewState, readState, type View } from '../preview/state.ts';
import type { Host } from './host.ts';

export interface Memory {
  /** Undefined before the first document. */
  readonly state: () => PreviewState | undefined;
  /** Turns to a document; another one than before is looked at afresh. */
  readonly begin: (uri: string, circuit: CircuitView) => PreviewState;
  readonly keepPicture: (circuit: CircuitView, placement: Placement) => void;
  /** Undefined while the picture is fitted. */
  readonly keepView: (view: View | undefined) => void;
  readonly keepSelected: (id: string | undefined) => void;
  readonly keepList: (list: PreviewState['list']) => void;
}

export function createMemory(host: Host): Memory {
  let state = readState(host.stored());
  const keep = (next: PreviewState) => {
    state = next;
    host.store(next);
  };
  const change = (next: (now: PreviewState) => PreviewState) => {
    if (state !== undefined) keep(next(state));
  };
  return {
    state: () => state,
    begin: (uri, circuit) => {
      const next = state?.uri === uri ? { ...state, circuit } : freshState(uri, circuit);
      keep(next);
      return next;
    },
    keepPicture: (circuit, placement) => change((now) => ({ ...now, circuit, placement })),
    keepView: (view) => change(({ view: _, ...rest }) => (view === undefined ? rest : { ...rest, view })),
    keepSelected: (id) => change(({ selected: _, ...rest }) => (id === undefined ? rest : { ...rest, selected: id })),
    keepList: (list) => change((now) => ({ ...now, list })),
  };
}
