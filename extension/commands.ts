/** Every command of the extension, one row each; the manifest names the same ones. */
import { commands, type Disposable, l10n, Uri, ViewColumn, window, workspace } from 'vscode';
import { isServed, languageId, servedSchemes } from './client/documents.ts';
import { explainRule } from './client/rule-pages.ts';
import type { Server } from './client/server.ts';
import type { Previews } from './preview/previews.ts';
import type { Sheets } from './sheets/sheets.ts';

export interface CommandContext {
  readonly extensionUri: Uri;
  readonly server: Server;
  readonly previews: Previews;
  readonly sheets: Sheets;
}

type Command = (context: CommandContext, target: unknown) => unknown;

const table: Readonly<Record<string, Command>> = {
  'linewright.showPreview': (context, target) =>
    withCircuit(context, target, (uri) => context.previews.show(uri, ViewColumn.Active)),
  'linewright.showPreviewToSide': (context, target) =>
    withCircuit(context, target, (uri) => context.previews.show(uri, ViewColumn.Beside)),
  'linewright.showPlanned': (context, target) =>
    withCircuit(context, target, (uri) => context.previews.showCircuit(uri, 'planned')),
  'linewright.showFound': (context, target) =>
    withCircuit(context, target, (uri) => context.previews.showCircuit(uri, 'found')),
  'linewright.exportSvg': (context, target) => withCircuit(context, target, (uri) => context.previews.save(uri, 'svg')),
  'linewright.exportPng': (context, target) => withCircuit(context, target, (uri) => context.previews.save(uri, 'png')),
  'linewright.showSheet': (context, target) => withCircuit(context, target, (uri) => context.sheets.choose(uri)),
  'linewright.showLinesSheet': (context, target) =>
    withCircuit(context, target, (uri) => context.sheets.show(uri, 'lines')),
  'linewright.showPartsSheet': (context, target) =>
    withCircuit(context, target, (uri) => context.sheets.show(uri, 'parts')),
  'linewright.showMeasureSheet': (context, target) =>
    withCircuit(context, target, (uri) => context.sheets.show(uri, 'measure')),
  'linewright.openExample': ({ extensionUri }) => openExample(extensionUri),
  'linewright.restartServer': ({ server }) => server.restart(),
  'linewright.explainRule': ({ extensionUri }, code) => explainRule(extensionUri, code),
};

export function registerCommands(context: CommandContext): Disposable[] {
  return Object.entries(table).map(([id, run]) =>
    commands.registerCommand(id, (target: unknown) => run(context, target)),
  );
}

/** The circuit that is meant: the file that a menu was opened on or a lens stands over, else the one in the editor, on a sheet or drawn. */
async function withCircuit(
  { previews, sheets }: CommandContext,
  target: unknown,
  act: (uri: Uri) => unknown,
): Promise<void> {
  // A lens comes from the server, which names a file by its address.
  const named = typeof target === 'string' ? Uri.parse(target) : target;
  const uri =
    named instanceof Uri && servedSchemes.includes(named.scheme)
      ? named
      : (circuitInEditor() ?? sheets.inFront() ?? previews.shown());
  if (uri !== undefined) await act(uri);
  else window.showInformationMessage(l10n.t('Open a circuit file first: a file that ends in .circuit.'));
}

function circuitInEditor(): Uri | undefined {
  const active = window.activeTextEditor?.document;
  return active !== undefined && isServed(active) ? active.uri : undefined;
}

/** An example is opened as an untitled copy: to be changed freely, and saved by whoever wants to keep it. */
async function openExample(extensionUri: Uri): Promise<void> {
  const bytes = await workspace.fs.readFile(Uri.joinPath(extensionUri, 'extension/walkthrough/first.circuit'));
  const content = new TextDecoder().decode(bytes);
  await window.showTextDocument(await workspace.openTextDocument({ language: languageId, content }));
}
