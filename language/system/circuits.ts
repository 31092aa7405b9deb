/** Hydraulic circuits: everything that shares a fluid path with one master chamber, and the valves on the way. */
import { type FluidGraph, fluidGraph, isChamber, type Tie } from './fluid-graph.ts';
import type { Joint } from './joint.ts';
import type { Part, PartId, PortId } from './part.ts';

/** How a circuit reaches a part. */
export interface Reach {
  readonly part: PartId;
  /** Valves passed on the way, nearest the master first. */
  readonly valves: readonly PartId[];
  /** Joints on the shortest way. */
  readonly joints: number;
  /** True where the way leads through a part that does not say which of its ports share fluid. */
  readonly doubtful: boolean;
}

export interface Circuit {
  /** The chamber that presses it: `main.primary`, or the single master itself. */
  readonly chamber: PartId;
  /** As a person names it: "main primary". */
  readonly label: string;
  /** In order of distance from the chamber; the chamber first. */
  readonly reaches: readonly Reach[];
  readonly reachOf: ReadonlyMap<PartId, Reach>;
  readonly ports: ReadonlySet<PortId>;
}

/** The circuits of the parts and joints of one state, in the order of the chambers in the text. */
export function circuitsOf(
  parts: readonly Part[],
  joints: readonly Joint[],
): { circuits: readonly Circuit[]; graph: FluidGraph } {
  const graph = fluidGraph(parts, joints);
  return { graph, circuits: parts.filter(isChamber).map((chamber) => trace(chamber, graph)) };
}

function trace(chamber: Part, graph: FluidGraph): Circuit {
  const volumeById = new Map(graph.volumes.map((volume) => [volume.id, volume]));
  const reached = new Map<string, Reach>();
  const reachOf = new Map<PartId, Reach>();
  const ports = new Set<PortId>();
  const arrive = (id: string, reach: Reach): boolean => {
    const volume = volumeById.get(id);
    if (volume === undefined || volume.side === 'reserve' || reached.has(id)) return false;
    reached.set(id, reach);
    if (!reachOf.has(volume.part)) reachOf.set(volume.part, reach);
    for (const port of volume.ports) ports.add(port);
    return true;
  };
  const step = (from: string, tie: Tie): string | undefined => {
    const here = reached.get(from);
    const other = tie.a === from ? tie.b : tie.a;
    const part = volumeById.get(other)?.part;
    if (here === undefined || part === undefined) return undefined;
    const { through } = tie;
    const reach: Reach = {
      part,
      valves: through.kind === 'valve' ? [...here.valves, through.part] : here.valves,
      joints: here.joints + (through.kind === 'joint' ? 1 : 0),
      doubtful: here.doubtful || through.kind === 'unstated',
    };
    return arrive(other, reach) ? other : undefined;
  };
  const start = graph.volumes.find((volume) => volume.part === chamber.id && volume.side === 'pressure');
  if (start) arrive(start.id, { part: chamber.id, valves: [], joints: 0, doubtful: false });
  // First all that is certain, so that a doubtful short cut never hides a certain longer way.
  for (const certainty of ['certain', 'doubtful'] as const) {
    const queue = [...reached.keys()];
    for (let index = 0; index < queue.length; index++) {
      const from = queue[index] ?? '';
      for (const tie of graph.tiesAt.get(from) ?? []) {
        if (certainty === 'certain' && tie.through.kind === 'unstated') continue;
        const next = step(from, tie);
        if (next !== undefined) queue.push(next);
      }
    }
  }
  return { chamber: chamber.id, label: chamber.label, reaches: [...reachOf.values()], reachOf, ports };
}
