/** The engine's answer brought back to the picture: places of parts, ways of lines, and the same coordinates as before. */
import type { Picture } from '../picture.ts';
import type { Placed, PlacedLine, PlacedNode } from '../placed.ts';
import type { Point } from '../symbols/drawing.ts';
import { lineIn, lineOut, type Member, type VertexBox } from './boxes.ts';
import type { Laid } from './engine.ts';
import { edgeId, type Plan, toHundredth } from './plan.ts';
import { joinLine, loopLine, type Route, rodPoints } from './routes.ts';
import type { Flow } from './structure.ts';

export function applied(picture: Picture, plan: Plan, laid: Laid): Placed {
  const shift = shiftToBefore(plan, laid);
  const moved = (point: Point): Point => ({ x: toHundredth(point.x + shift.x), y: toHundredth(point.y + shift.y) });
  const corners = laid.nodes.map(moved);
  const routes = new Map(laid.edges.map(({ id, points }): [string, Route] => [id, points.map(moved)]));
  const nodes = placedNodes(plan, corners);
  const byId = new Map(nodes.map((placed) => [placed.node.id, placed]));
  const lines = plan.structure.flows.flatMap((flow) => placedLine(flow, { plan, corners, routes, byId }));
  const pivots = Object.fromEntries(
    plan.structure.vertices.map(({ id }, i) => [id, pivotOf(plan.boxes[i], corners[i] ?? origin)]),
  );
  return { picture, ...extent(plan.boxes, corners, lines), nodes, lines, placement: { pivots } };
}

const origin: Point = { x: 0, y: 0 };

/** The point that a box keeps when its words change: the middle of the symbol, at the top. */
const pivotOf = (box: VertexBox | undefined, corner: Point): Point => ({
  x: toHundredth(corner.x + (box?.pivot ?? 0)),
  y: corner.y,
});

/** The engine begins at 0; most of what was there before shall stay where it was on the paper. */
function shiftToBefore({ structure, boxes, kept }: Plan, laid: Laid): Point {
  const differences = structure.vertices.flatMap(({ id }, i): readonly Point[] => {
    const before = kept.get(id);
    if (before === undefined) return [];
    const now = pivotOf(boxes[i], laid.nodes[i] ?? origin);
    return [{ x: before.x - now.x, y: before.y - now.y }];
  });
  return { x: median(differences.map(({ x }) => x)), y: median(differences.map(({ y }) => y)) };
}

/** The lower of the two middle values, so that the result is one of the values. */
function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
}

function placedNodes({ structure, boxes }: Plan, corners: readonly Point[]): readonly PlacedNode[] {
  const used = new Set(
    structure.flows.flatMap(({ up, down }) => [up, down].map(({ node, port }) => portKey(node, port))),
  );
  return boxes.flatMap((box, i) => {
    const corner = corners[i] ?? origin;
    return box.members.map((member): PlacedNode => {
      const at = { x: toHundredth(corner.x + member.offset.x), y: toHundredth(corner.y + member.offset.y) };
      return {
        node: member.node,
        box: member.box,
        at,
        open: openPorts(member, at, (port) => used.has(portKey(member.node.id, port))),
      };
    });
  });
}

const portKey = (node: string, port: string) => `${node}\u0001${port}`;
const stub = 9;
const stubWays = {
  left: { x: -stub, y: 0 },
  right: { x: stub, y: 0 },
  top: { x: 0, y: -stub },
  bottom: { x: 0, y: stub },
} as const;

function openPorts({ box, node }: Member, at: Point, isUsed: (port: string) => boolean): PlacedNode['open'] {
  const plugged = new Set(node.ports.flatMap((port) => (port.plugged ? [port.id] : [])));
  return box.anchors
    .filter((anchor) => !isUsed(anchor.port))
    .map(({ port, edge, reach }) => {
      const place = { x: at.x + reach.x, y: at.y + reach.y };
      const away = { x: place.x + stubWays[edge].x, y: place.y + stubWays[edge].y };
      return { port, at: place, away, end: plugged.has(port) ? 'plugged' : 'open' };
    });
}

interface Ground {
  readonly plan: Plan;
  readonly corners: readonly Point[];
  readonly routes: ReadonlyMap<string, Route>;
  readonly byId: ReadonlyMap<string, PlacedNode>;
}

function placedLine(flow: Flow, { plan, corners, routes, byId }: Ground): readonly PlacedLine[] {
  const up = byId.get(flow.up.node);
  const down = byId.get(flow.down.node);
  if (up === undefined || down === undefined) return [];
  const { line } = flow;
  const ends = { up, down };
  if (flow.kind === 'rod') return [{ line, points: rodPoints(flow, ends) }];
  if (flow.kind === 'loop') return [loopLine(flow, up)];
  const middle = plan.structure.vertexOfLine.get(line.id);
  const box = middle === undefined ? undefined : plan.boxes[middle];
  if (middle === undefined || box?.text === undefined) {
    return [{ line, points: joinLine([routes.get(edgeId(line.id)) ?? []], flow, ends) }];
  }
  const corner = corners[middle] ?? origin;
  const halves = ([lineIn, lineOut] as const).map((half) => routes.get(edgeId(line.id, half)) ?? []);
  return [
    {
      line,
      points: joinLine(halves, flow, ends),
      text: { ...box.text, at: { x: toHundredth(corner.x + box.text.at.x), y: toHundredth(corner.y + box.text.at.y) } },
      carrier: {
        x: toHundredth(corner.x + box.pivot),
        top: corner.y,
        bottom: toHundredth(corner.y + box.height),
        words: box.text.anchor === 'end' ? 'left' : 'right',
      },
    },
  ];
}

function extent(boxes: readonly VertexBox[], corners: readonly Point[], lines: readonly PlacedLine[]) {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = (x: number, y: number) => {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  };
  boxes.forEach((box, i) => {
    const corner = corners[i] ?? origin;
    take(corner.x, corner.y);
    take(corner.x + box.width, corner.y + box.height);
  });
  for (const { points } of lines) for (const { x, y } of points) take(x, y);
  if (left > right) return { left: 0, top: 0, width: 0, height: 0 };
  const [x, y] = [Math.floor(left), Math.floor(top)];
  return { left: x, top: y, width: Math.ceil(right) - x, height: Math.ceil(bottom) - y };
}
