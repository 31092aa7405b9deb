/** The sheets that are open in the window: one panel for each sheet of each file, restored after a reload. */
import { type Disposable, type LogOutputChannel, Uri, ViewColumn, type WebviewPanel, window } from 'vscode';
import type { SheetName } from '../../server/protocol.ts';
import type { Server } from '../client/server.ts';
import { pageOptions } from '../preview/panel.ts';
import { circuitAtFirst } from '../preview/previews.ts';
import { createSheetPanel, type SheetPanel } from './panel.ts';
import { readSheetState, type SheetSubject, sameSheet } from './state.ts';
import { sheetChoices } from './words.ts';

/** The manifest activates the extension by this very name. */
const viewType = 'linewright.sheet';

export interface SheetsContext {
  readonly extensionUri: Uri;
  readonly server: Server;
  readonly log: LogOutputChannel;
  readonly storage: Uri;
}

export interface Sheets extends Disposable {
  readonly show: (uri: Uri, sheet: SheetName) => void;
  /** Lets the reader choose one of the sheets first. */
  readonly choose: (uri: Uri) => Promise<void>;
  /** The file of the sheet that has the keyboard, if one has it. */
  readonly inFront: () => Uri | undefined;
}

export function createSheets(context: SheetsContext): Sheets {
  const panels = new Set<SheetPanel>();

  const adopt = (host: WebviewPanel, subject: SheetSubject) => {
    const panel = createSheetPanel(context, host, subject);
    panels.add(panel);
    host.onDidDispose(() => panels.delete(panel));
  };
  const show = (uri: Uri, sheet: SheetName) => {
    const subject: SheetSubject = { uri: uri.toString(), sheet, circuit: circuitAtFirst() };
    const open = [...panels].find((panel) => sameSheet(panel.subject(), subject));
    if (open !== undefined) return open.reveal();
    const place = { viewColumn: ViewColumn.Beside, preserveFocus: false };
    adopt(window.createWebviewPanel(viewType, '', place, pageOptions(context.extensionUri)), subject);
  };
  const refreshAll = () => {
    for (const panel of panels) panel.refresh();
  };
  const belongings: readonly Disposable[] = [
    window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: async (host, stored: unknown) => {
        const state = readSheetState(stored);
        if (state === undefined) return host.dispose();
        const { uri, sheet, circuit } = state;
        adopt(host, { uri, sheet, circuit });
      },
    }),
    context.server.onDidChangePicture(({ uri }) => {
      for (const panel of panels) if (panel.subject().uri === uri) panel.refresh();
    }),
    context.server.onDidChangeState(refreshAll),
  ];

  return {
    show,
    choose: async (uri) => {
      const choice = await window.showQuickPick(sheetChoices(), { matchOnDetail: true });
      if (choice !== undefined) show(uri, choice.sheet);
    },
    inFront: () => {
      const front = [...panels].find((panel) => panel.isActive());
      return front && Uri.parse(front.subject().uri);
    },
    dispose: () => {
      for (const belonging of belongings) belonging.dispose();
      for (const panel of [...panels]) panel.dispose();
    },
  };
}
