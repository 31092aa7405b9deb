/** The vehicle that the hydraulics belong to: its class and year, its measures, its places and how they move. */
import type { Stated } from '../quantity/index.ts';
import type { Origin } from './origin.ts';
import type { Fact } from './part.ts';
import type { Reading } from './record.ts';

export interface Place {
  readonly name: string;
  readonly motion: 'fixed' | 'rubber-mounted' | 'sprung';
  readonly parent: string | undefined;
  readonly travel: Stated<'length'> | undefined;
  readonly origin: Origin;
}

export interface LoadCase {
  readonly name: string;
  readonly facts: ReadonlyMap<string, Fact>;
  readonly origin: Origin;
}

export interface Vehicle {
  readonly name: string;
  readonly caption: string | undefined;
  readonly facts: ReadonlyMap<string, Fact>;
  readonly places: readonly Place[];
  readonly loads: readonly LoadCase[];
  readonly readings: readonly Reading[];
  readonly origin: Origin;
  readonly nameOrigin: Origin;
}

export interface FluidFill {
  readonly grade: string;
  readonly filled: string | undefined;
  readonly origin: Origin;
}
