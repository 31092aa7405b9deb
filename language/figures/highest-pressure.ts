/** The highest line pressure that the file states for the circuits of a part: what was read on the vehicle. */
import { type Dimension, type Estimate, estimateOf, type WrittenUnit } from '../quantity/index.ts';
import type { Circuit } from '../system/circuits.ts';
import type { Origin } from '../system/origin.ts';
import type { Measured, Part } from '../system/part.ts';
import type { Reading } from '../system/record.ts';
import { allParts, type System } from '../system/system.ts';
import { writtenOf } from './given.ts';

export interface StatedPressure {
  readonly pressure: Estimate<'pressure'>;
  readonly written: WrittenUnit;
  /** Where it was read: "main", "the vehicle". */
  readonly where: string;
  readonly origin: Origin;
}

/**
 * In Pa, gauge. A reading on a part holds for the circuits that the part is in; one on the vehicle for those that
 * apply a wheel brake. Undefined where nothing was read.
 */
export function highestPressureAt(part: Part, system: System): StatedPressure | undefined {
  const circuits = system.circuits.filter((circuit) => isIn(part, circuit));
  if (circuits.length === 0) return undefined;
  const onParts = allParts(system)
    .filter(({ readings }) => readings.length > 0)
    .filter((other) => circuits.some((circuit) => isIn(other, circuit)))
    .flatMap((other) => other.readings.flatMap((reading) => statedBy(reading, other.label)));
  const brakes = circuits.some(({ reaches }) => reaches.some((reach) => appliesBrake(system.partById.get(reach.part))));
  const onVehicle = brakes
    ? (system.vehicle?.readings ?? []).flatMap((reading) => statedBy(reading, 'the vehicle'))
    : [];
  return [...onParts, ...onVehicle].reduce<StatedPressure | undefined>(
    (most, each) => (most !== undefined && most.pressure.value >= each.pressure.value ? most : each),
    undefined,
  );
}

const isIn = (part: Part, { chamber, reachOf }: Circuit): boolean =>
  reachOf.has(part.id) || chamber.startsWith(`${part.id}.`);

const appliesBrake = (part: Part | undefined): boolean => part?.kind === 'cylinder' || part?.kind === 'caliper';

function statedBy({ quantity, value, origin }: Reading, where: string): readonly StatedPressure[] {
  if (quantity !== 'line-pressure' || !isPressure(value)) return [];
  const [pressure, written] = [estimateOf(value.stated), writtenOf(value.stated)];
  return pressure === undefined || written === undefined ? [] : [{ pressure, written, where, origin }];
}

const isPressure = (measured: Measured<Dimension>): measured is Measured<'pressure'> =>
  measured.dimension === 'pressure';
