/** The bodies of equal pressure that a master chamber presses, one behind the other where valves stand between. */
import { type FluidGraph, isChamber, type Tie, type Volume } from '../../system/fluid-graph.ts';
import type { Part, PartId } from '../../system/part.ts';
import type { System } from '../../system/system.ts';

/** A way into a zone, through a valve, from a zone nearer the chamber. */
export interface Feed {
  readonly from: number;
  readonly valve: Part;
  /** True where fluid enters the valve by its outlet. */
  readonly backwards: boolean;
}

export interface Zone {
  readonly volumes: readonly Volume[];
  /** None for the zone of the chamber; where there are several, the highest pressure counts. */
  readonly feeds: readonly Feed[];
}

export interface PressedZones {
  readonly chamber: PartId;
  /** That of the chamber first, each after the zones that feed it. */
  readonly zones: readonly Zone[];
  readonly zoneOf: ReadonlyMap<string, number>;
  /** Chambers that press the same fluid, which is a fault. */
  readonly rivals: readonly PartId[];
  /** Parts in its reach that do not say which of their ports share fluid. */
  readonly unstated: readonly Part[];
  /** Cylinders and calipers in which it meets another chamber, by ways that the file does not tell apart; with its zone. */
  readonly meetings: ReadonlyMap<Volume, number>;
}

/** Linear in the volumes that the chamber reaches. `meetings` are not passed through. */
export function zonesOf(chamber: Part, system: System, meetings: readonly Volume[]): PressedZones {
  const { graph, partById } = system;
  const volumeById = volumesOf(graph);
  const closed = new Set(meetings.map(({ id }) => id));
  const met = new Map<Volume, number>();
  const zones: { volumes: Volume[]; feeds: Feed[] }[] = [];
  const zoneOf = new Map<string, number>();
  const rivals = new Set<PartId>();
  const unstated = new Set<Part>();
  const valves: { readonly from: number; readonly tie: Tie; readonly at: string; readonly part: PartId }[] = [];

  const look = (tie: Tie, at: string, index: number, queue: Volume[]): void => {
    const other = volumeById.get(tie.a === at ? tie.b : tie.a);
    if (other === undefined || other.side === 'reserve') return;
    const { through } = tie;
    if (through.kind === 'unstated') {
      const part = partById.get(through.part);
      if (part !== undefined) unstated.add(part);
    } else if (through.kind === 'valve') valves.push({ from: index, tie, at, part: through.part });
    else if (closed.has(other.id)) met.set(other, index);
    else if (!zoneOf.has(other.id)) {
      zoneOf.set(other.id, index);
      queue.push(other);
    }
  };
  const flood = (start: Volume): number => {
    const index = zones.length;
    const volumes = [start];
    zones.push({ volumes, feeds: [] });
    zoneOf.set(start.id, index);
    for (const volume of volumes) {
      const owner = partById.get(volume.part);
      if (owner !== undefined && owner.id !== chamber.id && isChamber(owner)) rivals.add(owner.id);
      for (const tie of graph.tiesAt.get(volume.id) ?? []) look(tie, volume.id, index, volumes);
    }
    return index;
  };

  const start = volumeById.get(chamber.id);
  if (start?.side === 'pressure') flood(start);
  // Zones are met in order of the valves before them, so that none is entered by a way round through more valves.
  for (const { from, tie, at, part } of valves) {
    const valve = partById.get(part);
    const to = volumeById.get(tie.a === at ? tie.b : tie.a);
    if (valve === undefined || to === undefined) continue;
    const known = zoneOf.get(to.id);
    if (known !== undefined && known <= from) continue;
    const zone = zones[known ?? flood(to)];
    zone?.feeds.push({ from, valve, backwards: entersByOutlet(valve, at, graph) });
  }
  return { chamber: chamber.id, zones, zoneOf, rivals: [...rivals], unstated: [...unstated], meetings: met };
}

/** The side of a valve that holds its port `in` is its inlet. */
function entersByOutlet(valve: Part, at: string, graph: FluidGraph): boolean {
  const inlet = valve.ports.find(({ name }) => name === 'in');
  return inlet === undefined ? false : graph.volumeOfPort.get(inlet.id)?.id !== at;
}

function volumesOf({ volumes }: FluidGraph): ReadonlyMap<string, Volume> {
  return new Map(volumes.map((volume) => [volume.id, volume]));
}
