/** The host as the page sees it. */
import type { ToHost, ToPage } from '../preview/messages.ts';
import type { PreviewState } from '../preview/state.ts';

interface HostApi {
  postMessage(message: ToHost): void;
  getState(): unknown;
  setState(state: PreviewState): void;
}

declare function acquireVsCodeApi(): HostApi;

export interface Host {
  readonly post: (message: ToHost) => void;
  readonly stored: () => unknown;
  readonly store: (state: PreviewState) => void;
  readonly onMessage: (receive: (message: ToPage) => void) => void;
}

export function connectHost(): Host {
  const api = acquireVsCodeApi();
  return {
    post: (message) => api.postMessage(message),
    stored: () => api.getState(),
    store: (state) => api.setState(state),
    onMessage: (receive) => window.addEventListener('message', (event: MessageEvent<ToPage>) => receive(event.data)),
  };
}
