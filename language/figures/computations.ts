/** The table of all computations; a new figure is a new row. */
import { brakeFactor, brakeFactorReverse } from './brakes/factor-figures.ts';
import { frictionSensitivity } from './brakes/friction-sensitivity.ts';
import { brakeForceAtPush, brakeTorqueAtPush } from './brakes/push-figures.ts';
import { caliperArea } from './caliper-area.ts';
import { chamberArea } from './chamber.ts';
import { circuitVolume } from './circuit-volume.ts';
import type { CircuitComputation, LoadComputation, PartComputation, SystemComputation } from './computation.ts';
import { cylinderArea, cylinderSecondArea, cylinderTotalArea } from './cylinder-area.ts';
import { cylinderDisplacementPerMm } from './cylinder-displacement.ts';
import { partVolumes } from './part-volumes.ts';
import { pedalRodForce } from './pedal-rod-force.ts';
import { pedalTravelAtPush } from './pedal-travel.ts';
import { chamberPressureAtPush, wheelPressureAtPush } from './pressure-at-push.ts';
import { runBurst, runBurstBarlow } from './run-burst.ts';
import { runBurstFactor } from './run-burst-factor.ts';
import { cutLength } from './run-cut-length.ts';
import { runWorkingPressure } from './run-working-pressure.ts';
import { actuatorArea, slaveArea } from './slave-area.ts';
import { chamberReserve, chamberStrokeAtPush } from './stroke-at-push.ts';
import { systemVolume } from './system-volume.ts';
import { failedDecelerationAsked, serviceDecelerationAsked } from './vehicle/asked-figures.ts';
import { loadBehindFront, loadFrontShare, loadMass, loadTransfer } from './vehicle/load-figures.ts';
import {
  adhesionAtPush,
  decelerationAtPush,
  frontForceShareAtPush,
  idealFrontShareAtPush,
} from './vehicle/load-push-figures.ts';
import { firstLocks, rearFirstAbove, rearFirstWithoutValve } from './vehicle/lock-figures.ts';
import { lockOrderLead, utilisationMargin } from './vehicle/order-figures.ts';
import { parkingGrade, parkingPull } from './vehicle/parking-figures.ts';
import { pushForServiceStop } from './vehicle/push-for-stop.ts';

/** In the order in which a part's figures are told. */
export const partComputations: readonly PartComputation[] = [
  { kinds: ['run'], compute: (run, context) => context.centrelineLengthOf(run) },
  { kinds: ['run'], compute: cutLength },
  { kinds: ['run'], compute: runBurst },
  { kinds: ['run'], compute: runBurstBarlow },
  { kinds: ['run'], compute: runWorkingPressure },
  { kinds: ['run'], compute: runBurstFactor },
  { kinds: ['cylinder'], compute: cylinderArea },
  { kinds: ['cylinder'], compute: cylinderSecondArea },
  { kinds: ['cylinder'], compute: cylinderTotalArea },
  { kinds: ['cylinder'], compute: cylinderDisplacementPerMm },
  { kinds: ['caliper'], compute: caliperArea },
  { kinds: ['clutch-slave'], compute: slaveArea },
  { kinds: ['actuator'], compute: actuatorArea },
  { kinds: ['master', 'primary', 'secondary'], compute: chamberArea },
  { kinds: ['pedal', 'clutch-pedal'], compute: pedalRodForce },
  { kinds: ['pedal', 'clutch-pedal'], compute: pedalTravelAtPush },
  { kinds: ['master', 'primary', 'secondary'], compute: chamberPressureAtPush },
  { kinds: ['master', 'primary', 'secondary'], compute: chamberStrokeAtPush },
  { kinds: ['master', 'primary', 'secondary'], compute: chamberReserve },
  { kinds: ['cylinder', 'caliper', 'clutch-slave', 'actuator'], compute: wheelPressureAtPush },
  { kinds: ['drum-brake'], compute: brakeFactor },
  { kinds: ['drum-brake'], compute: brakeFactorReverse },
  { kinds: ['drum-brake', 'disc-brake'], compute: frictionSensitivity },
  { kinds: ['drum-brake', 'disc-brake'], compute: brakeTorqueAtPush },
  { kinds: ['drum-brake', 'disc-brake'], compute: brakeForceAtPush },
  { kinds: partVolumes.flatMap(({ kinds }) => kinds), compute: (part, context) => context.volumeOf(part) },
];

export const circuitComputations: readonly CircuitComputation[] = [{ compute: circuitVolume }];

/** In the order in which a load case is told: at rest, at the stated push, at the limit, parked. */
export const loadComputations: readonly LoadComputation[] = [
  { compute: loadMass },
  { compute: loadFrontShare },
  { compute: loadBehindFront },
  { compute: loadTransfer },
  { compute: decelerationAtPush },
  { compute: (facts, context) => adhesionAtPush(facts, context, 'front') },
  { compute: (facts, context) => adhesionAtPush(facts, context, 'rear') },
  { compute: frontForceShareAtPush },
  { compute: idealFrontShareAtPush },
  { compute: pushForServiceStop },
  { compute: firstLocks },
  { compute: rearFirstAbove },
  { compute: rearFirstWithoutValve },
  { compute: lockOrderLead },
  { compute: utilisationMargin },
  { compute: (facts, context) => parkingGrade(facts, context, 'uphill') },
  { compute: (facts, context) => parkingGrade(facts, context, 'downhill') },
  { compute: parkingPull },
];

export const systemComputations: readonly SystemComputation[] = [
  { compute: systemVolume },
  { compute: serviceDecelerationAsked },
  { compute: failedDecelerationAsked },
];
