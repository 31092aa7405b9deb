/** The box of a symbol: its drawing with label and port stubs, and nothing else inside, so that lines keep clear of words. */
import type { PictureNode } from '../picture.ts';
import { fitText, textWidth } from '../text-width.ts';
import type { Anchor, Core, PartSymbol, Point, PortUse, Shape } from './drawing.ts';

interface BoxText {
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly title: string;
  readonly notes: readonly string[];
}

export interface Box {
  readonly width: number;
  readonly height: number;
  /** Corner of the symbol proper inside the box. */
  readonly origin: Point;
  readonly core: { readonly width: number; readonly height: number };
  readonly shapes: readonly Shape[];
  readonly anchors: readonly Anchor[];
  readonly text: BoxText;
  /** Where the marks for findings and work go. */
  readonly badges: Point;
  /** Height of the push rod in the box. */
  readonly axis?: number;
}

export const titleFont = { size: 12, weight: 'bold' } as const;
export const noteFont = { size: 11, weight: 'regular' } as const;
export const titleHeight = 15;
export const noteHeight = 13.5;
const longestText = 190;
const longestNote = 420;
const gap = 8;
const badgeRoom = 9;
const beneath = 6;
const smallSymbol = 30;

/** A figure is never cut off: what is too long for one line goes on two. */
const wrapped = (note: string): readonly string[] =>
  textWidth(note, noteFont) <= longestText
    ? [note]
    : note.split(' · ').map((part) => fitText(part, noteFont, longestNote));

export function textBlock(node: Pick<PictureNode, 'label' | 'notes'>) {
  const title = fitText(node.label, titleFont, longestText);
  const notes = node.notes.flatMap(wrapped);
  const width = Math.ceil(Math.max(textWidth(title, titleFont), ...notes.map((note) => textWidth(note, noteFont)), 0));
  const height = (title === '' ? 0 : titleHeight) + notes.length * noteHeight;
  return { title, notes, width, height };
}

/** At the upper right corner; beside a small symbol, which they would hide. */
function badgesBeside(origin: Point, { width }: Core): Point {
  const clear = width < smallSymbol ? 5 : 0;
  return { x: origin.x + width + clear, y: origin.y - clear };
}

export interface BoxSubject {
  readonly node: PictureNode;
  readonly ports: readonly PortUse[];
  /** On which side of an upright line its words stand. */
  readonly words: 'left' | 'right';
  /** Room beside the symbol for a line that leads from the part to itself, and its words. */
  readonly loopRoom: number;
}

/** Draws the symbol and reserves the room for its label, its stubs and its marks. */
export function boxed(symbol: PartSymbol, { node, ports, words, loopRoom }: BoxSubject): Box {
  const core = symbol.draw({ node, ports });
  const block = textBlock(node);
  const marked = node.findings.length > 0 || node.mark !== 'kept';
  const side = core.label === 'right' && words === 'left' ? 'left' : core.label;
  const extra = marked ? badgeRoom : 0;
  const placed = whole(beside(placements[side](core, block, extra), core, { room: loopRoom, side: node.side }));
  const { origin } = placed;
  const anchors = core.anchors.map((anchor): Anchor => {
    const reach = { x: Math.round(origin.x + anchor.reach.x), y: Math.round(origin.y + anchor.reach.y) };
    const at = {
      left: { x: 0, y: reach.y },
      right: { x: placed.width, y: reach.y },
      top: { x: reach.x, y: 0 },
      bottom: { x: reach.x, y: placed.height },
    }[anchor.edge];
    return { port: anchor.port, edge: anchor.edge, at, reach };
  });
  return {
    width: placed.width,
    height: placed.height,
    origin,
    core: { width: core.width, height: core.height },
    shapes: core.shapes,
    anchors,
    text: { at: placed.text, anchor: placed.align, title: block.title, notes: block.notes },
    badges: badgesBeside(origin, core),
    ...(core.axis === undefined ? {} : { axis: origin.y + core.axis }),
  };
}

/** The placement with room for a loop on the outer side. */
function beside(
  placement: Placement,
  core: Core,
  { room, side }: { readonly room: number; readonly side: PictureNode['side'] },
): Placement {
  const { width, origin, text } = placement;
  if (side === 'right') return { ...placement, width: Math.max(width, origin.x + core.width + room) };
  const more = Math.max(0, room - origin.x);
  return {
    ...placement,
    width: width + more,
    origin: { x: origin.x + more, y: origin.y },
    text: { x: text.x + more, y: text.y },
  };
}

/** Whole pixels, or the engine takes a line that is out by half a pixel for straight. */
function whole({ width, height, origin, text, align }: Placement): Placement {
  return {
    width: Math.ceil(width),
    height: Math.ceil(height),
    origin: { x: Math.round(origin.x), y: Math.round(origin.y) },
    text,
    align,
  };
}

interface Block {
  readonly width: number;
  readonly height: number;
}

interface Placement {
  readonly width: number;
  readonly height: number;
  readonly origin: Point;
  /** Top of the first line of text. */
  readonly text: Point;
  readonly align: BoxText['anchor'];
}

const placements: Readonly<Record<Core['label'] | 'left', (core: Core, block: Block, extra: number) => Placement>> = {
  right: (core, block, extra) => {
    const height = Math.max(core.height + extra, block.height);
    const origin = { x: 0, y: Math.round((height - core.height + extra) / 2) };
    const middle = origin.y + core.height / 2;
    return {
      width: core.width + (block.width === 0 ? extra : gap + extra + block.width),
      height,
      origin,
      text: { x: core.width + gap + extra, y: Math.max(0, middle - block.height / 2) },
      align: 'start',
    };
  },
  left: (core, block, extra) => {
    const height = Math.max(core.height + extra, block.height);
    const y = Math.round((height - core.height + extra) / 2);
    const x = block.width === 0 ? 0 : gap + block.width;
    return {
      width: x + core.width + extra,
      height,
      origin: { x, y },
      text: { x: block.width, y: Math.max(0, y + core.height / 2 - block.height / 2) },
      align: 'end',
    };
  },
  // Room for marks whether there are any or not, so that the wheels of an axle stay level.
  below: (core, block) => {
    const extra = badgeRoom;
    const width = Math.max(core.width + extra * 2, block.width);
    return {
      width,
      height: core.height + extra + (block.height === 0 ? 0 : beneath + block.height),
      origin: { x: (width - core.width) / 2, y: extra },
      text: { x: width / 2, y: extra + core.height + beneath },
      align: 'middle',
    };
  },
  above: (core, block, extra) => {
    const width = Math.max(core.width + extra * 2, block.width);
    return {
      width,
      height: core.height + extra + block.height,
      origin: { x: (width - core.width) / 2, y: block.height + extra },
      text: { x: width / 2, y: 0 },
      align: 'middle',
    };
  },
  corner: (core, block, extra) => {
    const start = gap + extra;
    const half = Math.max(core.width / 2 + extra, block.width + start);
    return {
      width: half * 2,
      height: extra + Math.max(core.height, core.height / 2 + 3 + block.height),
      origin: { x: half - core.width / 2, y: extra },
      text: { x: half + start, y: extra + core.height / 2 + 3 },
      align: 'start',
    };
  },
};
