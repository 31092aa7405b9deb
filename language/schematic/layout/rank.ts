/** Which layer each vertex belongs to: along the vehicle from the pedal back, front wheels level, rear wheels last. */
import type { Station } from '../picture.ts';
import { beginsWheelLine, type Structure, type Vertex, waysOf } from './structure.ts';

const axles: readonly Station[] = ['front', 'rear'];

/** Layer numbers from 0; arcs always lead to a higher layer. */
export function ranksOf({ vertices, arcs }: Structure): readonly number[] {
  const { out, into } = waysOf(arcs, vertices.length);
  const fluid = waysOf(
    arcs.filter(({ carries }) => carries === 'fluid'),
    vertices.length,
  );
  const order = topological(out, into);
  const least = vertices.map(() => 0);
  let rank = longest(order, into, least);
  for (const axle of axles) {
    const wheels = vertices.flatMap((vertex, i) => (isWheel(vertex, axle) ? [i] : []));
    if (wheels.length === 0) continue;
    const before = Math.max(-1, ...vertices.flatMap((vertex, i) => (isEarlier(vertex, axle) ? [rank[i] ?? 0] : [])));
    const level = Math.max(before + 1, ...wheels.map((i) => rank[i] ?? 0));
    for (const i of wheels) least[i] = level;
    const below = before < 0 ? [] : wheels.flatMap((i) => ownLine(i, { ...fluid, vertices }));
    for (const i of below) least[i] = Math.max(least[i] ?? 0, before + 1);
    rank = longest(order, into, least);
  }
  return lowered(rank, { order, out, into, vertices });
}

/** What leads to this wheel and to nothing else. */
function ownLine(wheel: number, { out, into, vertices }: Omit<Graph, 'order'>): readonly number[] {
  const line: number[] = [];
  for (let at = wheel; line.length < into.length; ) {
    const [before, ...others] = into[at] ?? [];
    if (
      before === undefined ||
      others.length > 0 ||
      (out[before] ?? []).length > 1 ||
      beginsWheelLine(vertices[before])
    )
      break;
    line.push(before);
    at = before;
  }
  return line;
}

const isWheel = (vertex: Vertex, axle: Station) =>
  vertex.kind === 'part' && vertex.nodes[0].station === axle && isBrake(vertex.nodes[0].symbol);
const isBrake = (symbol: string) => symbol === 'drum-brake' || symbol === 'disc-brake';
const isEarlier = (vertex: Vertex, axle: Station) =>
  axles.slice(0, axles.indexOf(axle)).some((earlier) => isWheel(vertex, earlier));

function topological(out: readonly (readonly number[])[], into: readonly (readonly number[])[]): readonly number[] {
  const waiting = into.map((list) => list.length);
  const order = waiting.flatMap((count, i) => (count === 0 ? [i] : []));
  for (let at = 0; at < order.length; at += 1) {
    for (const next of out[order[at] ?? 0] ?? []) {
      const left = (waiting[next] ?? 1) - 1;
      waiting[next] = left;
      if (left === 0) order.push(next);
    }
  }
  return order;
}

function longest(order: readonly number[], into: readonly (readonly number[])[], least: readonly number[]): number[] {
  const rank = [...least];
  for (const i of order) rank[i] = Math.max(least[i] ?? 0, ...(into[i] ?? []).map((from) => (rank[from] ?? 0) + 1));
  return rank;
}

interface Graph {
  readonly order: readonly number[];
  readonly out: readonly (readonly number[])[];
  readonly into: readonly (readonly number[])[];
  readonly vertices: readonly Vertex[];
}

/** What the foot moves stays at the start; the parking brake, and what nothing feeds yet, hang from their wheels. */
const staysFirst = (vertex: Vertex | undefined) =>
  vertex !== undefined &&
  vertex.kind !== 'line' &&
  vertex.nodes.some(({ station, symbol }) => station === 'actuation' && symbol !== 'parking-brake');

/** Parts on the way to a wheel move down towards it as far as they can; ends that lead to no wheel stay with their parent. */
function lowered(rank: readonly number[], { order, out, into, vertices }: Graph): readonly number[] {
  const result = [...rank];
  const toWheel = vertices.map((vertex) => axles.some((axle) => isWheel(vertex, axle)));
  for (const i of [...order].reverse()) {
    const next = out[i] ?? [];
    toWheel[i] = toWheel[i] === true || next.some((to) => toWheel[to] === true);
    const onTheWay = next.filter((to) => toWheel[to] === true);
    if (onTheWay.length === 0 || staysFirst(vertices[i])) continue;
    result[i] = Math.max(result[i] ?? 0, Math.min(...onTheWay.map((to) => (result[to] ?? 0) - 1)));
  }
  for (const i of order) {
    const from = into[i] ?? [];
    if (toWheel[i] === true || from.length === 0) continue;
    result[i] = Math.max(...from.map((at) => (result[at] ?? 0) + 1));
  }
  return result;
}
