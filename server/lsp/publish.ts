/** Sends diagnostics and the news that a picture may have changed, each for the version of the text it was made from. */
import { DocumentState, type LangiumDocument } from 'langium';
import type { Connection } from 'vscode-languageserver';
import type { ServerNotifications } from '../protocol.ts';
import type { ServerSharedServices } from './services.ts';

const pictureChanged: keyof ServerNotifications = 'linewright/pictureChanged';

export function publishDiagnostics(connection: Connection, shared: ServerSharedServices): void {
  const { DocumentBuilder, TextDocuments } = shared.workspace;
  const tell = (document: LangiumDocument): void => {
    const uri = document.uri.toString();
    const version = TextDocuments.get(document.uri)?.version;
    const params: ServerNotifications['linewright/pictureChanged'] = version === undefined ? { uri } : { uri, version };
    void connection.sendNotification(pictureChanged, params);
  };
  DocumentBuilder.onUpdate((_changed, deleted) => {
    for (const uri of deleted) void connection.sendDiagnostics({ uri: uri.toString(), diagnostics: [] });
  });
  DocumentBuilder.onDocumentPhase(DocumentState.IndexedReferences, (document) => {
    if (TextDocuments.get(document.uri) === undefined) tell(document);
  });
  DocumentBuilder.onDocumentPhase(DocumentState.Validated, (document) => {
    const open = TextDocuments.get(document.uri);
    if (open === undefined) return;
    void connection.sendDiagnostics({ uri: open.uri, version: open.version, diagnostics: document.diagnostics ?? [] });
    tell(document);
  });
}
