/** A picture with every place known: what the SVG is written from, and what the next placement starts from. */
import type { Picture, PictureLine, PictureNode } from './picture.ts';
import type { Box } from './symbols/box.ts';
import type { Point } from './symbols/drawing.ts';

export interface PlacedNode {
  readonly node: PictureNode;
  readonly box: Box;
  readonly at: Point;
  /** Ports that no line meets, as places on the symbol. */
  readonly open: readonly {
    readonly port: string;
    readonly at: Point;
    readonly away: Point;
    readonly end: 'open' | 'plugged';
  }[];
}

export interface LineText {
  readonly at: Point;
  readonly anchor: 'start' | 'end';
  readonly title: string;
  readonly notes: readonly string[];
}

export interface PlacedLine {
  readonly line: PictureLine;
  readonly points: readonly Point[];
  readonly text?: LineText;
  /** Middle of the straight piece kept free beside the label, where the line carries its symbol and marks. */
  readonly carrier?: {
    readonly x: number;
    readonly top: number;
    readonly bottom: number;
    readonly words: 'left' | 'right';
  };
}

/** Where things lay by id, to be handed to the next placement; plain JSON. */
export interface Placement {
  readonly pivots: Readonly<Record<string, Point>>;
}

/** Coordinates stay what they were from one placement to the next, so the picture may begin left of 0 or above it. */
export interface Placed {
  readonly picture: Picture;
  readonly left: number;
  readonly top: number;
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
