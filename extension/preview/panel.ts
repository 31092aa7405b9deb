/** One preview panel: shows the pictures of its document in its page and does what is asked there. */
import {
  type Disposable,
  env,
  l10n,
  type Selection,
  type TextDocument,
  Uri,
  type WebviewOptions,
  type WebviewPanel,
  type WebviewPanelOptions,
  workspace,
} from 'vscode';
import type { CircuitView } from '../../server/protocol.ts';
import { request } from '../client/requests.ts';
import { focusDocument, revealLocation } from './editors.ts';
import type { SaveFormat, ToHost, ToPage } from './messages.ts';
import { createNonce, pageHtml } from './page.ts';
import { createPictures, type PictureSubject } from './pictures.ts';
import type { PreviewContext } from './previews.ts';
import { createRasteriser } from './raster.ts';
import { pageWords } from './words.ts';

export interface PreviewPanel extends Disposable {
  readonly subject: () => PictureSubject;
  readonly showDocument: (uri: Uri) => void;
  readonly showCircuit: (uri: Uri, circuit: CircuitView) => void;
  readonly refresh: () => void;
  readonly reveal: () => void;
  readonly highlightAt: (document: TextDocument, selection: Selection) => Promise<void>;
  readonly rasterise: (svg: string, scale: number) => Promise<Uint8Array>;
}

export interface PanelContext extends PreviewContext {
  readonly save: (uri: Uri, format: SaveFormat) => Promise<void>;
}

export function pageOptions(extensionUri: Uri): WebviewOptions & WebviewPanelOptions {
  return { enableScripts: true, localResourceRoots: [Uri.joinPath(extensionUri, 'dist')] };
}

export function createPanel(context: PanelContext, host: WebviewPanel, first: PictureSubject): PreviewPanel {
  const { server, log, extensionUri } = context;
  let ready = false;
  // A hidden page is taken down and what is sent to it is lost; when it is back it says so and is sent everything.
  const post = (message: ToPage) => {
    if (ready) void host.webview.postMessage(message);
  };
  const pictures = createPictures({ server, log, post }, first);
  const raster = createRasteriser(post);
  const subjectUri = () => Uri.parse(pictures.subject().uri);

  const refresh = () => {
    if (ready) pictures.ask();
  };
  const turnTo = async (subject: PictureSubject) => {
    host.title = titleOf(subject.uri);
    pictures.turnTo(subject);
    post({ type: 'start', words: pageWords(l10n), uri: subject.uri, circuit: subject.circuit });
    await openQuietly(subject.uri);
    refresh();
  };

  const begin = () => {
    ready = true;
    const { uri, circuit } = pictures.subject();
    post({ type: 'start', words: pageWords(l10n), uri, circuit });
    pictures.turnTo(pictures.subject());
    refresh();
    raster.pageIsReady();
  };
  const receive = async (message: ToHost): Promise<void> => {
    raster.receive(message);
    switch (message.type) {
      case 'ready':
        return begin();
      case 'open':
        return open(message.id);
      case 'openBroken': {
        const place = pictures.brokenAt();
        return place === undefined ? undefined : revealLocation(place);
      }
      case 'focusEditor':
        return focusDocument(subjectUri());
      case 'circuit':
        return turnTo({ ...pictures.subject(), circuit: message.circuit });
      case 'save':
        return context.save(subjectUri(), message.format);
    }
  };
  const open = async (id: string) => {
    const client = server.client();
    const place = client && (await request(client, 'linewright/locate', { uri: pictures.subject().uri, id }));
    if (place) await revealLocation(place);
  };

  const belongings = [
    host.webview.onDidReceiveMessage((message: ToHost) => {
      receive(message).catch((error) => log.error(`Preview: ${String(error)}`));
    }),
    host.onDidChangeViewState(() => {
      if (!host.visible) ready = false;
    }),
    host.onDidDispose(() => {
      raster.dispose();
      for (const belonging of belongings) belonging.dispose();
    }),
  ];
  fillPage(host, extensionUri);
  void turnTo(first);

  return {
    subject: pictures.subject,
    showDocument: (uri) => {
      const wanted = uri.toString();
      if (wanted !== pictures.subject().uri) void turnTo({ uri: wanted, circuit: pictures.subject().circuit });
    },
    showCircuit: (uri, circuit) => {
      const { uri: shown, circuit: shownCircuit, placement } = pictures.subject();
      const wanted = uri.toString();
      if (wanted !== shown) void turnTo({ uri: wanted, circuit });
      else if (circuit !== shownCircuit) void turnTo({ uri: shown, circuit, ...(placement && { placement }) });
    },
    refresh,
    reveal: () => host.reveal(undefined, true),
    highlightAt: async (document, selection) => {
      const client = server.client();
      const uri = document.uri.toString();
      if (client === undefined || uri !== pictures.subject().uri) return;
      const { line, character } = selection.active;
      const { id } = await request(client, 'linewright/partAt', { uri, position: { line, character } });
      post({ type: 'highlight', id });
    },
    rasterise: (svg, scale) => {
      // A page that is hidden would never answer.
      if (!host.visible) host.reveal(undefined, true);
      return raster.rasterise(svg, scale);
    },
    dispose: () => host.dispose(),
  };
}

function fillPage(host: WebviewPanel, extensionUri: Uri): void {
  const { webview } = host;
  const file = (name: string) => webview.asWebviewUri(Uri.joinPath(extensionUri, 'dist', name)).toString();
  webview.options = pageOptions(extensionUri);
  host.iconPath = {
    light: Uri.joinPath(extensionUri, 'extension/media/circuit-light.svg'),
    dark: Uri.joinPath(extensionUri, 'extension/media/circuit-dark.svg'),
  };
  webview.html = pageHtml({
    language: env.language,
    nonce: createNonce(),
    cspSource: webview.cspSource,
    script: file('preview.js'),
    styles: [file('picture.css'), file('preview.css')],
  });
}

/** The server draws what is open; a document that cannot be opened is what the server then says it is. */
export async function openQuietly(uri: string): Promise<void> {
  await workspace.openTextDocument(Uri.parse(uri)).then(undefined, () => undefined);
}

function titleOf(uri: string): string {
  const { path } = Uri.parse(uri);
  return l10n.t('Schematic: {0}', path.slice(path.lastIndexOf('/') + 1));
}
