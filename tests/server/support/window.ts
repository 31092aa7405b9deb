/** An editor's window with a folder of files, at the other end of a real server on stdio. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  createProtocolConnection,
  type Diagnostic,
  type InitializeResult,
  type Position,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type Range,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import type { PictureChangedParams } from '../../../server/protocol.ts';
import { builtServer } from './built-server.ts';

export interface WindowOptions {
  /** Files of the folder by their path in it. */
  readonly files?: Readonly<Record<string, string>>;
  /** Folders below the temporary one that are open; the temporary one itself unless said otherwise. */
  readonly folders?: readonly string[];
  readonly settings?: Readonly<Record<string, unknown>>;
  readonly initializationOptions?: Readonly<Record<string, unknown>>;
}

export interface Window {
  readonly folder: string;
  readonly greeting: InitializeResult;
  readonly connection: ProtocolConnection;
  uriOf(path: string): string;
  /** Opens a document with this text and waits for its diagnostics. */
  open(path: string, text: string): Promise<readonly Diagnostic[]>;
  openUri(uri: string, text: string): void;
  /** Puts another text in its place and waits for the diagnostics of that text. */
  type(path: string, text: string): Promise<readonly Diagnostic[]>;
  /** Changes a stretch and does not wait. */
  edit(path: string, range: Range, text: string): void;
  /** The diagnostics of the newest text. */
  settled(path: string): Promise<readonly Diagnostic[]>;
  /** The next diagnostics that are sent for the file, whatever version they are for. */
  nextDiagnostics(path: string): Promise<readonly Diagnostic[]>;
  close(path: string): void;
  closeUri(uri: string): void;
  writeFile(path: string, text: string): void;
  removeFile(path: string): void;
  /** Tells the server that a file has changed on disk, as the window's watcher does. */
  tellChanged(path: string, type: 1 | 2 | 3): void;
  ask<R>(method: string, path: string, params?: Readonly<Record<string, unknown>>): Promise<R>;
  /** What the server has told about pictures, newest last. */
  readonly pictureNews: readonly PictureChangedParams[];
  changeSettings(settings: Readonly<Record<string, unknown>>): void;
  end(): Promise<number | null>;
}

export async function openWindow(options: WindowOptions = {}): Promise<Window> {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'linewright-window-')));
  const write = (path: string, text: string): void => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  };
  for (const [path, text] of Object.entries(options.files ?? {})) write(path, text);
  const uriOf = (path: string): string => pathToFileURL(join(folder, path)).toString();
  const child = spawn(process.execPath, [await builtServer, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = connectionTo(child);
  const heard = listenTo(connection);
  const kept: { settings: Readonly<Record<string, unknown>> } = { settings: options.settings ?? {} };
  connection.onRequest('workspace/configuration', ({ items }: { items: readonly { section?: string }[] }) =>
    items.map(({ section }) => (section === 'linewright' ? kept.settings : null)),
  );
  const pictureNews: PictureChangedParams[] = [];
  connection.onNotification('linewright/pictureChanged', (news: PictureChangedParams) => void pictureNews.push(news));
  connection.listen();
  const folders = options.folders ?? [''];
  const greeting: InitializeResult = await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    workspaceFolders: folders.length === 0 ? null : folders.map((path) => ({ uri: uriOf(path), name: path })),
    capabilities: { workspace: { configuration: true, workspaceFolders: true } },
    initializationOptions: {
      ownSchemes: ['file'],
      servedSchemes: ['file', 'untitled'],
      ...options.initializationOptions,
    },
  });
  await connection.sendNotification('initialized', {});
  const versions = new Map<string, number>();
  const send = (method: string, params: object): void => void connection.sendNotification(method, params);
  const openUri = (uri: string, text: string): void => {
    versions.set(uri, 1);
    send('textDocument/didOpen', { textDocument: { uri, languageId: 'linewright', version: 1, text } });
  };
  const change = (uri: string, contentChanges: readonly object[]): void => {
    const version = (versions.get(uri) ?? 0) + 1;
    versions.set(uri, version);
    send('textDocument/didChange', { textDocument: { uri, version }, contentChanges });
  };
  const settled = (uri: string): Promise<readonly Diagnostic[]> => {
    const wanted = versions.get(uri) ?? 1;
    return heard.when(uri, ({ version }) => (version ?? 0) >= wanted);
  };
  const closeUri = (uri: string): void => send('textDocument/didClose', { textDocument: { uri } });
  return {
    folder,
    greeting,
    connection,
    uriOf,
    open: (path, text) => {
      openUri(uriOf(path), text);
      return settled(uriOf(path));
    },
    openUri,
    type: (path, text) => {
      change(uriOf(path), [{ text }]);
      return settled(uriOf(path));
    },
    edit: (path, range, text) => change(uriOf(path), [{ range, text }]),
    settled: (path) => settled(uriOf(path)),
    nextDiagnostics: (path) => heard.next(uriOf(path)),
    close: (path) => closeUri(uriOf(path)),
    closeUri,
    writeFile: write,
    removeFile: (path) => rmSync(join(folder, path)),
    tellChanged: (path, type) => send('workspace/didChangeWatchedFiles', { changes: [{ uri: uriOf(path), type }] }),
    ask: (method, path, params = {}) =>
      connection.sendRequest(method, { textDocument: { uri: uriOf(path) }, ...params }),
    pictureNews,
    changeSettings: (settings) => {
      kept.settings = settings;
      send('workspace/didChangeConfiguration', { settings: { linewright: settings } });
    },
    end: async () => {
      const gone = new Promise<number | null>((resolve) => child.once('exit', resolve));
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      const code = await gone;
      connection.dispose();
      rmSync(folder, { recursive: true, force: true });
      return code;
    },
  };
}

function connectionTo({ stdout, stdin }: ChildProcess): ProtocolConnection {
  if (stdout === null || stdin === null) throw new Error('the server has no streams');
  const connection = createProtocolConnection(new StreamMessageReader(stdout), new StreamMessageWriter(stdin));
  connection.onRequest('client/registerCapability', () => null);
  return connection;
}

const patience = 30_000;

/** Keeps the last diagnostics of each document and wakes whoever waits for others. */
function listenTo(connection: ProtocolConnection) {
  const last = new Map<string, PublishDiagnosticsParams>();
  const waiting = new Set<(params: PublishDiagnosticsParams) => void>();
  connection.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
    last.set(params.uri, params);
    for (const wake of [...waiting]) wake(params);
  });
  const wait = (uri: string, wanted: (params: PublishDiagnosticsParams) => boolean): Promise<readonly Diagnostic[]> =>
    new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error(`no such diagnostics came for ${uri}`)), patience);
      const wake = (params: PublishDiagnosticsParams): void => {
        if (params.uri !== uri || !wanted(params)) return;
        clearTimeout(timer);
        waiting.delete(wake);
        resolve(params.diagnostics);
      };
      waiting.add(wake);
    });
  return {
    when: (uri: string, wanted: (params: PublishDiagnosticsParams) => boolean) => {
      const known = last.get(uri);
      return known !== undefined && wanted(known) ? Promise.resolve(known.diagnostics) : wait(uri, wanted);
    },
    next: (uri: string) => wait(uri, () => true),
  };
}

/** A text with one `¦` in it: without the mark, and where it stood. */
export function atMark(marked: string): { readonly text: string; readonly position: Position } {
  const offset = marked.indexOf('¦');
  if (offset < 0) throw new Error('the text has no ¦');
  return { text: marked.replace('¦', ''), position: positionAt(marked, offset) };
}

export function positionAt(text: string, offset: number): Position {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

/** The stretch of the text that a range covers. */
export function textIn(text: string, { start, end }: Range): string {
  const lines = text.split('\n');
  const offset = ({ line, character }: Position): number =>
    lines.slice(0, line).reduce((sum, each) => sum + each.length + 1, 0) + character;
  return text.slice(offset(start), offset(end));
}
