/** The editor's side of a real server over stdio: opens a file, types into it, waits for answers. */
import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import {
  createProtocolConnection,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { PictureAnswer, Placement } from '../../server/protocol.ts';
import type { Keystrokes } from './keystrokes.ts';

export interface Editor {
  /** Opens the document and waits for its first diagnostics. */
  open(): Promise<PublishDiagnosticsParams>;
  /** Types the next key without waiting. */
  type(): void;
  /** Until the diagnostics of the last key are there. */
  settled(): Promise<void>;
  /** Pulls the picture as the preview does, keeping its placement for the next. */
  picture(): Promise<PictureAnswer>;
  /** Resident memory of the server in bytes. */
  memory(): number;
  close(): Promise<void>;
}

export interface EditorOptions {
  /** The bundled server. */
  readonly server: string;
  /** Address of the folder that is open. */
  readonly folder: string;
  readonly uri: string;
  readonly keys: Keystrokes;
}

const waitingTime = 120_000;

/** Starts a server and greets it; the time from here to `open` is the cold start. */
export async function startEditor({ server, folder, uri, keys }: EditorOptions): Promise<Editor> {
  const child = spawn(process.execPath, [server, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = connectionTo(child);
  const published = listenTo(connection, uri);
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: folder,
    workspaceFolders: [{ uri: folder, name: 'bench' }],
    capabilities: {
      workspace: { workspaceFolders: true },
      textDocument: { publishDiagnostics: { versionSupport: true } },
    },
    initializationOptions: { ownSchemes: ['file'], servedSchemes: ['file', 'untitled'] },
  });
  await connection.sendNotification('initialized', {});
  const state: { version: number; placement: Placement | undefined } = { version: 1, placement: undefined };
  return {
    open: () => {
      const first = published.next(() => true);
      const textDocument = { uri, languageId: 'linewright', version: state.version, text: keys.text };
      void connection.sendNotification('textDocument/didOpen', { textDocument });
      return first;
    },
    type: () => {
      state.version += 1;
      const contentChanges = [keys.next()];
      void connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version: state.version },
        contentChanges,
      });
    },
    settled: async () => {
      const { mark } = keys;
      await published.next(({ diagnostics }) => diagnostics.some(({ message }) => wordsOf(message).includes(mark)));
    },
    picture: async () => {
      const answer: PictureAnswer = await connection.sendRequest('linewright/picture', {
        uri,
        circuit: 'planned',
        theme: 'vscode',
        whenBroken: 'say-so',
        ...(state.placement === undefined ? {} : { previous: state.placement }),
      });
      if (answer.kind === 'drawn') state.placement = answer.placement;
      return answer;
    },
    memory: () => residentBytes(child),
    close: () => end(child, connection),
  };
}

function connectionTo(child: ChildProcess): ProtocolConnection {
  if (child.stdout === null || child.stdin === null) throw new Error('the server has no streams');
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  connection.onRequest('workspace/configuration', ({ items }: { items: readonly unknown[] }) => items.map(() => null));
  connection.onRequest('client/registerCapability', () => null);
  connection.onRequest('workspace/semanticTokens/refresh', () => null);
  connection.listen();
  return connection;
}

const wordsOf = (message: PublishDiagnosticsParams['diagnostics'][number]['message']): string =>
  typeof message === 'string' ? message : message.value;

interface Published {
  /** The next diagnostics that `wanted` agrees to, or the last ones if it agrees to those. */
  next(wanted: (params: PublishDiagnosticsParams) => boolean): Promise<PublishDiagnosticsParams>;
}

function listenTo(connection: ProtocolConnection, uri: string): Published {
  const heard: { last: PublishDiagnosticsParams | undefined; tell: (params: PublishDiagnosticsParams) => void } = {
    last: undefined,
    tell: () => {},
  };
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    if (params.uri !== uri) return;
    heard.last = params;
    heard.tell(params);
  });
  return {
    next: (wanted) =>
      new Promise((resolve, reject) => {
        if (heard.last !== undefined && wanted(heard.last)) return resolve(heard.last);
        const patience = setTimeout(() => reject(new Error(`the server gave no diagnostics for ${uri}`)), waitingTime);
        heard.tell = (params) => {
          if (!wanted(params)) return;
          clearTimeout(patience);
          resolve(params);
        };
      }),
  };
}

/** From the kernel's own table, so only on Linux; NaN elsewhere. */
function residentBytes(child: ChildProcess): number {
  if (process.platform !== 'linux') return Number.NaN;
  const [, kilobytes] = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8')) ?? [];
  return Number(kilobytes) * 1024;
}

async function end(child: ChildProcess, connection: ProtocolConnection): Promise<void> {
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');
  const patience = setTimeout(() => child.kill('SIGKILL'), 5000);
  await gone;
  clearTimeout(patience);
  connection.dispose();
}
