/** Where each vertex wishes to be across the vehicle: wheels at their sides, everything else between its neighbours. */
import { type Structure, type Vertex, waysOf } from './structure.ts';

const rounds = 80;
/** How far apart neighbouring ports of a master count, in either measure. */
const freshPitch = 0.02;
const knownPitch = 14;
/** How far to the right of the vehicle loose parts wait, in either measure. */
const freshAside = 1.5;
const knownAside = 160;

/** `known` are positions to keep, by vertex id. */
export function acrossOf(structure: Structure, known: ReadonlyMap<string, number>): readonly number[] {
  const { vertices, arcs } = structure;
  const pinned = known.size > 0 ? pinsFrom(structure, known) : freshPins(structure);
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

function pinsFrom(structure: Structure, known: ReadonlyMap<string, number>): ReadonlyMap<number, number> {
  const pins = new Map(
    structure.vertices.flatMap((vertex, i): [number, number][] => {
      const x = known.get(vertex.id);
      return x === undefined ? [] : [[i, x]];
    }),
  );
  const aside = Math.max(...pins.values()) + knownAside;
  for (const i of looseOf(structure)) if (!pins.has(i)) pins.set(i, aside);
  return pins;
}

/** What hangs on neither actuation nor a wheel waits at the right, out of the way, until the file joins it. */
function looseOf({ vertices, arcs }: Structure): readonly number[] {
  const { out, into } = waysOf(arcs, vertices.length);
  const held = new Set<number>();
  const stack = vertices.flatMap((vertex, i) => (holds(vertex) ? [i] : []));
  for (let i = stack.pop(); i !== undefined; i = stack.pop()) {
    if (held.has(i)) continue;
    held.add(i);
    stack.push(...(out[i] ?? []), ...(into[i] ?? []));
  }
  return vertices.flatMap((_, i) => (held.has(i) ? [] : [i]));
}

const holds = (vertex: Vertex): boolean =>
  vertex.kind !== 'line' && vertex.nodes.some(({ station }) => station !== 'junction');

const sidePosition = { left: -1, centre: 0, right: 1 } as const;

/** Ends of the tree: those with a side go to it, the others share the width in the order in which the tree meets them. */
function freshPins(structure: Structure): ReadonlyMap<number, number> {
  const { vertices, arcs } = structure;
  const { out, into } = waysOf(arcs, vertices.length);
  const loose = new Set(looseOf(structure));
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
    if ((into[i] ?? []).length === 0 && !loose.has(i)) visit(i);
  });
  for (const [place, i] of centred.entries()) pins.set(i, ((place + 1) / (centred.length + 1) - 0.5) * 0.8);
  for (const i of loose) pins.set(i, freshAside);
  return pins;
}

const isEnd = (vertex: Vertex, out: readonly number[]) =>
  out.length === 0 || (vertex.kind === 'part' && ['front', 'rear'].includes(vertex.nodes[0].station));
