/** What a symbol is made of: shapes with a look, anchors for its ports, and the box that the layout keeps free. */
import type { PictureDetail, PictureNode } from '../picture.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export type Edge = 'top' | 'bottom' | 'left' | 'right';

/**
 * How a shape is painted: `body` is an outlined part on the paper, `line` an outline, `thin` a detail, `solid` is filled,
 * `piston` a filled moving part, `fluid` filled with the tone of fluid, `word` is lettering inside a symbol.
 */
export type Look = 'body' | 'line' | 'thin' | 'dashed' | 'solid' | 'piston' | 'fluid' | 'word';

export type Shape =
  | { readonly kind: 'path'; readonly d: string; readonly look: Look; readonly part?: string }
  | { readonly kind: 'circle'; readonly at: Point; readonly r: number; readonly look: Look; readonly part?: string }
  | {
      readonly kind: 'rect';
      readonly at: Point;
      readonly width: number;
      readonly height: number;
      readonly r?: number;
      readonly look: Look;
      readonly part?: string;
    }
  | { readonly kind: 'text'; readonly at: Point; readonly text: string; readonly look: 'word'; readonly part?: string };

/** Where a line meets the symbol: `at` on the edge of the box, drawn on to `reach` inside it. */
export interface Anchor {
  readonly port: string;
  readonly edge: Edge;
  readonly at: Point;
  readonly reach: Point;
}

/** How a port is used: fluid comes `in` from the actuation, goes `out` to the wheels, `loop`s to the same part, or rests. */
export interface PortUse {
  readonly id: string;
  readonly flow: 'in' | 'out' | 'loop' | 'idle';
  /** Where the line leads, across the vehicle: below 0 to the left, above 0 to the right. */
  readonly toward: number;
  /** Which of several ways through the part, from the left. */
  readonly channel?: number;
}

/** The symbol proper, with its own small coordinates; the box around it and its label are added by `boxed`. */
export interface Core {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly anchors: readonly Omit<Anchor, 'at'>[];
  readonly label: 'right' | 'below' | 'corner' | 'above';
  /** Height of the push rod, for parts that stand in a row on one rod. */
  readonly axis?: number;
}

export interface SymbolSubject {
  readonly node: PictureNode;
  readonly ports: readonly PortUse[];
}

/** One row of the symbol table. */
export interface PartSymbol {
  /** What the symbol stands for, in words of the trade. */
  readonly words: string;
  readonly draw: (subject: SymbolSubject) => Core;
}

export const path = (d: string, look: Look = 'line', part?: string): Shape => ({
  kind: 'path',
  d,
  look,
  ...(part === undefined ? {} : { part }),
});

export const circle = (x: number, y: number, r: number, look: Look = 'line', part?: string): Shape => ({
  kind: 'circle',
  at: { x, y },
  r,
  look,
  ...(part === undefined ? {} : { part }),
});

export const rect = (
  [x, y, width, height, r = 0]: readonly [number, number, number, number, number?],
  look: Look = 'body',
  part?: string,
): Shape => ({ kind: 'rect', at: { x, y }, width, height, r, look, ...(part === undefined ? {} : { part }) });

export const word = (x: number, y: number, text: string): Shape => ({ kind: 'text', at: { x, y }, text, look: 'word' });

/** A compression spring lying along x from `x` to `end`, `turns` teeth high `h` about `y`. */
export function spring(x: number, end: number, y: number, h: number, turns: number): Shape {
  const step = (end - x) / (turns * 2);
  const teeth = Array.from({ length: turns * 2 - 1 }, (_, i) => `L${x + step * (i + 1)} ${y + (i % 2 === 0 ? -h : h)}`);
  return path(`M${x} ${y}${teeth.join('')}L${end} ${y}`, 'thin');
}

/** `count` places spread evenly about `centre`, `gap` apart, squeezed to stay inside `room`. */
export function spread(count: number, centre: number, gap: number, room: number): readonly number[] {
  const pitch = count > 1 ? Math.min(gap, room / (count - 1)) : 0;
  return Array.from({ length: count }, (_, i) => centre + (i - (count - 1) / 2) * pitch);
}

/** The ports in the order of where they lead, left first; equals keep the order of the text. */
export function leftToRight(ports: readonly PortUse[]): readonly PortUse[] {
  return ports
    .map((port, index) => ({ port, index }))
    .sort(byToward)
    .map((entry) => entry.port);
}

function byToward(a: { port: PortUse; index: number }, b: { port: PortUse; index: number }): number {
  return a.port.toward - b.port.toward || a.index - b.index;
}

export const detailsOf = (node: PictureNode, kind: PictureDetail['kind']): readonly PictureDetail[] =>
  node.details.filter((detail) => detail.kind === kind);

/** Whether the port belongs to the sub-part: `cylinder.feed` to `rear-left.cylinder`. */
export function belongsTo(port: PortUse, detail: PictureDetail, node: PictureNode): boolean {
  const inside = detail.id.startsWith(`${node.id}.`) ? detail.id.slice(node.id.length + 1) : detail.id;
  return port.id === inside || port.id.startsWith(`${inside}.`);
}
