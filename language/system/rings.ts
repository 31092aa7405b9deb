/** Rings in the tubing: parts from which fluid can go round and come back without going the same way twice. */
import type { FluidGraph, Tie, Volume } from './fluid-graph.ts';

export interface Ring {
  /** What it goes through, in the order of the text. */
  readonly volumes: readonly Volume[];
  /** How many ways round there are that are not made of the others: 1 for a plain ring. */
  readonly ways: number;
}

/**
 * The rings among `volumes` along `ties`; ties to other volumes are left out. Rings that share a part of their way are
 * one. A walk in depth finds the ties that lie on no ring (Tarjan, "A note on finding the bridges of a graph", 1974);
 * what hangs together without them goes round. Linear, and without recursion.
 */
export function ringsOf(
  graph: Pick<FluidGraph, 'tiesAt'>,
  volumes: readonly Volume[],
  ties: readonly Tie[],
): readonly Ring[] {
  const allowed = new Set(ties);
  const known = new Set(volumes.map(({ id }) => id));
  const waysFrom = (id: string): readonly Tie[] =>
    (graph.tiesAt.get(id) ?? []).filter((tie) => allowed.has(tie) && known.has(tie.a) && known.has(tie.b));
  const lone = loneTies(volumes, waysFrom);
  const seen = new Set<string>();
  const rings: Ring[] = [];
  for (const { id } of volumes) {
    if (seen.has(id)) continue;
    seen.add(id);
    const group = [id];
    const within = new Set<Tie>();
    for (const here of group) {
      for (const tie of waysFrom(here)) {
        if (lone.has(tie)) continue;
        within.add(tie);
        const next = otherEnd(tie, here);
        if (seen.has(next)) continue;
        seen.add(next);
        group.push(next);
      }
    }
    if (within.size === 0) continue;
    const inside = new Set(group);
    const inRing = volumes.filter((volume) => inside.has(volume.id));
    rings.push({ volumes: inRing, ways: within.size - group.length + 1 });
  }
  return rings;
}

const otherEnd = (tie: Tie, id: string): string => (tie.a === id ? tie.b : tie.a);

interface Visit {
  readonly id: string;
  /** The tie that led here. */
  readonly by: Tie | undefined;
  readonly ways: readonly Tie[];
  next: number;
}

/** The ties without which the two sides would be apart. */
function loneTies(volumes: readonly Volume[], waysFrom: (id: string) => readonly Tie[]): ReadonlySet<Tie> {
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const lone = new Set<Tie>();
  const lower = (id: string, to: number): void => {
    lowest.set(id, Math.min(lowest.get(id) ?? to, to));
  };
  const enter = (id: string, by: Tie | undefined): Visit => {
    order.set(id, order.size);
    lower(id, order.size - 1);
    return { id, by, ways: waysFrom(id), next: 0 };
  };
  for (const { id: start } of volumes) {
    if (order.has(start)) continue;
    const walk = [enter(start, undefined)];
    for (let visit = walk.at(-1); visit !== undefined; visit = walk.at(-1)) {
      const tie = visit.ways[visit.next++];
      if (tie === undefined) {
        walk.pop();
        const before = walk.at(-1);
        const reached = lowest.get(visit.id) ?? 0;
        if (before !== undefined) lower(before.id, reached);
        if (visit.by !== undefined && reached === order.get(visit.id)) lone.add(visit.by);
      } else if (tie !== visit.by) {
        const next = otherEnd(tie, visit.id);
        const met = order.get(next);
        if (met === undefined) walk.push(enter(next, tie));
        else lower(visit.id, met);
      }
    }
  }
  return lone;
}
