/** The highest line pressure that the file states for the circuits of a part: what was read on the vehicle. */
import { type Dimension, type Estimate, estimateOf, type WrittenUnit } from '../quantity/index.ts';
import type { Circuit } from '../system/circuits.ts';
import type { Origin } from '../system/origin.ts';
import type { Measured, Part, PartId } from '../system/part.ts';
import type { Reading } from '../system/record.ts';
import { allParts, type System } from '../system/system.ts';
import { writtenOf } from './given.ts';

export interface StatedPressure {
  readonly pressure: Estimate<'pressure'>;
  readonly written: WrittenUnit;
  /** Where it was read: "main", "the vehicle". */
  readonly where: string;
  /** The part that it was read on; undefined for the vehicle. */
  readonly subject: PartId | undefined;
  readonly origin: Origin;
}

/**
 * In Pa, gauge. A reading on a part holds for the circuits that the part is in; one on the vehicle for those that
 * apply a wheel brake. Undefined where nothing was read. What was read is gathered once for the whole system.
 */
export function pressuresReadIn(system: System): (part: Part) => StatedPressure | undefined {
  const onParts = allParts(system).flatMap((part) =>
    part.readings.flatMap((reading) => statedBy(reading, part)).map((stated) => ({ part, stated })),
  );
  const onVehicle = (system.vehicle?.readings ?? []).flatMap((reading) => statedBy(reading, undefined));
  const braking = new Set(
    system.circuits.filter(({ reaches }) => reaches.some(({ part }) => appliesBrake(system.partById.get(part)))),
  );
  return (part) => {
    const circuits = system.circuits.filter((circuit) => isIn(part, circuit));
    const near = onParts.filter((read) => circuits.some((circuit) => isIn(read.part, circuit)));
    const wide = circuits.some((circuit) => braking.has(circuit)) ? onVehicle : [];
    return [...near.map(({ stated }) => stated), ...wide].reduce<StatedPressure | undefined>(
      (most, each) => (most !== undefined && most.pressure.value >= each.pressure.value ? most : each),
      undefined,
    );
  };
}

const isIn = (part: Part, { chamber, reachOf }: Circuit): boolean =>
  reachOf.has(part.id) || chamber.startsWith(`${part.id}.`);

const appliesBrake = (part: Part | undefined): boolean => part?.kind === 'cylinder' || part?.kind === 'caliper';

function statedBy({ quantity, value, origin }: Reading, part: Part | undefined): readonly StatedPressure[] {
  if (quantity !== 'line-pressure' || !isPressure(value)) return [];
  const [pressure, written] = [estimateOf(value.stated), writtenOf(value.stated)];
  if (pressure === undefined || written === undefined) return [];
  return [{ pressure, written, where: part?.label ?? 'the vehicle', subject: part?.id, origin }];
}

const isPressure = (measured: Measured<Dimension>): measured is Measured<'pressure'> =>
  measured.dimension === 'pressure';
