/** The boxes that the layout moves about: one for a part, one for a row of parts, one for the labelled piece of a line. */
import type { PictureLine, PictureNode } from '../picture.ts';
import type { LineText } from '../placed.ts';
import { type Box, boxed, textBlock } from '../symbols/box.ts';
import type { Edge, Point, PortUse } from '../symbols/drawing.ts';
import { symbols } from '../symbols/table.ts';
import type { Structure, Vertex } from './structure.ts';

interface Seat {
  readonly id: string;
  readonly edge: Edge;
  readonly at: Point;
}

export interface Member {
  readonly node: PictureNode;
  readonly box: Box;
  readonly offset: Point;
}

export interface VertexBox {
  readonly width: number;
  readonly height: number;
  /** The point that stays where it is when the label grows. */
  readonly pivot: number;
  readonly members: readonly Member[];
  readonly seats: readonly Seat[];
  /** Label of a line. */
  readonly text?: LineText;
}

/** How far a loop goes out from the symbol, and from there to its words. */
export const loopReach = 10;
export const loopTextGap = 8;

export const portName = (node: string, port: string) => `${node}\u0001${port}`;
export const lineIn = 'in' as const;
export const lineOut = 'out' as const;

/** Where the line stands in its own box. */
const linePivot = 10;
const lineTextAt = 20;
const markedTextAt = 25;
const textStart = (line: PictureLine) => (line.findings.length > 0 || line.mark !== 'kept' ? markedTextAt : lineTextAt);
const shortestRun = 30;
const shortestHose = 46;

/** `across` orders the ports; `sides` says on which side of the line the words stand. */
export function boxesOf(
  structure: Structure,
  across: readonly number[],
  sides: readonly WordSide[],
): readonly VertexBox[] {
  const uses = portUses(structure, across);
  const loops = loopRooms(structure);
  return structure.vertices.map((vertex, i) => boxOf(vertex, { uses, loops }, sides[i] ?? 'right'));
}

export type WordSide = 'left' | 'right';

interface Demands {
  readonly uses: ReadonlyMap<string, readonly PortUse[]>;
  readonly loops: ReadonlyMap<string, number>;
}

function boxOf(vertex: Vertex, { uses, loops }: Demands, words: WordSide): VertexBox {
  if (vertex.kind === 'line') return lineBox(vertex.line, words);
  const side = vertex.kind === 'row' ? 'right' : words;
  return rowBox(
    vertex.nodes.map((node) => {
      const subject = { node, ports: uses.get(node.id) ?? [], words: side, loopRoom: loops.get(node.id) ?? 0 };
      return { node, box: boxed(symbols[node.symbol], subject) };
    }),
  );
}

/** What the bridge of a brake and its words take, by part. */
function loopRooms({ flows }: Structure): ReadonlyMap<string, number> {
  const rooms = new Map<string, number>();
  for (const { kind, line, up } of flows) {
    if (kind !== 'loop') continue;
    rooms.set(up.node, Math.max(rooms.get(up.node) ?? 0, loopReach + loopTextGap + textBlock(line).width));
  }
  return rooms;
}

/** The straight piece of a line with its label beside it. */
function lineBox(line: PictureLine, words: WordSide): VertexBox {
  const text = textBlock(line);
  const height = Math.ceil(Math.max(text.height + 6, line.kind === 'run' ? shortestRun : shortestHose));
  const room = text.width === 0 ? linePivot : textStart(line) - linePivot + text.width;
  const pivot = words === 'left' ? room : linePivot;
  return {
    width: linePivot + room,
    height,
    pivot,
    members: [],
    seats: [
      { id: portName(line.id, lineIn), edge: 'top', at: { x: pivot, y: 0 } },
      { id: portName(line.id, lineOut), edge: 'bottom', at: { x: pivot, y: height } },
    ],
    text: {
      at: {
        x: words === 'left' ? text.width : textStart(line),
        y: (height - text.height) / 2,
      },
      anchor: words === 'left' ? 'end' : 'start',
      title: text.title,
      notes: text.notes,
    },
  };
}

/** Parts side by side with their push rods level. */
function rowBox(boxes: readonly { readonly node: PictureNode; readonly box: Box }[]): VertexBox {
  const axis = Math.max(...boxes.map(({ box }) => box.axis ?? box.height / 2));
  const members: Member[] = [];
  let x = 0;
  let height = 0;
  for (const [i, { node, box }] of boxes.entries()) {
    const y = boxes.length === 1 ? 0 : axis - (box.axis ?? box.height / 2);
    if (i > 0) x += 12;
    members.push({ node, box, offset: { x, y } });
    x += box.width;
    height = Math.max(height, y + box.height);
  }
  const last = members.at(-1);
  const lastBox = last?.box;
  return {
    width: x,
    height,
    pivot: (last?.offset.x ?? 0) + (lastBox === undefined ? 0 : lastBox.origin.x + lastBox.core.width / 2),
    members,
    seats: members.flatMap(({ node, box, offset }) =>
      box.anchors.map((anchor) => ({
        id: portName(node.id, anchor.port),
        edge: anchor.edge,
        at: onEdge(anchor.edge, { x: offset.x + anchor.at.x, y: offset.y + anchor.at.y }, { width: x, height }),
      })),
    ),
  };
}

/** In a row the box is larger than the part, and the engine wants its ports on the edge. */
function onEdge(edge: Edge, at: Point, { width, height }: { readonly width: number; readonly height: number }): Point {
  if (edge === 'top') return { x: at.x, y: 0 };
  if (edge === 'bottom') return { x: at.x, y: height };
  return { x: edge === 'left' ? 0 : width, y: at.y };
}

/** How each port is used and where its line leads. */
function portUses(structure: Structure, across: readonly number[]): ReadonlyMap<string, readonly PortUse[]> {
  const { nodes, flows, vertexOfLine, vertexOfNode } = structure;
  const found = new Map<string, PortUse>();
  const used = new Map<string, string[]>();
  for (const flow of flows) {
    for (const end of [flow.up, flow.down]) used.set(end.node, [...(used.get(end.node) ?? []), end.port]);
    const middle = vertexOfLine.get(flow.line.id);
    const position = (node: string) => across[middle ?? vertexOfNode.get(node) ?? 0] ?? 0;
    const upKey = portName(flow.up.node, flow.up.port);
    const downKey = portName(flow.down.node, flow.down.port);
    if (flow.kind !== 'through') {
      const kind = flow.kind === 'loop' ? 'loop' : undefined;
      put(found, upKey, { id: flow.up.port, flow: kind ?? 'out', toward: 0 });
      put(found, downKey, { id: flow.down.port, flow: kind ?? 'in', toward: 0 });
      continue;
    }
    put(found, upKey, { id: flow.up.port, flow: 'out', toward: position(flow.down.node) });
    put(found, downKey, { id: flow.down.port, flow: 'in', toward: position(flow.up.node) });
  }
  return new Map(
    nodes.map((node) => {
      const named = node.ports.map((port) => port.id);
      const channels = new Map(node.ports.map((port) => [port.id, port.channel]));
      const own = vertexOfNode.get(node.id) ?? 0;
      const ids = [...new Set([...named, ...(used.get(node.id) ?? [])])];
      return [
        node.id,
        ids.map((id): PortUse => {
          const use = found.get(portName(node.id, id)) ?? { id, flow: 'idle', toward: across[own] ?? 0 };
          const channel = channels.get(id);
          return channel === undefined ? use : { ...use, channel };
        }),
      ];
    }),
  );
}

/** The first line at a port decides; a second one is a finding elsewhere. */
function put(found: Map<string, PortUse>, key: string, use: PortUse): void {
  if (!found.has(key)) found.set(key, use);
}
