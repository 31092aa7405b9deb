/** The brake forces of both axles over the pressure in the master, sampled once and looked at for every load case. */
import { pressureMarks } from '../../standards/line-pressure.ts';
import { once } from '../remembered.ts';
import type { AxleForces } from './statics.ts';

export interface BrakePoint {
  /** Gauge Pa in the first chamber of the master. */
  readonly master: number;
  /** N at the tyres of each axle. */
  readonly forces: AxleForces;
}

export interface BrakeCurve {
  /** Neither axle's force falls where the pressure rises. */
  forcesAt(master: number): AxleForces;
  /** From no pressure to the greatest that a brake of a vehicle sees, 1 bar apart. */
  readonly samples: readonly BrakePoint[];
}

export const greatestPressure: number = pressureMarks.highestInService.pressure;
const bar = 1e5;

export function brakeCurve(forcesAt: (master: number) => AxleForces): BrakeCurve {
  const steps = Math.round(greatestPressure / bar);
  const samples = once(() =>
    Array.from({ length: steps + 1 }, (_, step) => ({ master: step * bar, forces: forcesAt(step * bar) })),
  );
  return {
    forcesAt,
    get samples() {
      return samples();
    },
  };
}
