/** Has the window ask anew for lenses and lengths where a document means something else though its own text is the same. */
import { DocumentState, delayNextTick } from 'langium';
import { CodeLensRefreshRequest, type Connection, InlayHintRefreshRequest } from 'vscode-languageserver';
import type { ServerSharedServices } from './services.ts';

/** After a change of the settings, or of a file that the document uses. Its own edits the window sees by itself. */
export function refreshWindow(connection: Connection, shared: ServerSharedServices): void {
  const { DocumentBuilder, TextDocuments } = shared.workspace;
  const { Settings, Window } = shared.window;
  const seen = new Map<string, number>();
  let asked: 'not' | 'soon' = 'not';
  const ask = async (): Promise<void> => {
    await delayNextTick();
    asked = 'not';
    // A window that is closing does not answer, and then nobody waits for it.
    if (Window.refreshesLenses()) connection.sendRequest(CodeLensRefreshRequest.type).catch(() => undefined);
    if (Window.refreshesInlays()) connection.sendRequest(InlayHintRefreshRequest.type).catch(() => undefined);
  };
  const askSoon = (): void => {
    if (asked === 'soon') return;
    asked = 'soon';
    void ask();
  };
  DocumentBuilder.onDocumentPhase(DocumentState.Validated, ({ uri }) => {
    const open = TextDocuments.get(uri);
    if (open === undefined) return;
    if (seen.get(open.uri) === open.version) askSoon();
    seen.set(open.uri, open.version);
  });
  TextDocuments.onDidClose(({ document }) => seen.delete(document.uri));
  Settings.onChange(askSoon);
}
