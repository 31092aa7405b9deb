/** The immutable model of one vehicle's hydraulics in one state, as found or as planned. */
import type { Circuit } from './circuits.ts';
import type { FluidGraph } from './fluid-graph.ts';
import type { Joint, Link } from './joint.ts';
import type { Part, PartId, Port, PortId } from './part.ts';
import type { State } from './presence.ts';
import type { Problem } from './problem.ts';
import type { Accept } from './record.ts';
import type { FluidFill, Vehicle } from './vehicle.ts';

export interface System {
  readonly uri: string;
  readonly state: State;
  readonly vehicle: Vehicle | undefined;
  readonly fluids: readonly FluidFill[];
  /** The parts that stand by themselves, in the order of the text; sub-parts are inside them. */
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly links: readonly Link[];
  readonly accepts: readonly Accept[];
  readonly partById: ReadonlyMap<PartId, Part>;
  readonly portById: ReadonlyMap<PortId, Port>;
  /** The joints at a port; more than one is a finding. */
  readonly jointsAt: ReadonlyMap<PortId, readonly Joint[]>;
  readonly circuits: readonly Circuit[];
  readonly graph: FluidGraph;
}

/** What a file says: its circuit in both states and what is wrong with its text. */
export interface FileReading {
  readonly uri: string;
  readonly found: System;
  readonly planned: System;
  readonly problems: readonly Problem[];
  /** Quantities written as `?` or `? assume`, in the order of the text: the measuring list. */
  readonly toMeasure: readonly ToMeasure[];
  /** Files that this one uses, found or not. */
  readonly uses: readonly string[];
  /** Stock that the file itself declares. */
  readonly stocks: readonly DeclaredStock[];
}

export interface DeclaredStock {
  readonly name: string;
  /** Where its name stands. */
  readonly origin: Problem['origin'];
}

export interface ToMeasure {
  readonly part: string;
  readonly fact: string;
  readonly assumed: boolean;
  readonly origin: Problem['origin'];
}

/** Every part with its sub-parts, outer before inner. */
export function allParts(system: System): readonly Part[] {
  return [...system.partById.values()];
}

/** The part that a port belongs to. */
export function partOf(system: System, port: PortId): Part | undefined {
  const found = system.portById.get(port);
  return found && system.partById.get(found.part);
}

/** The outermost part that holds this one: the wheel brake of a cylinder. */
export function outermost(system: System, part: Part): Part {
  const parent = part.parent === undefined ? undefined : system.partById.get(part.parent);
  return parent === undefined ? part : outermost(system, parent);
}
