/** Saves a picture as a file: in colours that stand alone, to a place that the reader chooses, by the editor's own means. */
import { type LogOutputChannel, l10n, type Uri, window, workspace } from 'vscode';
import type { CircuitView, PictureAnswer, PictureTheme, Placement } from '../../server/protocol.ts';
import { request } from '../client/requests.ts';
import type { Server } from '../client/server.ts';
import type { SaveFormat } from './messages.ts';
import { pictureFile } from './picture-file.ts';

export interface SaveContext {
  readonly server: Server;
  readonly log: LogOutputChannel;
  readonly rasterise: (svg: string, scale: number) => Promise<Uint8Array>;
}

export interface SaveRequest {
  readonly uri: Uri;
  readonly circuit: CircuitView;
  readonly format: SaveFormat;
  /** What is saved has its parts where the preview shows them. */
  readonly previous?: Placement;
}

export async function savePicture(context: SaveContext, wanted: SaveRequest): Promise<void> {
  try {
    const drawn = await standalone(context.server, wanted);
    if (drawn.kind === 'broken') {
      const line = drawn.location.range.start.line + 1;
      window.showWarningMessage(l10n.t('The schematic was not saved: the text has an error on line {0}.', line));
      return;
    }
    if (drawn.kind === 'none') throw new Error(drawn.message);
    const { svg } = drawn;
    const folder = workspace.getWorkspaceFolder(wanted.uri)?.uri ?? workspace.workspaceFolders?.[0]?.uri;
    const target = await window.showSaveDialog({
      defaultUri: pictureFile(wanted, folder),
      filters: wanted.format === 'svg' ? { SVG: ['svg'] } : { PNG: ['png'] },
      title: l10n.t('Save Schematic'),
    });
    if (target === undefined) return;
    const bytes =
      wanted.format === 'svg' ? new TextEncoder().encode(svg) : await context.rasterise(svg, scaleSetting());
    await workspace.fs.writeFile(target, bytes);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    // The reason may hold words of the file, which a message on the screen would take for links.
    context.log.error(`The picture of ${wanted.uri.toString()} was not saved: ${message}`);
    window.showErrorMessage(l10n.t('The schematic was not saved. The log of Linewright says why.'));
  }
}

async function standalone(server: Server, { uri, circuit, previous }: SaveRequest): Promise<PictureAnswer> {
  const client = server.client();
  if (client === undefined) throw new Error('The language server is not running.');
  return request(client, 'linewright/picture', {
    uri: uri.toString(),
    circuit,
    theme: themeSetting(),
    whenBroken: 'say-so',
    ...(previous === undefined ? {} : { previous }),
  });
}

function themeSetting(): PictureTheme {
  const chosen = workspace.getConfiguration('linewright').get('export.theme');
  return chosen === 'light' || chosen === 'dark' || chosen === 'high-contrast' ? chosen : 'print';
}

function scaleSetting(): number {
  const chosen = workspace.getConfiguration('linewright').get('export.pngScale');
  return typeof chosen === 'number' && chosen >= 1 && chosen <= 4 ? chosen : 2;
}
