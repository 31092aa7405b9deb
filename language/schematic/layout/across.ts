/** Where each vertex wishes to be across the vehicle: wheels at their sides, everything else between its neighbours. */
import type { Structure, Vertex } from './structure.ts';

const rounds = 80;
/** How far apart neighbouring ports of a master count, in either measure. */
const freshPitch = 0.02;
const knownPitch = 14;

/** `known` are positions to keep, by vertex id. */
export function acrossOf(structure: Structure, known: ReadonlyMap<string, number>): readonly number[] {
  const { vertices, arcs } = structure;
  const pinned = known.size > 0 ? pinsFrom(vertices, known) : freshPins(structure);
  const pitch = known.size > 0 ? knownPitch : freshPitch;
  const neighbours: { vertex: number; offset: number }[][] = vertices.map(() => []);
  for (const { from, to, fromBias, toBias } of arcs) {
    neighbours[from]?.push({ vertex: to, offset: (toBias - fromBias) * pitch });
    neighbours[to]?.push({ vertex: from, offset: (fromBias - toBias) * pitch });
  }
  const middle = mean([...pinned.values()]) ?? 0;
  const at = vertices.map((_, i) => pinned.get(i) ?? middle);
  for (let round = 0; round < rounds; round += 1) {
    for (let i = 0; i < at.length; i += 1) {
      if (pinned.has(i)) continue;
      at[i] = mean((neighbours[i] ?? []).map(({ vertex, offset }) => (at[vertex] ?? 0) + offset)) ?? middle;
    }
  }
  return at;
}

const mean = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : values.reduce((sum, value) => sum + value, 0) / values.length;

function pinsFrom(vertices: readonly Vertex[], known: ReadonlyMap<string, number>): ReadonlyMap<number, number> {
  return new Map(
    vertices.flatMap((vertex, i): [number, number][] => {
      const x = known.get(vertex.id);
      return x === undefined ? [] : [[i, x]];
    }),
  );
}

const sidePosition = { left: -1, centre: 0, right: 1 } as const;

/** Ends of the tree: those with a side go to it, the others share the width in the order in which the tree meets them. */
function freshPins({ vertices, arcs }: Structure): ReadonlyMap<number, number> {
  const out: number[][] = vertices.map(() => []);
  const into = vertices.map(() => 0);
  for (const { from, to } of arcs) {
    out[from]?.push(to);
    into[to] = (into[to] ?? 0) + 1;
  }
  const pins = new Map<number, number>();
  const centred: number[] = [];
  const seen = new Set<number>();
  const visit = (start: number) => {
    const stack = [start];
    for (let i = stack.pop(); i !== undefined; i = stack.pop()) {
      if (seen.has(i)) continue;
      seen.add(i);
      const vertex = vertices[i];
      if (vertex === undefined) continue;
      const side = vertex.kind === 'part' ? vertex.nodes[0].side : 'centre';
      if (side !== 'centre' && isEnd(vertex, out[i] ?? [])) pins.set(i, sidePosition[side]);
      else if ((out[i] ?? []).length === 0) centred.push(i);
      stack.push(...[...(out[i] ?? [])].reverse());
    }
  };
  vertices.forEach((_, i) => {
    if (into[i] === 0) visit(i);
  });
  for (const [place, i] of centred.entries()) pins.set(i, ((place + 1) / (centred.length + 1) - 0.5) * 0.8);
  return pins;
}

const isEnd = (vertex: Vertex, out: readonly number[]) =>
  out.length === 0 || (vertex.kind === 'part' && ['front', 'middle', 'rear'].includes(vertex.nodes[0].station));
