/** The things a vehicle's hydraulics are made of: parts with sub-parts, ports, facts and records. */
import type { Dimension, Stated } from '../quantity/index.ts';
import type { TubeMaterialName } from '../standards/tube-materials.ts';
import type { Connection } from './connection.ts';
import type { PartKind } from './kinds/kind-row.ts';
import type { Origin } from './origin.ts';
import type { Presence } from './presence.ts';
import type { PartRecord, Reading } from './record.ts';
import type { Clip, Position, Route } from './route.ts';

declare const partIdBrand: unique symbol;
declare const portIdBrand: unique symbol;

/** The path of a part in its system: `rear-left`, `rear-left.cylinder`. */
export type PartId = string & { readonly [partIdBrand]: true };
/** The path of a port: `rear-left.cylinder.feed`; the ends of a run or hose are its ports `from` and `to`. */
export type PortId = string & { readonly [portIdBrand]: true };

export const partIdOf = (path: readonly string[]): PartId => path.join('.') as PartId;
export const portIdOf = (part: PartId, name: string): PortId => `${part}.${name}` as PortId;

/** A quantity that belongs to a part, with its dimension at hand. */
export interface Measured<D extends Dimension = Dimension> {
  readonly kind: 'measure';
  readonly dimension: D;
  readonly stated: Stated<D>;
  readonly origin: Origin;
}

/** One fact of a part: `bore 7/8 in`, `shoes leading-trailing`, `dated 2019-06`, `part-number "…"`. */
export type Fact =
  | Measured
  | { readonly kind: 'word'; readonly word: string; readonly origin: Origin }
  | { readonly kind: 'text'; readonly text: string; readonly origin: Origin }
  | { readonly kind: 'date'; readonly date: string; readonly origin: Origin };

export interface Port {
  readonly id: PortId;
  readonly name: string;
  readonly part: PartId;
  readonly connection: Connection;
  readonly position: Position | undefined;
  readonly presence: Presence;
  readonly origin: Origin;
}

/** What a run is made of. */
export interface Tube {
  readonly diameter: Stated<'length'>;
  readonly wall: Stated<'length'> | undefined;
  readonly material: TubeMaterialName | undefined;
  readonly origin: Origin;
}

export interface Part {
  readonly id: PartId;
  readonly name: string;
  readonly kind: PartKind;
  readonly variant: string | undefined;
  /** How a person names it: `rear-left cylinder`. */
  readonly label: string;
  readonly parent: PartId | undefined;
  readonly presence: Presence;
  /** The place that it rides on: its own, or that of the part it belongs to. */
  readonly place: string | undefined;
  /** Name of the stock that it is made of. */
  readonly stock: string | undefined;
  readonly facts: ReadonlyMap<string, Fact>;
  readonly ports: readonly Port[];
  readonly parts: readonly Part[];
  readonly tube: Tube | undefined;
  readonly route: Route | undefined;
  readonly clip: Clip | undefined;
  /** Groups of port names that share fluid inside; empty where the file does not say. */
  readonly paths: readonly (readonly string[])[];
  readonly records: readonly PartRecord[];
  readonly readings: readonly Reading[];
  /** The whole declaration. */
  readonly origin: Origin;
  /** Its name, or its kind where it has no name of its own. */
  readonly nameOrigin: Origin;
}
