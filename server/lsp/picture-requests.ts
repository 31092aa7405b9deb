/** Answers the preview and the sheets: the picture or sheet of a document, where a part stands in the text, which part the cursor stands in. */
import { DocumentState, type LangiumDocument, URI } from 'langium';
import { type CancellationToken, type Connection, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { LayoutEngine } from '../../language/schematic/layout/engine.ts';
import type { ServerRequests } from '../protocol.ts';
import { locatePart, partAt } from './part-places.ts';
import { drawPicture } from './picture-answer.ts';
import type { ServerSharedServices } from './services.ts';

export interface PictureContext {
  readonly shared: ServerSharedServices;
  readonly engine: LayoutEngine;
}

type Answer<M extends keyof ServerRequests> = (
  document: LangiumDocument,
  params: ServerRequests[M]['params'],
) => Promise<ServerRequests[M]['result'] | ResponseError> | ServerRequests[M]['result'];

export function answerPictureRequests(connection: Connection, context: PictureContext): void {
  const { shared } = context;
  const answer = <M extends keyof ServerRequests>(
    method: M,
    otherwise: ServerRequests[M]['result'],
    of: Answer<M>,
  ): void => {
    connection.onRequest<unknown, void>(
      method,
      async (params: ServerRequests[M]['params'], token): Promise<unknown> => {
        try {
          const document = await readyDocument(URI.parse(params.uri), shared, token);
          return document === undefined ? otherwise : await of(document, params);
        } catch (error) {
          if (token.isCancellationRequested)
            return new ResponseError(LSPErrorCodes.RequestCancelled, 'No longer wanted.');
          connection.console.error(
            `${method}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
          );
          return otherwise;
        }
      },
    );
  };
  answer(
    'linewright/picture',
    { kind: 'none', reason: 'unknown-document', message: 'This file is not open and lies in no open folder.' },
    (document, params) => drawPicture(document, params, context),
  );
  answer(
    'linewright/sheet',
    { kind: 'none', problem: 'This file is not open and lies in no open folder.' },
    (document, params) => shared.window.Sheets.answer(document, params),
  );
  answer('linewright/locate', null, (document, { id }) => locatePart(document, id, shared));
  answer('linewright/partAt', {}, (document, { position }) => partAt(document, position, shared));
}

/** The document as its text now stands, once it is read; undefined for one that is not ours. */
async function readyDocument(uri: URI, shared: ServerSharedServices, token: CancellationToken) {
  const { LangiumDocuments, DocumentBuilder, TextDocuments, WorkspaceManager } = shared.workspace;
  await WorkspaceManager.ready;
  if (!LangiumDocuments.hasDocument(uri)) return undefined;
  const wanted = TextDocuments.get(uri) === undefined ? DocumentState.IndexedReferences : DocumentState.Validated;
  await DocumentBuilder.waitUntil(wanted, uri, token);
  return LangiumDocuments.getDocument(uri);
}
