/** The torque of a wheel brake at the pressures that stand in it. */
import { combineEstimates, type Estimate, sumEstimates } from '../../quantity/index.ts';
import type { Part } from '../../system/part.ts';
import type { Need, Result } from '../figure.ts';
import { knownResult, unknownResult } from '../result.ts';
import type { BrakeLaw, ReadyLaw } from './brake-law.ts';

/** The gauge pressure in a cylinder or caliper; undefined where nothing presses it. */
export type PressureAt = (part: Part) => Result<'pressure'> | undefined;

/**
 * In N·m, whichever way it turns; 0 up to the push-out pressure. Waits for the facts of the brake and for pressures
 * that are not known. Of several cylinders one that nothing presses adds nothing; where none is pressed there is no torque
 * to tell.
 */
export function brakeTorque(law: BrakeLaw, pressureAt: PressureAt): Result<'torque'> {
  const parts = law.kind === 'ready' ? law.pressed.map(({ part }) => part) : law.actuated;
  const pressures = parts.map(pressureAt);
  const isPressed = pressures.some((pressure) => pressure !== undefined);
  const needs: readonly Need[] = [
    ...(isPressed ? [] : [{ name: `a line that presses ${law.brake.label}`, origin: law.brake.nameOrigin }]),
    ...(law.kind === 'waits' ? law.needs : []),
    ...pressures.flatMap((pressure) => (pressure?.kind === 'unknown' ? pressure.waitsFor : [])),
  ];
  if (law.kind === 'waits' || needs.length > 0) return unknownResult('torque', needs);
  const torques = law.pressed.flatMap(({ perPascal }, index): readonly Estimate<'torque'>[] => {
    const pressure = pressures[index];
    return pressure?.kind === 'known' ? [torqueAt(law, perPascal, pressure.estimate)] : [];
  });
  return knownResult('torque', sumEstimates('torque', torques), law.brake);
}

function torqueAt({ pushOut }: ReadyLaw, perPascal: Estimate<'torque'>, pressure: Estimate<'pressure'>) {
  const above = (each: number, at: number, from: number): number => each * Math.max(0, at - from);
  return combineEstimates('torque', above, perPascal, pressure, pushOut);
}
