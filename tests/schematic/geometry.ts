/** Rectangles and straight pieces of a placed picture, to ask what lies on what. */

import type { Placed, PlacedLine, PlacedNode } from '../../language/schematic/placed.ts';
import { noteFont, noteHeight, titleFont, titleHeight } from '../../language/schematic/symbols/box.ts';
import type { Point } from '../../language/schematic/symbols/drawing.ts';
import { textWidth } from '../../language/schematic/text-width.ts';

export interface Area {
  readonly name: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Piece {
  readonly line: string;
  readonly a: Point;
  readonly b: Point;
}

interface Words {
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly title: string;
  readonly notes: readonly string[];
}

export const symbolArea = ({ node, box, at }: PlacedNode): Area => ({
  name: node.id,
  left: at.x + box.origin.x,
  top: at.y + box.origin.y,
  right: at.x + box.origin.x + box.core.width,
  bottom: at.y + box.origin.y + box.core.height,
});

function wordsArea(name: string, { at, anchor, title, notes }: Words): Area {
  const width = Math.max(textWidth(title, titleFont), ...notes.map((note) => textWidth(note, noteFont)));
  const left = at.x - width * { start: 0, middle: 0.5, end: 1 }[anchor];
  const height = (title === '' ? 0 : titleHeight) + notes.length * noteHeight;
  return { name, left, right: left + width, top: at.y, bottom: at.y + height };
}

export function labelAreas({ nodes, lines }: Placed): readonly Area[] {
  return [
    ...nodes
      .filter(({ node }) => node.label !== '')
      .map(({ node, box, at }) =>
        wordsArea(node.id, { ...box.text, at: { x: at.x + box.text.at.x, y: at.y + box.text.at.y } }),
      ),
    ...lines.flatMap(({ line, text }) => (text === undefined || text.title === '' ? [] : [wordsArea(line.id, text)])),
  ];
}

export function piecesOf({ line, points }: PlacedLine): readonly Piece[] {
  return points.slice(1).map((b, i) => ({ line: line.id, a: points[i] ?? b, b }));
}

export const overlap = (p: Area, q: Area): boolean =>
  p.left < q.right - 0.5 && q.left < p.right - 0.5 && p.top < q.bottom - 0.5 && q.top < p.bottom - 0.5;

/** Whether an upright or level piece runs through the inside of the area. */
export function runsThrough({ a, b }: Piece, area: Area): boolean {
  return overlap(
    {
      name: '',
      left: Math.min(a.x, b.x) - 1,
      right: Math.max(a.x, b.x) + 1,
      top: Math.min(a.y, b.y) - 1,
      bottom: Math.max(a.y, b.y) + 1,
    },
    area,
  );
}
