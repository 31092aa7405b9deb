/** One panel with one sheet of a file: pulls it from the server whenever the file changes and does what is asked on its page. */
import { env, l10n, Uri, type WebviewPanel } from 'vscode';
import type { SheetAnswer } from '../../server/protocol.ts';
import { isOutOfDate, request } from '../client/requests.ts';
import { focusDocument } from '../preview/editors.ts';
import { createNonce } from '../preview/page.ts';
import { openQuietly, pageOptions } from '../preview/panel.ts';
import { withoutServer } from '../preview/pictures.ts';
import { createPull } from '../preview/pull.ts';
import type { ToSheetHost, ToSheetPage } from './messages.ts';
import { printSheet, saveSheet } from './output.ts';
import { sheetPageHtml } from './page.ts';
import type { SheetsContext } from './sheets.ts';
import type { SheetSubject } from './state.ts';
import { panelTitle, sheetWords } from './words.ts';

export interface SheetPanel {
  readonly subject: () => SheetSubject;
  readonly isActive: () => boolean;
  readonly refresh: () => void;
  readonly reveal: () => void;
  readonly dispose: () => void;
}

export function createSheetPanel(context: SheetsContext, host: WebviewPanel, first: SheetSubject): SheetPanel {
  const { server, log } = context;
  let subject = first;
  let ready = false;
  // A hidden page is taken down and what is sent to it is lost; when it is back it says so and is sent everything.
  const post = (message: ToSheetPage) => {
    if (ready) void host.webview.postMessage(message);
  };
  const pull = createPull<SheetSubject, SheetAnswer>({
    fetch: async (question) => {
      const client = server.client();
      if (client === undefined) return { kind: 'none', problem: withoutServer(server) };
      return request(client, 'linewright/sheet', { ...question, format: 'body' });
    },
    deliver: (answer, { circuit }) => {
      if (answer.kind === 'none') return post({ type: 'trouble', message: answer.problem });
      const { text: body, title, views } = answer;
      post({ type: 'sheet', body, title, circuit, views });
    },
    fail: (error) => {
      if (isOutOfDate(error)) return;
      log.error(`No sheet of ${subject.uri}: ${error instanceof Error ? error.message : String(error)}`);
      post({ type: 'trouble', message: l10n.t('The sheet could not be made. The log of Linewright says why.') });
    },
  });
  const refresh = () => {
    if (ready) pull.ask(subject);
  };
  const begin = () => {
    post({ type: 'start', words: sheetWords(), subject });
    pull.drop();
    refresh();
  };
  const receive = async (message: ToSheetHost): Promise<void> => {
    switch (message.type) {
      case 'ready':
        ready = true;
        await openQuietly(subject.uri);
        return begin();
      case 'circuit':
        subject = { ...subject, circuit: message.circuit };
        return begin();
      case 'print':
        return printSheet(context, subject);
      case 'save':
        return saveSheet(context, subject);
      case 'focusEditor':
        return focusDocument(Uri.parse(subject.uri));
    }
  };

  const belongings = [
    host.webview.onDidReceiveMessage((message: ToSheetHost) => {
      receive(message).catch((error) => log.error(`Sheet: ${String(error)}`));
    }),
    host.onDidChangeViewState(() => {
      if (!host.visible) ready = false;
    }),
    host.onDidDispose(() => {
      for (const belonging of belongings) belonging.dispose();
    }),
  ];
  fillPage(host, context.extensionUri, subject);
  return {
    subject: () => subject,
    isActive: () => host.active,
    refresh,
    reveal: () => host.reveal(),
    dispose: () => host.dispose(),
  };
}

function fillPage(host: WebviewPanel, extensionUri: Uri, { uri, sheet }: SheetSubject): void {
  const { webview } = host;
  const file = (name: string) => webview.asWebviewUri(Uri.joinPath(extensionUri, 'dist', name)).toString();
  const { path } = Uri.parse(uri);
  host.title = panelTitle(sheet, path.slice(path.lastIndexOf('/') + 1));
  webview.options = pageOptions(extensionUri);
  host.iconPath = {
    light: Uri.joinPath(extensionUri, 'extension/media/circuit-light.svg'),
    dark: Uri.joinPath(extensionUri, 'extension/media/circuit-dark.svg'),
  };
  webview.html = sheetPageHtml({
    language: env.language,
    nonce: createNonce(),
    cspSource: webview.cspSource,
    script: file('sheet.js'),
    styles: [file('paper.css'), file('sheet.css')],
  });
}
