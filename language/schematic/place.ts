/** Picture to places: the graph is made, the engine lays it out, and its answer is applied to symbols and lines. */
import { acrossOf } from './layout/across.ts';
import { boxesOf, lineIn, lineOut, lineText, portName, type VertexBox } from './layout/boxes.ts';
import type { Laid, LayoutEdge, LayoutEngine, LayoutGraph } from './layout/engine.ts';
import { ranksOf } from './layout/rank.ts';
import { joinLine, loopPoints, type Route, rodPoints } from './layout/routes.ts';
import { type Flow, type Structure, structureOf } from './layout/structure.ts';
import type { Picture } from './picture.ts';
import type { PlacedLine, PlacedNode, PlaceResult, Placement } from './placed.ts';
import type { Point } from './symbols/drawing.ts';

export interface PlaceOptions {
  /** Where things lay before; with it a small edit moves little. */
  readonly previous?: Placement;
  /** Pictures in one lane replace each other while they wait for the engine. */
  readonly lane?: string;
}

/** Same picture, same previous placement: same result. Never rejects. */
export async function place(picture: Picture, engine: LayoutEngine, options: PlaceOptions = {}): Promise<PlaceResult> {
  const plan = planOf(picture, options.previous);
  const answer = await engine.layout(plan.graph, { lane: options.lane ?? 'picture' });
  return answer.kind === 'laid' ? { kind: 'placed', placed: apply(picture, plan, answer) } : answer;
}

interface Plan {
  readonly structure: Structure;
  readonly boxes: readonly VertexBox[];
  readonly graph: LayoutGraph;
}

/** Far enough apart that no two layers overlap, whatever stands in them. */
const layerPitch = 4000;
const freshPitch = 1000;

function planOf(picture: Picture, previous: Placement | undefined): Plan {
  const structure = structureOf(picture);
  const known = new Map(Object.entries(previous?.pivots ?? {}));
  const kept = new Map(structure.vertices.flatMap(({ id }): [string, number][] => {
    const x = known.get(id);
    return x === undefined ? [] : [[id, x]];
  }));
  const settled = kept.size * 2 > structure.vertices.length;
  const across = acrossOf(structure, settled ? kept : new Map());
  const ranks = ranksOf(structure);
  const boxes = boxesOf(structure, across);
  const scale = settled ? 1 : freshPitch;
  const nodes = structure.vertices.map(({ id }, i) => {
    const box = boxes[i];
    return {
      id: vertexKey(id, i),
      width: box?.width ?? 0,
      height: box?.height ?? 0,
      x: round((across[i] ?? 0) * scale + (settled ? 0 : i * 0.01) - (settled ? (box?.pivot ?? 0) : 0)),
      y: (ranks[i] ?? 0) * layerPitch,
      ports: (box?.seats ?? []).map((seat) => ({ id: seat.id, x: seat.at.x, y: seat.at.y, edge: seat.edge })),
    };
  });
  const edges = structure.flows.flatMap((flow) => edgesOf(flow, structure));
  return { structure, boxes, graph: { mode: settled ? 'settled' : 'fresh', nodes, edges } };
}

const vertexKey = (id: string, index: number) => `${index}\u0001${id}`;
const round = (value: number) => Math.round(value * 100) / 100;

function edgesOf(flow: Flow, { vertices, vertexOfNode, vertexOfLine }: Structure): readonly LayoutEdge[] {
  if (flow.kind !== 'through') return [];
  const key = (index: number) => vertexKey(vertices[index]?.id ?? '', index);
  const from = { node: key(vertexOfNode.get(flow.up.node) ?? 0), port: portName(flow.up.node, flow.up.port) };
  const to = { node: key(vertexOfNode.get(flow.down.node) ?? 0), port: portName(flow.down.node, flow.down.port) };
  const middle = vertexOfLine.get(flow.line.id);
  const { id } = flow.line;
  if (middle === undefined) return [{ id, from, to, straightness: 4 }];
  const enter = { node: key(middle), port: portName(id, lineIn) };
  const leave = { node: key(middle), port: portName(id, lineOut) };
  return [
    { id: `${id}\u0001${lineIn}`, from, to: enter, straightness: 2 },
    { id: `${id}\u0001${lineOut}`, from: leave, to, straightness: 2 },
  ];
}

function apply(picture: Picture, { structure, boxes }: Plan, laid: Laid) {
  const routes = new Map(laid.edges.map((edge): [string, Route] => [edge.id, edge.points]));
  const corners = laid.nodes;
  const nodes: PlacedNode[] = [];
  const pivots: Record<string, number> = {};
  structure.vertices.forEach((vertex, i) => {
    const corner = corners[i] ?? { x: 0, y: 0 };
    const box = boxes[i];
    if (box === undefined) return;
    pivots[vertex.id] = round(corner.x + box.pivot);
    for (const member of box.members) {
      const at = { x: round(corner.x + member.offset.x), y: round(corner.y + member.offset.y) };
      nodes.push({ node: member.node, box: member.box, at, open: openPorts(member.node.id, member.box, at, structure) });
    }
  });
  const byId = new Map(nodes.map((placed) => [placed.node.id, placed]));
  const lines = structure.flows.flatMap((flow): readonly PlacedLine[] => {
    const middle = structure.vertexOfLine.get(flow.line.id);
    const up = byId.get(flow.up.node);
    const down = byId.get(flow.down.node);
    if (up === undefined || down === undefined) return [];
    if (flow.kind === 'rod') return [{ line: flow.line, points: rodPoints(up, down) }];
    if (flow.kind === 'loop') return [loopPoints(flow, up)];
    const ends = { up, down };
    if (middle === undefined) return [{ line: flow.line, points: joinLine([routes.get(flow.line.id) ?? []], flow, ends) }];
    const corner = corners[middle] ?? { x: 0, y: 0 };
    const box = boxes[middle];
    const height = box?.height ?? 0;
    const halves = [lineIn, lineOut].map((half) => routes.get(`${flow.line.id}\u0001${half}`) ?? []);
    return [
      {
        line: flow.line,
        points: joinLine(halves, flow, ends),
        text: lineText(flow.line, corner, height),
        carrier: { x: round(corner.x + (box?.pivot ?? 0)), top: round(corner.y), bottom: round(corner.y + height) },
      },
    ];
  });
  const right = Math.max(0, ...nodes.map(({ at, box }) => at.x + box.width), ...laid.nodes.map((n, i) => n.x + (boxes[i]?.width ?? 0)), ...xs(lines));
  const bottom = Math.max(0, ...laid.nodes.map((n, i) => n.y + (boxes[i]?.height ?? 0)), ...lines.flatMap((l) => l.points.map((p) => p.y)));
  return { picture, width: Math.ceil(right), height: Math.ceil(bottom), nodes, lines, placement: { pivots } };
}

const xs = (lines: readonly PlacedLine[]) => lines.flatMap((line) => line.points.map((point) => point.x));

const stub = 9;

function openPorts(node: string, box: PlacedNode['box'], at: Point, { flows }: Structure): PlacedNode['open'] {
  const used = new Set(flows.flatMap(({ up, down }) => [up, down].filter((end) => end.node === node).map((end) => end.port)));
  return box.anchors
    .filter((anchor) => !used.has(anchor.port))
    .map((anchor) => {
      const place = { x: at.x + anchor.reach.x, y: at.y + anchor.reach.y };
      const dx = anchor.edge === 'left' ? -stub : anchor.edge === 'right' ? stub : 0;
      const dy = anchor.edge === 'top' ? -stub : anchor.edge === 'bottom' ? stub : 0;
      return { port: anchor.port, at: place, away: { x: place.x + dx, y: place.y + dy } };
    });
}
