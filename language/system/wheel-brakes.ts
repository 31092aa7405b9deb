/** The wheel brakes of a system with the cylinders and calipers that apply them. */
import type { Part } from './part.ts';
import type { System } from './system.ts';
import { type Wheel, wheelOf } from './wheels.ts';

export interface WheelBrake {
  readonly brake: Part;
  readonly wheel: Wheel;
  /** Its cylinders or its caliper; none for a brake that is worked by cable or rod alone. */
  readonly actuated: readonly Part[];
}

/** In the order of the text. */
export function wheelBrakesOf(system: System): readonly WheelBrake[] {
  return system.parts
    .filter(({ kind }) => kind === 'drum-brake' || kind === 'disc-brake')
    .map((brake) => ({ brake, wheel: wheelOf(brake), actuated: within(brake).filter(isActuated) }));
}

/** The part and all that is in it. */
export function within(part: Part): readonly Part[] {
  return [part, ...part.parts.flatMap(within)];
}

const isActuated = ({ kind }: Part): boolean => kind === 'cylinder' || kind === 'caliper';
