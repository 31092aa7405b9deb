/** An editor at the other end of a real server over stdio: opens texts, has settings, counts what it is asked to refresh. */
import { spawn } from 'node:child_process';
import {
  createProtocolConnection,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { InitializationOptions } from '../../server/protocol.ts';

export interface ConnectedEditor {
  readonly connection: ProtocolConnection;
  /** Opens a document and waits for its first diagnostics. */
  open(uri: string, text: string): Promise<PublishDiagnosticsParams>;
  /** Puts another text in the place of the old one and waits for its diagnostics. */
  change(uri: string, text: string): Promise<PublishDiagnosticsParams>;
  /** Changes a setting as a user does. */
  set(name: string, value: unknown): Promise<void>;
  /** Resolves with the next request for a refresh of that kind. */
  refreshed(kind: 'codeLens' | 'inlayHint'): Promise<void>;
  close(): Promise<void>;
}

export interface ConnectOptions {
  /** The bundled server. */
  readonly server: string;
  readonly options?: Partial<InitializationOptions>;
}

const patience = 20_000;

export async function connect({ server, options = {} }: ConnectOptions): Promise<ConnectedEditor> {
  const child = spawn(process.execPath, [server, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const settings: Record<string, unknown> = {};
  const versions = new Map<string, number>();
  const published: PublishDiagnosticsParams[] = [];
  const waiting = new Set<() => void>();
  const tellAll = () => {
    for (const tell of waiting) tell();
  };
  const until = <T>(found: () => T | undefined, what: string): Promise<T> =>
    new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error(`the server did not send ${what}`)), patience);
      const look = () => {
        const value = found();
        if (value === undefined) return;
        clearTimeout(timer);
        waiting.delete(look);
        resolve(value);
      };
      waiting.add(look);
      look();
    });
  const refreshes = { codeLens: 0, inlayHint: 0 };
  connection.onRequest('workspace/configuration', ({ items }: { items: readonly { section?: string }[] }) =>
    items.map(({ section }) => (section === 'linewright' ? settings : null)),
  );
  connection.onRequest('client/registerCapability', () => null);
  connection.onRequest('workspace/semanticTokens/refresh', () => null);
  for (const kind of ['codeLens', 'inlayHint'] as const) {
    connection.onRequest(`workspace/${kind}/refresh`, () => {
      refreshes[kind]++;
      tellAll();
      return null;
    });
  }
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    published.push(params);
    tellAll();
  });
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    workspaceFolders: null,
    capabilities: {
      workspace: {
        configuration: true,
        didChangeConfiguration: { dynamicRegistration: true },
        codeLens: { refreshSupport: true },
        inlayHint: { refreshSupport: true },
        workspaceEdit: { documentChanges: true },
      },
      textDocument: { publishDiagnostics: { versionSupport: true } },
    },
    initializationOptions: { ownSchemes: ['file'], servedSchemes: ['file', 'untitled'], ...options },
  });
  await connection.sendNotification('initialized', {});
  const diagnosticsOf = (uri: string, version: number) =>
    until(() => published.find((params) => params.uri === uri && params.version === version), uri);
  return {
    connection,
    open: async (uri, text) => {
      versions.set(uri, 1);
      const textDocument = { uri, languageId: 'linewright', version: 1, text };
      await connection.sendNotification('textDocument/didOpen', { textDocument });
      return diagnosticsOf(uri, 1);
    },
    change: async (uri, text) => {
      const version = (versions.get(uri) ?? 0) + 1;
      versions.set(uri, version);
      await connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [{ text }],
      });
      return diagnosticsOf(uri, version);
    },
    set: async (name, value) => {
      settings[name] = value;
      await connection.sendNotification('workspace/didChangeConfiguration', { settings: { linewright: settings } });
    },
    refreshed: (kind) => {
      const before = refreshes[kind];
      return until(() => (refreshes[kind] > before ? true : undefined), `a refresh of ${kind}`).then(() => undefined);
    },
    close: async () => {
      const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      const timer = setTimeout(() => child.kill('SIGKILL'), 5000);
      await gone;
      clearTimeout(timer);
      connection.dispose();
    },
  };
}
