/** Starts the server on a connection: the language's services, the handlers of the protocol and our own requests. */
import type { LangiumSharedServices } from 'langium/lsp';
import {
  addCodeActionHandler,
  addCodeLensHandler,
  addCompletionHandler,
  addConfigurationChangeHandler,
  addDocumentHighlightHandler,
  addDocumentLinkHandler,
  addDocumentSymbolHandler,
  addDocumentUpdateHandler,
  addFindReferencesHandler,
  addFoldingRangeHandler,
  addFormattingHandler,
  addGotoDefinitionHandler,
  addHoverHandler,
  addInlayHintHandler,
  addRenameHandler,
  addSemanticTokenHandler,
  addWorkspaceSymbolHandler,
} from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import type { LayoutEngine } from '../language/schematic/layout/engine.ts';
import { type Files, FilesByScheme } from './file-system.ts';
import { windowFiles } from './file-system-window.ts';
import { answerPictureRequests } from './lsp/picture-requests.ts';
import { publishDiagnostics } from './lsp/publish.ts';
import { refreshWindow } from './lsp/refresh.ts';
import { answerSelectionRanges } from './lsp/selection-ranges.ts';
import { createServerServices, type ServerSharedServices } from './lsp/services.ts';

export interface Host {
  /** Reads the files of these schemes without the window. */
  readonly ownFiles: ReadonlyMap<string, Files>;
  readonly engine: LayoutEngine;
}

const handlers: readonly ((connection: Connection, shared: LangiumSharedServices) => void)[] = [
  addDocumentUpdateHandler,
  addCompletionHandler,
  addDocumentSymbolHandler,
  addGotoDefinitionHandler,
  addDocumentHighlightHandler,
  addFoldingRangeHandler,
  addFormattingHandler,
  addCodeActionHandler,
  addCodeLensHandler,
  addInlayHintHandler,
  addHoverHandler,
  addSemanticTokenHandler,
  addDocumentLinkHandler,
  addConfigurationChangeHandler,
];

/** These ask about all files of the folders. */
const handlersOfAll: typeof handlers = [addFindReferencesHandler, addRenameHandler, addWorkspaceSymbolHandler];

export function startServer(connection: Connection, { ownFiles, engine }: Host): void {
  const asked = windowFiles(connection);
  const files = new FilesByScheme((scheme) => ownFiles.get(scheme) ?? asked);
  const { shared } = createServerServices({ connection, fileSystemProvider: () => files });
  for (const add of handlers) add(connection, shared);
  const patient = waitingConnection(connection, () => shared.workspace.WorkspaceManager.complete);
  for (const add of handlersOfAll) add(patient, shared);
  publishDiagnostics(connection, shared);
  refreshWindow(connection, shared);
  answerPictureRequests(connection, { shared, engine });
  answerSelectionRanges(connection, shared);
  followFolders(connection, shared);
  connection.onInitialize((params) => shared.lsp.LanguageServer.initialize(params));
  connection.onInitialized((params) => {
    shared.lsp.LanguageServer.initialized(params);
    // The first picture then does not wait for the layout library.
    void engine
      .warmUp()
      .catch((error: unknown) => connection.console.warn(`The layout could not be prepared: ${String(error)}`));
  });
  connection.onShutdown(() => engine.dispose());
  shared.workspace.TextDocuments.listen(connection);
  connection.listen();
}

/** Folders that are added to the window or taken out of it while it is open. */
function followFolders(connection: Connection, shared: ServerSharedServices): void {
  connection.onInitialized(() => {
    connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) =>
      shared.workspace.WorkspaceManager.change(added, removed),
    );
  });
}

/** The connection, with handlers that ask about all files waiting until these are known. */
function waitingConnection(connection: Connection, until: () => Promise<void>): Connection {
  const waiting =
    <P extends readonly unknown[], R>(handler: (...params: P) => R) =>
    async (...params: P): Promise<Awaited<R>> => {
      await until();
      return await handler(...params);
    };
  return {
    ...connection,
    onReferences: (handler) => connection.onReferences(waiting(handler)),
    onRenameRequest: (handler) => connection.onRenameRequest(waiting(handler)),
    onWorkspaceSymbol: (handler) => connection.onWorkspaceSymbol(waiting(handler)),
  };
}
