/** On which grade a vehicle stands still, held by its brakes and by the grip of its tyres. */

import { fromMemory } from '../../standards/source.ts';
import type { AxleForces, Loaded } from './statics.ts';

/** `uphill`: its front points up the grade, so that it would roll backward. */
export type Heading = 'uphill' | 'downhill';

export const gradeSource = fromMemory(
  'statics of a vehicle on a grade: weight × sine of its angle against the forces at the tyres, as in Limpert, Brake Design and Safety',
);

/** Loads on the axles (N) of a vehicle that stands on a grade, rise over run. Below zero where an axle lifts. */
export function loadsOnGrade(loaded: Loaded, grade: number, heading: Heading): { front: number; rear: number } {
  const { weight, wheelbase, behindFront, gravityHeight } = loaded;
  const slant = Math.hypot(1, grade);
  const lean = heading === 'uphill' ? grade * gravityHeight : -grade * gravityHeight;
  const rear = (weight * (behindFront + lean)) / (wheelbase * slant);
  return { front: weight / slant - rear, rear };
}

export interface Held {
  /** Rise over run. */
  readonly grade: number;
  /** What gives way beyond it. */
  readonly limit: 'brake' | 'grip';
}

/** Up to this grade, 45°, it is looked. */
const steepest = 1;

/**
 * The steepest grade that it stands on, with brake forces at the tyres of each axle (N) and an adhesion of the road.
 * Rolling resistance is not counted.
 */
export function heldGrade(
  loaded: Loaded,
  held: { readonly forces: AxleForces; readonly adhesion: number; readonly heading: Heading },
): Held {
  const { forces, adhesion, heading } = held;
  const holds = (grade: number): boolean => {
    const loads = loadsOnGrade(loaded, grade, heading);
    const grip = (force: number, load: number): number => Math.min(force, Math.max(0, adhesion * load));
    const pulling = (loaded.weight * grade) / Math.hypot(1, grade);
    return pulling <= grip(forces.front, loads.front) + grip(forces.rear, loads.rear);
  };
  let [low, high] = [0, steepest];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  const loads = loadsOnGrade(loaded, low, heading);
  const slips =
    (forces.front > 0 && forces.front > adhesion * loads.front) ||
    (forces.rear > 0 && forces.rear > adhesion * loads.rear);
  return { grade: low, limit: slips ? 'grip' : 'brake' };
}

/** Force at the tyres (N) that a grade, rise over run, asks of all brakes together: weight × sine of its angle. */
export function forceOnGrade({ weight }: Loaded, grade: number): number {
  return (weight * grade) / Math.hypot(1, grade);
}
