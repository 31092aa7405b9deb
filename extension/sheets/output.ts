/** Takes a sheet out of the window: into a file that the reader names, or into the browser to be printed. */
import { env, type LogOutputChannel, l10n, UIKind, Uri, window, workspace } from 'vscode';
import type { SheetParams } from '../../server/protocol.ts';
import { request } from '../client/requests.ts';
import type { Server } from '../client/server.ts';
import { formatOf, sheetFile, sheetFileName } from './sheet-file.ts';
import type { SheetSubject } from './state.ts';

export interface OutputContext {
  readonly server: Server;
  readonly log: LogOutputChannel;
  /** A folder of our own for what the browser is to open. */
  readonly storage: Uri;
}

/** The format is that of the ending of the name that is chosen. */
export function saveSheet(context: OutputContext, subject: SheetSubject): Promise<void> {
  return tellingTrouble(context, subject, async () => {
    const uri = Uri.parse(subject.uri);
    const folder = workspace.getWorkspaceFolder(uri)?.uri ?? workspace.workspaceFolders?.[0]?.uri;
    const target = await window.showSaveDialog({
      defaultUri: sheetFile({ ...subject, uri }, folder),
      filters: { HTML: ['html'], Markdown: ['md'], CSV: ['csv'] },
      title: l10n.t('Save Sheet'),
    });
    if (target === undefined) return;
    const format = formatOf(target.path);
    if (format === undefined) {
      window.showWarningMessage(
        l10n.t('The sheet was not saved: the name of the file must end in .html, .md or .csv.'),
      );
      return;
    }
    await write(target, await textOf(context.server, subject, format));
  });
}

/** Where no browser can open a file of this machine, the page is saved to be opened and printed by hand. */
export function printSheet(context: OutputContext, subject: SheetSubject): Promise<void> {
  return tellingTrouble(context, subject, async () => {
    if (opensFiles(context.storage)) {
      const page = Uri.joinPath(context.storage, sheetFileName({ ...subject, uri: Uri.parse(subject.uri) }));
      await workspace.fs.createDirectory(context.storage);
      await write(page, await textOf(context.server, subject, 'html'));
      if (await env.openExternal(page)) return;
    }
    window.showInformationMessage(l10n.t('Save the sheet as a page; it prints from the browser that you open it in.'));
    await saveSheet(context, subject);
  });
}

function opensFiles(storage: Uri): boolean {
  return env.uiKind === UIKind.Desktop && env.remoteName === undefined && storage.scheme === 'file';
}

async function textOf(server: Server, subject: SheetSubject, format: SheetParams['format']): Promise<string> {
  const client = server.client();
  if (client === undefined) throw new Error('The language server is not running.');
  const answer = await request(client, 'linewright/sheet', { ...subject, format });
  if (answer.kind === 'none') throw new Error(answer.problem);
  return answer.text;
}

async function write(target: Uri, text: string): Promise<void> {
  await workspace.fs.writeFile(target, new TextEncoder().encode(text));
}

async function tellingTrouble({ log }: OutputContext, { uri }: SheetSubject, act: () => Promise<void>): Promise<void> {
  try {
    await act();
  } catch (error) {
    // The reason may hold words of the file, which a message on the screen would take for links.
    log.error(`A sheet of ${uri} was not written: ${error instanceof Error ? error.message : String(error)}`);
    window.showErrorMessage(l10n.t('The sheet was not written. The log of Linewright says why.'));
  }
}
