/** The chambers of a train under a force, with the floor under the pedal taken into account. */
import type { Estimate } from '../../quantity/index.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part, PartId } from '../../system/part.ts';
import { type ChamberModel, type Pushed, pushedChamber } from './chamber-state.ts';
import { type Pressing, type PressingOptions, pressingOf } from './pressing.ts';
import { risingRoot } from './rising-root.ts';
import { amountOf, sizeOf } from './sizes.ts';
import { against, type End, type Ends, endsOf } from './spread.ts';

export interface PushedChamber {
  readonly model: ChamberModel;
  readonly pressing: Pressing;
  readonly open: boolean;
  /** Undefined where its area or its circuit is not known. */
  readonly pushed: Pushed | undefined;
}

export function pushedChamberOf(model: ChamberModel, options: PressingOptions): PushedChamber {
  const pressing = pressingOf(model.circuit, options);
  const open = [...options.failed].some((part) => model.circuit.holders.has(part));
  const { area, areaNeeds } = model;
  const pushed = area && areaNeeds.length === 0 ? pushedChamber({ ...model, area }, pressing, { open }) : undefined;
  return { model, pressing, open, pushed };
}

/** The part that lets the fluid out. */
export function leakOf({ model }: PushedChamber, failed: ReadonlySet<PartId>): PartId {
  return [...model.circuit.holders].find((part) => failed.has(part)) ?? model.part.id;
}

/** m, of the push-rod; undefined where a chamber’s is not known. */
export function rodStroke(chambers: readonly PushedChamber[], force: Ends, end: End): number | undefined {
  let sum = 0;
  for (const { pushed, open, model } of chambers) {
    if (pushed === undefined || (open && model.stroke === undefined)) return undefined;
    sum += pushed.stroke(force, end);
  }
  return sum;
}

export interface Floored {
  /** N that the pistons take; what is left of the push the floor takes. */
  readonly force: Ends;
  readonly atFloor: boolean;
}

/** `force` is that of the push, without a floor. */
export function flooredForce(pedal: Part, chambers: readonly PushedChamber[], force: Ends): Floored {
  const room = rodRoom(pedal);
  if (room === undefined || rodStroke(chambers, force, 'value') === undefined) return { force, atFloor: false };
  const strokeAt = (each: number, end: End) =>
    rodStroke(chambers, { low: each, value: each, high: each }, end) ?? Number.POSITIVE_INFINITY;
  const limited = (end: End): number =>
    risingRoot((each) => strokeAt(each, against[end]), room[end], { low: 0, high: force[end] });
  const value = limited('value');
  return {
    force: { low: limited('low'), value, high: limited('high') },
    atFloor: value < force.value,
  };
}

/** m that the push-rod can go between the end of the free play and the floor; undefined where it is not said. */
function rodRoom(pedal: Part): Ends | undefined {
  const travel = sizeOf(pedal, properties.travel);
  const ratio = sizeOf(pedal, properties.ratio);
  if (travel === undefined || ratio === undefined) return undefined;
  const play = freePlayOf(pedal);
  return endsOf((end) => Math.max(0, travel[end] - (play?.[against[end]] ?? 0)) / ratio[against[end]]);
}

export function freePlayOf(pedal: Part): Estimate<'length'> | undefined {
  return amountOf(pedal, properties.freePlay);
}

/** m at the pad, from m at the rod. */
export function padTravel(pedal: Part, rod: Ends): Ends | undefined {
  const ratio = sizeOf(pedal, properties.ratio);
  if (ratio === undefined) return undefined;
  const play = freePlayOf(pedal);
  return endsOf((end) => (play?.[end] ?? 0) + ratio[end] * rod[end]);
}
