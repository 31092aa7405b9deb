/** What a preview's host and its page say to each other. */
import type { CircuitView, PicturePart, PictureTally, Placement } from '../../server/protocol.ts';

export type ToPage =
  /** Answer to `ready`: the words to show, and which document and circuit is meant. */
  | { readonly type: 'start'; readonly words: Words; readonly uri: string; readonly circuit: CircuitView }
  | { readonly type: 'picture'; readonly picture: PagePicture }
  /** The text is broken; the picture on show, if any, is from before. */
  | { readonly type: 'broken'; readonly message: string; readonly line: number }
  /** The file has nothing to draw. */
  | { readonly type: 'nothing'; readonly message: string }
  /** No picture could be made; one on show is kept. */
  | { readonly type: 'trouble'; readonly message: string }
  | { readonly type: 'highlight'; readonly id: string | undefined }
  | { readonly type: 'rasterise'; readonly job: number; readonly svg: string; readonly scale: number };

export type ToHost =
  | { readonly type: 'ready' }
  | { readonly type: 'open'; readonly id: string }
  | { readonly type: 'openBroken' }
  | { readonly type: 'focusEditor' }
  | { readonly type: 'circuit'; readonly circuit: CircuitView }
  | { readonly type: 'save'; readonly format: SaveFormat }
  | { readonly type: 'raster'; readonly job: number; readonly png: Uint8Array }
  | { readonly type: 'rasterFailed'; readonly job: number; readonly message: string };

export type SaveFormat = 'svg' | 'png';

export interface PagePicture {
  /** The file that is drawn; another file starts with a fresh view. */
  readonly uri: string;
  readonly circuit: CircuitView;
  readonly svg: string;
  readonly title: string;
  readonly description: string;
  readonly parts: readonly PicturePart[];
  readonly views: readonly CircuitView[];
  readonly tally: PictureTally;
  readonly placement: Placement;
  readonly broken: { readonly message: string; readonly line: number } | undefined;
}

/** Everything that the page says by itself, in the reader's language. `{0}` and so on are filled in by the page. */
export interface Words {
  readonly tools: string;
  readonly canvas: string;
  readonly keys: string;
  readonly zoomIn: string;
  readonly zoomOut: string;
  readonly fit: string;
  readonly fullSize: string;
  readonly list: string;
  readonly listTitle: string;
  readonly circuit: string;
  readonly planned: string;
  readonly found: string;
  readonly saveSvg: string;
  readonly savePng: string;
  readonly waiting: string;
  readonly brokenWithPicture: string;
  readonly brokenPartly: string;
  readonly brokenWithout: string;
  readonly goToLine: string;
  readonly summary: string;
  readonly error: string;
  readonly warning: string;
  readonly information: string;
  readonly question: string;
}
