/** The host as the page of a sheet sees it. */
import type { ToSheetHost, ToSheetPage } from '../../sheets/messages.ts';
import type { SheetState } from '../../sheets/state.ts';

interface HostApi {
  postMessage(message: ToSheetHost): void;
  getState(): unknown;
  setState(state: SheetState): void;
}

declare function acquireVsCodeApi(): HostApi;

export interface SheetHost {
  readonly post: (message: ToSheetHost) => void;
  readonly stored: () => unknown;
  readonly store: (state: SheetState) => void;
  readonly onMessage: (receive: (message: ToSheetPage) => void) => void;
}

export function connectSheetHost(): SheetHost {
  const api = acquireVsCodeApi();
  return {
    post: (message) => api.postMessage(message),
    stored: () => api.getState(),
    store: (state) => api.setState(state),
    onMessage: (receive) =>
      window.addEventListener('message', (event: MessageEvent<ToSheetPage>) => receive(event.data)),
  };
}
