/** Sends our own requests with their types, and tells an answer that is merely out of date from a failure. */
import type { BaseLanguageClient, CancellationToken } from 'vscode-languageclient';
import type { ServerRequests } from '../../server/protocol.ts';

export function request<M extends keyof ServerRequests>(
  client: BaseLanguageClient,
  method: M,
  params: ServerRequests[M]['params'],
  token?: CancellationToken,
): Promise<ServerRequests[M]['result']> {
  return client.sendRequest<ServerRequests[M]['result']>(method, params, token);
}

/** LSP: request cancelled, content modified, server cancelled. A newer answer is on its way then. */
const outOfDate: readonly unknown[] = [-32800, -32801, -32802];

export function isOutOfDate(error: unknown): boolean {
  return typeof error === 'object' && error !== null && 'code' in error && outOfDate.includes(error.code);
}
