/** One push on one pedal: forces, pressures, strokes, and where the fluid went. */
import type { Part, PartId } from '../../system/part.ts';
import type { System } from '../../system/system.ts';
import { within } from '../../system/wheel-brakes.ts';
import type { Need, Result } from '../figure.ts';
import { once } from '../remembered.ts';
import { eachOnce, unknownResult } from '../result.ts';
import type { Application, Applied } from './application.ts';
import { assumptionsOf } from './assumptions.ts';
import { flooredForce, pushedChamberOf } from './chamber-push.ts';
import { chamberResults } from './chamber-results.ts';
import type { ChamberModel } from './chamber-state.ts';
import { contributorsOf } from './contributors.ts';
import { airTaking } from './fluid-taking.ts';
import { pedalForces } from './pedal-forces.ts';
import { forceResult, travelResult } from './pedal-results.ts';
import type { FoundTrain } from './pedal-train.ts';
import { pressuresIn } from './pressures-in.ts';
import { asEstimate } from './spread.ts';

export interface Prepared {
  readonly system: System;
  readonly train: FoundTrain;
  chamberOf(part: Part): ChamberModel;
}

export function press(application: Application, { system, train: found, chamberOf }: Prepared): Applied {
  if (found.kind === 'none') return nothingPressed(found.pedal, found.needs);
  const { train } = found;
  const failed = withParts(application.failed ?? new Set(), system);
  const { air } = application;
  const chambers = train.chambers.map((part) =>
    pushedChamberOf(chamberOf(part), {
      failed,
      extra: air !== undefined && air > 0 ? [airTaking(part.id, air)] : [],
    }),
  );
  const push = asEstimate(application.push);
  const forces = pedalForces(train, push, {
    failed,
    primaryArea: chambers[0]?.model.area,
    areaNeeds: chambers[0]?.model.areaNeeds ?? [],
  });
  const forceNeeds = [...forces.rodNeeds, ...forces.pistonNeeds];
  const floored = forces.piston && flooredForce(train.pedal, chambers, forces.piston);
  const states = chambers.map((chamber) =>
    chamberResults(chamber, {
      force: floored?.force,
      atFloor: floored?.atFloor ?? false,
      marks: forces.pistonMarks,
      needs: forceNeeds,
      all: chambers,
    }),
  );
  const assumptions = assumptionsOf(train, states, { forces, air, atFloor: floored?.atFloor ?? false });
  const contributors = once(() =>
    floored === undefined ? [] : states.flatMap((each) => contributorsOf(each, floored.force, failed)),
  );
  const pressures = pressuresIn(system, states);
  const atFloor = floored?.atFloor ?? false;
  const pedalTravel = travelResult(
    train.pedal,
    states.map(({ state }) => state),
    { atFloor, force: floored?.force, chambers },
  );
  return {
    pedal: train.pedal.id,
    chambers: states.map(({ state }) => state),
    pressureAt: pressures.at,
    pressureAtPort: pressures.atPort,
    pedalTravel,
    atFloor,
    rodForce: forceResult(train.pedal, forces.rod, { marks: forces.rodMarks, needs: forces.rodNeeds }),
    pistonForce: forceResult(train.pedal, forces.piston, { marks: forces.pistonMarks, needs: forceNeeds }),
    get contributors() {
      return contributors();
    },
    pressureAssumptions: assumptions.pressure,
    assumptions: [...assumptions.pressure, ...assumptions.travel],
    waitsFor: eachOnce([
      ...forceNeeds,
      ...states.flatMap(({ state, lacks }) => [...needsIn(state.pressure), ...needsIn(state.stroke), ...lacks]),
      ...needsIn(pedalTravel),
    ]),
  };
}

function nothingPressed(pedal: Part | undefined, needs: readonly Need[]): Applied {
  return {
    pedal: pedal?.id,
    chambers: [],
    pressureAt: () => undefined,
    pressureAtPort: () => undefined,
    pedalTravel: unknownResult('length', needs),
    atFloor: false,
    rodForce: unknownResult('force', needs),
    pistonForce: unknownResult('force', needs),
    contributors: [],
    pressureAssumptions: [],
    assumptions: [],
    waitsFor: needs,
  };
}

/** Whatever is in a part that failed has failed with it. */
function withParts(failed: ReadonlySet<PartId>, { partById }: System): ReadonlySet<PartId> {
  const parts = [...failed].flatMap((id) => partById.get(id) ?? []);
  return new Set(parts.flatMap(within).map(({ id }) => id));
}

function needsIn(result: Result): readonly Need[] {
  return result.kind === 'unknown' ? result.waitsFor : result.leftOut;
}
