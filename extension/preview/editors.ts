/** Shows a place of a circuit file in the editor that has the file already, or in a new one beside the preview. */
import { Position, Range, TabInputText, Uri, ViewColumn, window, workspace } from 'vscode';
import type { Location } from 'vscode-languageclient';

export async function revealLocation({ uri, range }: Location): Promise<void> {
  const { start, end } = range;
  const selection = new Range(new Position(start.line, start.character), new Position(end.line, end.character));
  await show(Uri.parse(uri), { selection });
}

/** Gives the keyboard back to the text, where its cursor stands. */
export async function focusDocument(uri: Uri): Promise<void> {
  await show(uri, {});
}

async function show(uri: Uri, options: { readonly selection?: Range }): Promise<void> {
  const document = await workspace.openTextDocument(uri);
  await window.showTextDocument(document, { ...options, viewColumn: columnOf(uri), preserveFocus: false });
}

function columnOf(uri: Uri): ViewColumn {
  const wanted = uri.toString();
  const visible = window.visibleTextEditors.find((editor) => editor.document.uri.toString() === wanted);
  if (visible?.viewColumn !== undefined) return visible.viewColumn;
  const tabs = window.tabGroups.all.flatMap((group) => group.tabs);
  const tab = tabs.find(({ input }) => input instanceof TabInputText && input.uri.toString() === wanted);
  return tab?.group.viewColumn ?? ViewColumn.One;
}
