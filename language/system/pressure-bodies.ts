/** Bodies of fluid under pressure: all that empties when one part of it leaks, cut at pistons and spools. */
import { type FluidGraph, isChamber, type Tie, type Volume } from './fluid-graph.ts';
import { kindRow } from './kinds/index.ts';
import type { Part, PartId } from './part.ts';
import type { System } from './system.ts';

export interface PressureBody {
  /** The master chambers that press it; more than one is a fault, none means that nothing does. */
  readonly chambers: readonly PartId[];
  readonly volumes: readonly Volume[];
  /** The parts that hold it, each once, outward from the one that stands first in the text. */
  readonly parts: readonly PartId[];
}

export interface PressureBodies {
  readonly bodies: readonly PressureBody[];
  /** By the id of a volume; several for a meeting. */
  readonly at: ReadonlyMap<string, readonly PressureBody[]>;
  /**
   * Cylinders and calipers where two chambers arrive and the file does not say which ports share fluid: one with two
   * pistons and two circuits, perhaps. The bodies end there.
   */
  readonly meetings: readonly Volume[];
  /** The body with all that opaque parts may join to it, by ways that they do not state. */
  around(body: PressureBody): readonly PressureBody[];
}

/** Linear in parts and joints. Ways that an opaque part does not state lead nowhere. */
export function pressureBodiesOf(system: Pick<System, 'graph' | 'partById'>): PressureBodies {
  const { graph, partById } = system;
  const chambers = chambersOf(graph, partById);
  const pressed = graph.volumes.filter(({ side }) => side === 'pressure');
  const meetings = meetingsIn(graph, pressed, partById, chambers);
  const closed = new Set(meetings.map(({ id }) => id));
  const open = pressed.filter(({ id }) => !closed.has(id));
  const at = new Map<string, PressureBody[]>();
  const bodies = joinedVolumes(graph, open).map((volumes): PressureBody => {
    const ids = new Set(volumes.map(({ id }) => id));
    const arriving = meetings.filter(({ id }) => neighbours(graph, id).some((other) => ids.has(other)));
    const all = [...volumes, ...arriving];
    const parts = [...new Set(all.map(({ part }) => part))];
    const body = { chambers: volumes.flatMap(({ id }) => chambers.get(id) ?? []), volumes: all, parts };
    for (const { id } of all) at.set(id, [...(at.get(id) ?? []), body]);
    return body;
  });
  const groups = joinedByUnstated(graph, bodies, at);
  return { bodies, at, meetings, around: (body) => groups.get(body) ?? [body] };
}

/** Bodies that unstated ways join, by each of them; bodies that none touches are left out. */
function joinedByUnstated(
  graph: FluidGraph,
  bodies: readonly PressureBody[],
  at: ReadonlyMap<string, readonly PressureBody[]>,
): ReadonlyMap<PressureBody, readonly PressureBody[]> {
  const beside = new Map<PressureBody, PressureBody[]>();
  for (const { a, b } of graph.ties.filter((tie) => !isOpenWay(tie))) {
    for (const [one, other] of [
      [a, b],
      [b, a],
    ]) {
      for (const body of at.get(one ?? '') ?? []) {
        beside.set(body, [...(beside.get(body) ?? []), ...(at.get(other ?? '') ?? [])]);
      }
    }
  }
  const groups = new Map<PressureBody, readonly PressureBody[]>();
  for (const start of bodies) {
    if (!beside.has(start) || groups.has(start)) continue;
    const group = new Set([start]);
    for (const body of group) for (const next of beside.get(body) ?? []) group.add(next);
    for (const body of group) groups.set(body, [...group]);
  }
  return groups;
}

/** Whether fluid passes here for certain. */
export const isOpenWay = ({ through }: Tie): boolean => through.kind !== 'unstated';

/** The volumes in groups that fluid passes between, none of them through volumes that are not given. */
function joinedVolumes(graph: FluidGraph, volumes: readonly Volume[]): readonly (readonly Volume[])[] {
  const left = new Map(volumes.map((volume) => [volume.id, volume]));
  const groups: Volume[][] = [];
  for (const first of volumes) {
    if (!left.delete(first.id)) continue;
    const group = [first];
    for (const { id } of group) {
      for (const other of neighbours(graph, id)) {
        const volume = left.get(other);
        if (volume !== undefined && left.delete(other)) group.push(volume);
      }
    }
    groups.push(group);
  }
  return groups;
}

function neighbours(graph: FluidGraph, id: string): readonly string[] {
  const ties = (graph.tiesAt.get(id) ?? []).filter(isOpenWay);
  return ties.map(({ a, b }) => (a === id ? b : a));
}

/** Chambers by the volume that each presses. */
function chambersOf(graph: FluidGraph, partById: ReadonlyMap<PartId, Part>): ReadonlyMap<string, PartId> {
  const found = new Map<string, PartId>();
  for (const { id, part, side } of graph.volumes) {
    const owner = partById.get(part);
    if (side === 'pressure' && owner !== undefined && isChamber(owner)) found.set(id, part);
  }
  return found;
}

function meetingsIn(
  graph: FluidGraph,
  pressed: readonly Volume[],
  partById: ReadonlyMap<PartId, Part>,
  chambers: ReadonlyMap<string, PartId>,
): readonly Volume[] {
  const may = pressed.filter((volume) => mayHoldTwo(volume, graph, partById));
  if (may.length === 0) return [];
  const aside = new Set(may.map(({ id }) => id));
  const bodyOf = new Map<string, readonly Volume[]>();
  const rest = joinedVolumes(
    graph,
    pressed.filter(({ id }) => !aside.has(id)),
  );
  for (const group of rest) {
    if (group.some(({ id }) => chambers.has(id))) for (const { id } of group) bodyOf.set(id, group);
  }
  return may.filter(({ id }) => {
    const arriving = new Set(neighbours(graph, id).flatMap((other) => bodyOf.get(other)?.[0] ?? []));
    return arriving.size > 1;
  });
}

function mayHoldTwo({ id, part }: Volume, graph: FluidGraph, partById: ReadonlyMap<PartId, Part>): boolean {
  const owner = partById.get(part);
  if (owner === undefined || kindRow(owner.kind).fluid !== 'consumer' || owner.paths.length > 0) return false;
  return (graph.tiesAt.get(id)?.length ?? 0) > 1;
}
