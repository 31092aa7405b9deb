/** Names the file that a sheet goes into, and tells from its name in which format it is wanted. */
import type { CircuitView, SheetName, SheetParams } from '../../server/protocol.ts';
import type { PlaceLike } from '../preview/picture-file.ts';

export interface SheetSource<U> {
  readonly uri: PlaceLike<U>;
  readonly sheet: SheetName;
  readonly circuit: CircuitView;
}

export type FileFormat = Exclude<SheetParams['format'], 'body'>;

const endings: ReadonlyMap<string, FileFormat> = new Map([
  ['html', 'html'],
  ['htm', 'html'],
  ['md', 'markdown'],
  ['csv', 'csv'],
]);

/** Undefined for an ending that no format has. */
export function formatOf(path: string): FileFormat | undefined {
  return endings.get(/\.(\w+)$/.exec(path)?.[1]?.toLowerCase() ?? '');
}

/** `orchard-van-lines.html`, `orchard-van-measure-as-found.html` */
export function sheetFileName({ uri, sheet, circuit }: SheetSource<unknown>): string {
  const stem = uri.path.slice(uri.path.lastIndexOf('/') + 1).replace(/\.circuit$/i, '') || 'circuit';
  return `${stem}-${sheet}${circuit === 'found' ? '-as-found' : ''}.html`;
}

/** Beside its circuit file, or in the folder of the window if that has no place yet. */
export function sheetFile<U>(source: SheetSource<U>, folder: PlaceLike<U> | undefined): U {
  const { uri } = source;
  const name = sheetFileName(source);
  if (uri.scheme === 'untitled' && folder !== undefined) return folder.with({ path: `${folder.path}/${name}` });
  return uri.with({ path: `${uri.path.slice(0, uri.path.lastIndexOf('/') + 1)}${name}` });
}
