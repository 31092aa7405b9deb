/** Where fluid can go: volumes of fluid in parts, tied by joints and valves, cut at pistons and spools. */

import type { Joint } from './joint.ts';
import { kindRow } from './kinds/index.ts';
import type { Part, PartId, PortId } from './part.ts';

/** One body of fluid inside a part. */
export interface Volume {
  readonly id: string;
  readonly part: PartId;
  readonly ports: readonly PortId[];
  /** `pressure` is pressed by a master piston or could be; `reserve` lies on the reservoir's side of the seals. */
  readonly side: 'pressure' | 'reserve';
}

export interface Tie {
  readonly a: string;
  readonly b: string;
  readonly through:
    | { readonly kind: 'joint'; readonly joint: Joint }
    | { readonly kind: 'valve'; readonly part: PartId }
    /** An opaque part of which the file does not say which ports share fluid. */
    | { readonly kind: 'unstated'; readonly part: PartId };
}

export interface FluidGraph {
  readonly volumes: readonly Volume[];
  readonly ties: readonly Tie[];
  readonly volumeOfPort: ReadonlyMap<PortId, Volume>;
  readonly tiesAt: ReadonlyMap<string, readonly Tie[]>;
}

/** Builds the graph from the parts of one state, sub-parts included, and its joints. */
export function fluidGraph(parts: readonly Part[], joints: readonly Joint[]): FluidGraph {
  const volumes: Volume[] = [];
  const ties: Tie[] = [];
  for (const part of parts) {
    const inside = volumesOf(part);
    volumes.push(...inside.volumes);
    ties.push(...inside.ties);
  }
  const volumeOfPort = new Map(volumes.flatMap((volume) => volume.ports.map((port) => [port, volume] as const)));
  for (const joint of joints) {
    const [a, b] = [volumeOfPort.get(joint.a), volumeOfPort.get(joint.b)];
    if (a && b) ties.push({ a: a.id, b: b.id, through: { kind: 'joint', joint } });
  }
  const tiesAt = new Map<string, Tie[]>();
  for (const tie of ties) {
    for (const end of tie.a === tie.b ? [tie.a] : [tie.a, tie.b]) {
      const list = tiesAt.get(end);
      if (list) list.push(tie);
      else tiesAt.set(end, [tie]);
    }
  }
  return { volumes, ties, volumeOfPort, tiesAt };
}

function volumesOf(part: Part): { volumes: readonly Volume[]; ties: readonly Tie[] } {
  const isReserve = part.kind === 'reservoir' || part.kind === 'compartment' || part.kind === 'feed-hose';
  const barbs = part.ports.filter((port) => port.connection.kind === 'barb').map((port) => port.id);
  const rest = part.ports.filter((port) => port.connection.kind !== 'barb').map((port) => port.id);
  const reserve: readonly Volume[] =
    !isReserve && barbs.length > 0 ? [{ id: `${part.id}:reserve`, part: part.id, ports: barbs, side: 'reserve' }] : [];
  if (isReserve) {
    return { volumes: [{ id: part.id, part: part.id, ports: [...barbs, ...rest], side: 'reserve' }], ties: [] };
  }
  const grouped = groupsOf(part, rest);
  const volumes = grouped.groups.map(
    (ports, index): Volume => ({
      id: index === 0 ? part.id : `${part.id}:${index}`,
      part: part.id,
      ports,
      side: 'pressure',
    }),
  );
  const [first, ...others] = volumes;
  const ties =
    first === undefined || grouped.tie === undefined
      ? []
      : others.map(
          (other): Tie => ({ a: first.id, b: other.id, through: { kind: grouped.tie ?? 'valve', part: part.id } }),
        );
  return { volumes: [...volumes, ...reserve], ties };
}

interface Groups {
  readonly groups: readonly (readonly PortId[])[];
  readonly tie: 'valve' | 'unstated' | undefined;
}

function groupsOf(part: Part, ports: readonly PortId[]): Groups {
  const nameOf = (port: PortId): string => port.slice(part.id.length + 1);
  if (part.paths.length > 0) {
    const stated = part.paths.map((path) => ports.filter((port) => path.includes(nameOf(port))));
    const rest = ports.filter((port) => !part.paths.some((path) => path.includes(nameOf(port))));
    const groups = [...merged(stated), ...rest.map((port) => [port])].filter((group) => group.length > 0);
    return { groups, tie: undefined };
  }
  switch (kindRow(part.kind).fluid) {
    case 'joined':
    case 'consumer':
    case 'chamber':
      return { groups: ports.length > 0 || isChamber(part) ? [ports] : [], tie: undefined };
    case 'valve': {
      const before = ports.filter((port) => nameOf(port) === 'in');
      const after = ports.filter((port) => nameOf(port) !== 'in');
      return { groups: [before, after].filter((group) => group.length > 0), tie: 'valve' };
    }
    case 'paths':
      return { groups: ports.map((port) => [port]), tie: 'unstated' };
    case 'parts':
    case 'none':
      return { groups: [], tie: undefined };
  }
}

/** Whether this part is a chamber: of a tandem its chambers are, not the master that holds them. */
export function isChamber(part: Part): boolean {
  if (part.kind === 'primary' || part.kind === 'secondary') return true;
  return part.kind === 'master' && !part.parts.some(isChamber);
}

/** Path statements that share a port join into one volume. */
function merged(groups: readonly (readonly PortId[])[]): readonly (readonly PortId[])[] {
  const result: PortId[][] = [];
  for (const group of groups) {
    const touching = result.filter((other) => other.some((port) => group.includes(port)));
    const joined = [...new Set([...touching.flat(), ...group])];
    for (const other of touching) result.splice(result.indexOf(other), 1);
    result.push(joined);
  }
  return result;
}
