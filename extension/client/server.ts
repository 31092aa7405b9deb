/** The life of the language server as the window sees it: start, stop, start anew, and what state it is in. */
import { type Event, EventEmitter, type LogOutputChannel, type Uri, workspace } from 'vscode';
import { type BaseLanguageClient, type Disposable, State } from 'vscode-languageclient';
import type { InitializationOptions, PictureChangedParams, ServerNotifications } from '../../server/protocol.ts';
import { documentSelector, filePattern, servedSchemes } from './documents.ts';
import { answerFileRequests } from './file-requests.ts';
import type { CreatedClient, Platform } from './platform.ts';
import { leadingToCommand, rulePages } from './rule-pages.ts';

export type ServerState =
  | { readonly kind: 'starting' }
  | { readonly kind: 'running' }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly message: string };

export interface Server {
  readonly state: () => ServerState;
  /** The client if the server can be asked now. */
  readonly client: () => BaseLanguageClient | undefined;
  readonly onDidChangeState: Event<ServerState>;
  readonly onDidChangePicture: Event<PictureChangedParams>;
  /** Never rejects: a failure is a state. */
  readonly start: () => Promise<void>;
  readonly restart: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

export interface ServerContext {
  readonly platform: Platform;
  readonly extensionUri: Uri;
  readonly log: LogOutputChannel;
}

export function createServer(context: ServerContext): Server {
  const { log } = context;
  const stateChanged = new EventEmitter<ServerState>();
  const pictureChanged = new EventEmitter<PictureChangedParams>();
  let state: ServerState = { kind: 'stopped' };
  let running: Running | undefined;
  // Starts and stops happen one after the other, whatever the order in which they are asked for.
  let turn: Promise<void> = Promise.resolve();

  const enter = (next: ServerState) => {
    state = next;
    stateChanged.fire(next);
  };
  const begin = async () => {
    if (running !== undefined) return;
    enter({ kind: 'starting' });
    try {
      running = await startClient(context, { enter, pictureChanged });
      enter({ kind: 'running' });
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      log.error(`The language server did not start: ${message}`);
      enter({ kind: 'failed', message });
    }
  };
  const end = async () => {
    const old = running;
    running = undefined;
    if (old !== undefined) await endClient(old, log);
    enter({ kind: 'stopped' });
  };
  const queue = (...steps: readonly (() => Promise<void>)[]) => {
    for (const step of steps) turn = turn.then(step);
    return turn;
  };

  return {
    state: () => state,
    client: () => (state.kind === 'running' ? running?.created.client : undefined),
    onDidChangeState: stateChanged.event,
    onDidChangePicture: pictureChanged.event,
    start: () => queue(begin),
    restart: () => queue(end, begin),
    stop: () => queue(end),
  };
}

interface Running {
  readonly created: CreatedClient;
  readonly belongings: readonly Disposable[];
}

interface Reports {
  readonly enter: (state: ServerState) => void;
  readonly pictureChanged: EventEmitter<PictureChangedParams>;
}

async function startClient({ platform, extensionUri, log }: ServerContext, reports: Reports): Promise<Running> {
  const pages = rulePages(extensionUri);
  const { ownSchemes } = platform;
  const initializationOptions: InitializationOptions = {
    ownSchemes,
    servedSchemes,
    rulePages: pages.toString(),
    sheetCommands: true,
  };
  const watcher = workspace.createFileSystemWatcher(filePattern);
  const created = await platform.createClient('linewright', 'Linewright', {
    documentSelector,
    initializationOptions,
    outputChannel: log,
    synchronize: { fileEvents: watcher },
    // What a file says is shown as text: it can neither run a command nor bring its own markup.
    markdown: { isTrusted: false, supportHtml: false },
    middleware: { handleDiagnostics: (uri, diagnostics, next) => next(uri, diagnostics.map(leadingToCommand)) },
  });
  const { client } = created;
  const changed: keyof ServerNotifications = 'linewright/pictureChanged';
  const belongings = [
    watcher,
    ...answerFileRequests(client),
    client.onNotification(changed, (params: PictureChangedParams) => reports.pictureChanged.fire(params)),
    client.onDidChangeState(({ oldState, newState }) => {
      // The client starts a crashed server again by itself, a few times.
      if (oldState === State.Running && newState !== State.Running) reports.enter({ kind: 'stopped' });
      if (newState === State.Running) reports.enter({ kind: 'running' });
    }),
  ];
  const running = { created, belongings };
  try {
    await client.start();
    return running;
  } catch (error) {
    await endClient(running, log);
    throw error;
  }
}

/** A client that failed or crashed cannot be stopped, and one that was stopped is not started again: it is disposed. */
async function endClient({ created, belongings }: Running, log: LogOutputChannel): Promise<void> {
  for (const belonging of belongings) belonging.dispose();
  try {
    await created.client.dispose(2000);
  } catch (error) {
    log.debug(`The language server was gone already: ${String(error)}`);
  }
  created.release();
}
