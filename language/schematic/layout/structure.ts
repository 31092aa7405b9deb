/** The picture as a graph that flows away from the actuation: parts, rows of parts on one rod, and labelled lines. */
import type { LineEnd, Picture, PictureLine, PictureNode } from '../picture.ts';

/** What gets one place in the layout. */
export type Vertex =
  | { readonly kind: 'part'; readonly id: string; readonly nodes: readonly [PictureNode] }
  | { readonly kind: 'row'; readonly id: string; readonly nodes: readonly PictureNode[] }
  | { readonly kind: 'line'; readonly id: string; readonly line: PictureLine };

/** One line with its ends in the order of flow; `loop` when both ends are on one part. */
export interface Flow {
  readonly line: PictureLine;
  readonly up: LineEnd;
  readonly down: LineEnd;
  readonly kind: 'through' | 'loop' | 'rod';
  /** Whether the line gets a place of its own, with its label. */
  readonly labelled: boolean;
}

/** A step of flow from one vertex to the next, by index; a bias says how far off the middle of its vertex an end sits. */
export interface Arc {
  readonly from: number;
  readonly to: number;
  readonly fromBias: number;
  readonly toBias: number;
  readonly carries: 'fluid' | 'force';
}

export interface Structure {
  readonly nodes: readonly PictureNode[];
  readonly vertices: readonly Vertex[];
  readonly vertexOfNode: ReadonlyMap<string, number>;
  readonly vertexOfLine: ReadonlyMap<string, number>;
  readonly flows: readonly Flow[];
  readonly arcs: readonly Arc[];
}

export interface Ways {
  readonly out: readonly (readonly number[])[];
  readonly into: readonly (readonly number[])[];
}

/** Where the arcs lead from each of `count` vertices, and from where they come. */
export function waysOf(arcs: readonly Arc[], count: number): Ways {
  const out: number[][] = Array.from({ length: count }, () => []);
  const into: number[][] = Array.from({ length: count }, () => []);
  for (const { from, to } of arcs) {
    out[from]?.push(to);
    into[to]?.push(from);
  }
  return { out, into };
}

export function structureOf(picture: Picture): Structure {
  const nodes = unique(picture.nodes);
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const lines = unique(picture.lines).filter((line) => byId.has(line.from.node) && byId.has(line.to.node));
  const grouped = group(nodes, lines);
  const order = flowOrder(grouped, lines);
  const flows = lines.map((line) => flowOf(line, grouped.vertexOf, order));
  const vertices: Vertex[] = [...grouped.vertices];
  const vertexOfLine = new Map<string, number>();
  const arcs: Arc[] = [];
  for (const flow of flows) {
    if (flow.kind !== 'through') continue;
    const from = grouped.vertexOf.get(flow.up.node) ?? 0;
    const to = grouped.vertexOf.get(flow.down.node) ?? 0;
    const fromBias = biasOf(flow.up, byId);
    const toBias = biasOf(flow.down, byId);
    if (!flow.labelled) {
      arcs.push({ from, to, fromBias, toBias, carries: flow.line.kind === 'mechanical' ? 'force' : 'fluid' });
      continue;
    }
    const middle = vertices.push({ kind: 'line', id: flow.line.id, line: flow.line }) - 1;
    vertexOfLine.set(flow.line.id, middle);
    arcs.push(
      { from, to: middle, fromBias, toBias: 0, carries: 'fluid' },
      { from: middle, to, fromBias: 0, toBias, carries: 'fluid' },
    );
  }
  return { nodes, vertices, vertexOfNode: grouped.vertexOf, vertexOfLine, flows, arcs };
}

/** Where the line that belongs to one wheel alone begins: at the actuation, at a valve, or where lines may part. */
export function beginsWheelLine(vertex: Vertex | undefined): boolean {
  if (vertex === undefined || vertex.kind === 'row') return true;
  if (vertex.kind === 'line') return false;
  const [{ ports, station, symbol }] = vertex.nodes;
  return ports.length > 2 || station === 'actuation' || symbol.endsWith('-valve');
}

/** Chambers of a master and ways through a valve lie side by side; other symbols set their ports to suit the lines. */
function biasOf({ node, port }: LineEnd, byId: ReadonlyMap<string, PictureNode>): number {
  const owner = byId.get(node);
  if (owner === undefined) return 0;
  const channels = owner.ports.map(({ channel }) => channel ?? 0);
  if (owner.symbol === 'master-single' || owner.symbol === 'master-tandem') {
    const index = owner.ports.findIndex(({ id }) => id === port);
    return index < 0 ? 0 : index - (owner.ports.length - 1) / 2;
  }
  const most = Math.max(0, ...channels);
  return most === 0 ? 0 : (owner.ports.find(({ id }) => id === port)?.channel ?? 0) - most / 2;
}

/** The first of each id; a second one is a finding elsewhere and would confuse the layout here. */
function unique<T extends { readonly id: string }>(things: readonly T[]): readonly T[] {
  const seen = new Set<string>();
  return things.filter(({ id }) => !seen.has(id) && seen.add(id));
}

interface Grouped {
  readonly vertices: readonly Vertex[];
  readonly vertexOf: ReadonlyMap<string, number>;
}

/** Pedal, booster and master stand in one row on their push rod, each with at most one neighbour to the right. */
function group(nodes: readonly PictureNode[], lines: readonly PictureLine[]): Grouped {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const next = new Map<string, string>();
  const taken = new Set<string>();
  for (const line of lines) {
    const [from, to] = [byId.get(line.from.node), byId.get(line.to.node)];
    if (line.kind !== 'mechanical' || from === undefined || to === undefined) continue;
    if (!pushes(from) || !isPushed(to) || next.has(from.id) || taken.has(to.id) || reaches(next, to.id, from.id))
      continue;
    next.set(from.id, to.id);
    taken.add(to.id);
  }
  const vertices: Vertex[] = [];
  const vertexOf = new Map<string, number>();
  for (const node of nodes) {
    if (taken.has(node.id)) continue;
    const row = chain(node, next, byId);
    for (const member of row) vertexOf.set(member.id, vertices.length);
    vertices.push(
      row.length > 1 ? { kind: 'row', id: node.id, nodes: row } : { kind: 'part', id: node.id, nodes: [node] },
    );
  }
  return { vertices, vertexOf };
}

const pushes = ({ symbol }: PictureNode) => symbol === 'pedal' || symbol === 'booster';
const isPushed = ({ symbol }: PictureNode) =>
  symbol === 'booster' || symbol === 'master-single' || symbol === 'master-tandem';

function reaches(next: ReadonlyMap<string, string>, from: string, goal: string): boolean {
  for (let at: string | undefined = from; at !== undefined; at = next.get(at)) if (at === goal) return true;
  return false;
}

function chain(first: PictureNode, next: ReadonlyMap<string, string>, byId: ReadonlyMap<string, PictureNode>) {
  const row = [first];
  for (let id = next.get(first.id); id !== undefined; id = next.get(id)) {
    const node = byId.get(id);
    if (node !== undefined) row.push(node);
  }
  return row;
}

/** Steps away from the actuation for each vertex; reservoirs come before everything, as they stand above. */
function flowOrder({ vertices, vertexOf }: Grouped, lines: readonly PictureLine[]): readonly number[] {
  const neighbours: number[][] = vertices.map(() => []);
  for (const line of lines) {
    const a = vertexOf.get(line.from.node) ?? 0;
    const b = vertexOf.get(line.to.node) ?? 0;
    if (a === b || line.kind === 'mechanical') continue;
    neighbours[a]?.push(b);
    neighbours[b]?.push(a);
  }
  const order: number[] = vertices.map(() => Number.POSITIVE_INFINITY);
  const isReservoir = vertices.map((vertex) => vertex.kind === 'part' && vertex.nodes[0].symbol === 'reservoir');
  isReservoir.forEach((yes, i) => {
    if (yes) order[i] = -1;
  });
  for (const tier of [0, 1, 2, 3]) {
    const start = vertices.flatMap((vertex, i) =>
      order[i] === Number.POSITIVE_INFINITY && tierOf(vertex) === tier ? [i] : [],
    );
    if (tier === 0) walk(start, order, neighbours);
    else for (const one of start) if (order[one] === Number.POSITIVE_INFINITY) walk([one], order, neighbours);
  }
  return order;
}

function walk(start: readonly number[], order: number[], neighbours: readonly (readonly number[])[]): void {
  for (const i of start) order[i] = 0;
  let front: readonly number[] = start;
  for (let step = 1; front.length > 0; step += 1) {
    const reached: number[] = [];
    for (const at of front) {
      for (const next of neighbours[at] ?? []) {
        if (order[next] !== Number.POSITIVE_INFINITY) continue;
        order[next] = step;
        reached.push(next);
      }
    }
    front = reached;
  }
}

const stationTiers = { actuation: 0, junction: 1, front: 2, rear: 3 } as const;

function tierOf(vertex: Vertex): number {
  if (vertex.kind === 'line') return stationTiers.junction;
  return Math.min(...vertex.nodes.map((node) => stationTiers[node.station]));
}

function flowOf(line: PictureLine, vertexOf: ReadonlyMap<string, number>, order: readonly number[]): Flow {
  const a = vertexOf.get(line.from.node) ?? 0;
  const b = vertexOf.get(line.to.node) ?? 0;
  const labelled = line.kind === 'run' || line.kind === 'hose' || line.kind === 'low-pressure-hose';
  if (a === b) {
    const kind = line.from.node === line.to.node ? 'loop' : 'rod';
    return { line, up: line.from, down: line.to, kind, labelled };
  }
  const difference = (order[a] ?? 0) - (order[b] ?? 0);
  const forward = line.kind === 'mechanical' || difference < 0 || (difference === 0 && a < b);
  return {
    line,
    up: forward ? line.from : line.to,
    down: forward ? line.to : line.from,
    kind: 'through',
    labelled,
  };
}
