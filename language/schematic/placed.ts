/** A picture with every place known: what the SVG is written from, and what the next placement starts from. */
import type { Picture, PictureLine, PictureNode } from './picture.ts';
import type { Point } from './symbols/drawing.ts';
import type { Box } from './symbols/box.ts';

export interface PlacedNode {
  readonly node: PictureNode;
  readonly box: Box;
  readonly at: Point;
  /** Ports that no line meets, as places on the symbol. */
  readonly open: readonly { readonly port: string; readonly at: Point; readonly away: Point }[];
}

export interface LineText {
  readonly at: Point;
  readonly title: string;
  readonly notes: readonly string[];
}

export interface PlacedLine {
  readonly line: PictureLine;
  readonly points: readonly Point[];
  readonly text?: LineText;
  /** Middle of the straight piece kept free beside the label, where the line carries its symbol and marks. */
  readonly carrier?: { readonly x: number; readonly top: number; readonly bottom: number };
}

/** Where things lay, to be handed to the next placement; plain JSON. */
export interface Placement {
  readonly pivots: Readonly<Record<string, number>>;
}

export interface Placed {
  readonly picture: Picture;
  readonly width: number;
  readonly height: number;
  readonly nodes: readonly PlacedNode[];
  readonly lines: readonly PlacedLine[];
  readonly placement: Placement;
}

export type PlaceResult =
  | { readonly kind: 'placed'; readonly placed: Placed }
  | { readonly kind: 'superseded' }
  | { readonly kind: 'refused'; readonly reason: string };
