/** Proposes where a saved picture goes: beside its circuit file, or in the folder of the window if that has no place yet. */
import type { CircuitView } from '../../server/protocol.ts';
import type { SaveFormat } from './messages.ts';

export interface PlaceLike<U> {
  readonly scheme: string;
  readonly path: string;
  readonly with: (change: { path: string }) => U;
}

export interface PictureSource<U> {
  readonly uri: PlaceLike<U>;
  readonly circuit: CircuitView;
  readonly format: SaveFormat;
}

export function pictureFile<U>({ uri, circuit, format }: PictureSource<U>, folder: PlaceLike<U> | undefined): U {
  const stem = uri.path.slice(uri.path.lastIndexOf('/') + 1).replace(/\.circuit$/i, '') || 'circuit';
  const name = `${stem}${circuit === 'found' ? '-as-found' : ''}.${format}`;
  if (uri.scheme === 'untitled' && folder !== undefined) return folder.with({ path: `${folder.path}/${name}` });
  return uri.with({ path: `${uri.path.slice(0, uri.path.lastIndexOf('/') + 1)}${name}` });
}
