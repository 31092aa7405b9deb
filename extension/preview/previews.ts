/** The preview of the window: opened by a command, restored after a reload, following the circuit that is being edited. */
import {
  type Disposable,
  type LogOutputChannel,
  type TextEditorSelectionChangeEvent,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import type { CircuitView } from '../../server/protocol.ts';
import { isServed } from '../client/documents.ts';
import type { Server } from '../client/server.ts';
import { debounce } from '../debounce.ts';
import { asksForHighlight } from './highlight.ts';
import type { SaveFormat } from './messages.ts';
import { createPanel, type PreviewPanel, pageOptions } from './panel.ts';
import type { PictureSubject } from './pictures.ts';
import { savePicture } from './save.ts';
import { readState } from './state.ts';

/** The manifest activates the extension by this very name. */
const viewType = 'linewright.preview';

export interface PreviewContext {
  readonly extensionUri: Uri;
  readonly server: Server;
  readonly log: LogOutputChannel;
}

export interface Previews extends Disposable {
  readonly show: (uri: Uri, column: ViewColumn) => void;
  /** The circuit file on show, if there is one. */
  readonly shown: () => Uri | undefined;
  /** Shows one of the two circuits of a file, beside the text if no preview is open yet. */
  readonly showCircuit: (uri: Uri, circuit: CircuitView) => void;
  readonly save: (uri: Uri, format: SaveFormat) => Promise<void>;
}

/** Milliseconds. A cursor that rests is worth a look at the server; one that runs is not. */
const cursorRest = 60;

export function createPreviews(context: PreviewContext): Previews {
  let current: PreviewPanel | undefined;

  const adopt = (host: WebviewPanel, subject: PictureSubject): PreviewPanel => {
    current?.dispose();
    const panel = createPanel({ ...context, save }, host, subject);
    current = panel;
    host.onDidDispose(() => {
      if (current === panel) current = undefined;
    });
    return panel;
  };
  const open = (uri: Uri, column: ViewColumn): PreviewPanel => {
    if (current !== undefined) {
      current.showDocument(uri);
      current.reveal();
      return current;
    }
    const place = { viewColumn: column, preserveFocus: column === ViewColumn.Beside };
    const host = window.createWebviewPanel(viewType, '', place, pageOptions(context.extensionUri));
    return adopt(host, { uri: uri.toString(), circuit: circuitAtFirst() });
  };
  const save = async (uri: Uri, format: SaveFormat): Promise<void> => {
    const shown = current?.subject();
    const subject = shown?.uri === uri.toString() ? shown : { circuit: circuitAtFirst() };
    const rasterise = (svg: string, scale: number) => (current ?? open(uri, ViewColumn.Beside)).rasterise(svg, scale);
    await savePicture({ ...context, rasterise }, { ...subject, uri, format });
  };

  const highlight = debounce(
    ({ textEditor, selections }: TextEditorSelectionChangeEvent) => {
      const [selection] = selections;
      if (selection === undefined || current === undefined) return;
      current.highlightAt(textEditor.document, selection).catch((error) => context.log.debug(String(error)));
    },
    cursorRest,
    { set: (act, wait) => setTimeout(act, wait), clear: (timeout) => clearTimeout(timeout) },
  );

  const belongings: readonly Disposable[] = [
    window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: async (host, stored: unknown) => {
        const subject = readState(stored);
        if (subject === undefined) host.dispose();
        else adopt(host, subject);
      },
    }),
    context.server.onDidChangePicture(({ uri }) => {
      if (current?.subject().uri === uri) current.refresh();
    }),
    context.server.onDidChangeState(() => current?.refresh()),
    window.onDidChangeActiveTextEditor((editor) => {
      if (editor !== undefined && isServed(editor.document)) current?.showDocument(editor.document.uri);
    }),
    window.onDidChangeTextEditorSelection((event) => {
      if (isServed(event.textEditor.document) && asksForHighlight(event, markingSetting())) highlight.ask(event);
    }),
  ];

  return {
    show: open,
    shown: () => (current === undefined ? undefined : Uri.parse(current.subject().uri)),
    showCircuit: (uri, circuit) => (current ?? open(uri, ViewColumn.Beside)).showCircuit(uri, circuit),
    save,
    dispose: () => {
      highlight.cancel();
      for (const belonging of belongings) belonging.dispose();
      current?.dispose();
    },
  };
}

export function circuitAtFirst(): CircuitView {
  return workspace.getConfiguration('linewright').get('circuit') === 'found' ? 'found' : 'planned';
}

function markingSetting(): unknown {
  return workspace.getConfiguration('linewright').get('preview.markCursor');
}
