/** The way of each line on the paper: the engine's pieces joined up and led on to the symbol inside each box. */
import type { PlacedLine, PlacedNode } from '../placed.ts';
import { textBlock } from '../symbols/box.ts';
import type { Point } from '../symbols/drawing.ts';
import { loopReach, loopTextGap } from './boxes.ts';
import type { Flow } from './structure.ts';

export type Route = readonly Point[];

interface Ends {
  readonly up: PlacedNode;
  readonly down: PlacedNode;
}

/** The pieces in the order of flow, from symbol to symbol, without repeated or needless points. */
export function joinLine(pieces: readonly Route[], flow: Flow, { up, down }: Ends): Route {
  const middle = pieces.flat();
  const start = reachOf(up, flow.up.port);
  const end = reachOf(down, flow.down.port);
  if (middle.length === 0) return start === undefined || end === undefined ? [] : straightened([start, end]);
  return straightened([...(start === undefined ? [] : [start]), ...middle, ...(end === undefined ? [] : [end])]);
}

function reachOf({ box, at }: PlacedNode, port: string): Point | undefined {
  const anchor = box.anchors.find((one) => one.port === port);
  return anchor === undefined ? undefined : { x: at.x + anchor.reach.x, y: at.y + anchor.reach.y };
}

/** A push rod runs level from one symbol to the next. */
export function rodPoints(flow: Flow, { up, down }: Ends): Route {
  const from = reachOf(up, flow.up.port);
  const to = reachOf(down, flow.down.port);
  return from === undefined || to === undefined ? [] : straightened([from, { x: to.x, y: from.y }]);
}

/** A line from a part to itself, such as the bridge between two cylinders, goes round outside the symbol. */
export function loopLine({ line, up, down }: Flow, owner: PlacedNode): PlacedLine {
  const a = reachOf(owner, up.port);
  const b = reachOf(owner, down.port);
  if (a === undefined || b === undefined) return { line, points: [] };
  const left = owner.at.x + owner.box.origin.x;
  const way = Math.max(a.x, b.x) > left + owner.box.core.width / 2 ? 1 : -1;
  const x = way > 0 ? left + owner.box.core.width + loopReach : left - loopReach;
  const { title, notes, height } = textBlock(line);
  return {
    line,
    points: straightened([a, { x, y: a.y }, { x, y: b.y }, b]),
    text: {
      at: { x: x + way * loopTextGap, y: (a.y + b.y - height) / 2 },
      anchor: way > 0 ? 'start' : 'end',
      title,
      notes,
    },
  };
}

/** Points without repeats and without those in the middle of a straight piece, rounded to a hundredth. */
function straightened(points: Route): Route {
  const result: Point[] = [];
  for (const raw of points) {
    const point = { x: Math.round(raw.x * 100) / 100, y: Math.round(raw.y * 100) / 100 };
    const last = result.at(-1);
    const before = result.at(-2);
    if (last !== undefined && last.x === point.x && last.y === point.y) continue;
    const levelX = last !== undefined && before?.x === last.x && last.x === point.x;
    const levelY = last !== undefined && before?.y === last.y && last.y === point.y;
    if (levelX || levelY) result.pop();
    result.push(point);
  }
  return result;
}
