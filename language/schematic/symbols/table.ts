/** The symbol table: one row for each symbol name. */
import type { SymbolName } from '../picture.ts';
import { booster, inlineBooster, masterSingle, masterTandem, parkingBrake, pedal, reservoir } from './actuation.ts';
import { actuator, clutchSlave } from './consumers.ts';
import type { PartSymbol } from './drawing.ts';
import { adapter, banjoBolt, bleeder, block, bulkhead, cross, joint, openEnd, plug, tee, union } from './junctions.ts';
import {
  checkValve,
  meteringValve,
  opaqueBlock,
  pressureDifferentialValve,
  pressureSwitch,
  proportioningValve,
  residualValve,
} from './valves.ts';
import { discBrake, drumBrake } from './wheel-brakes.ts';

export const symbols: Readonly<Record<SymbolName, PartSymbol>> = {
  pedal,
  booster,
  'inline-booster': inlineBooster,
  'master-single': masterSingle,
  'master-tandem': masterTandem,
  reservoir,
  'parking-brake': parkingBrake,
  tee,
  cross,
  block,
  union,
  bulkhead,
  adapter,
  'banjo-bolt': banjoBolt,
  plug,
  joint,
  'open-end': openEnd,
  bleeder,
  'residual-valve': residualValve,
  'check-valve': checkValve,
  'proportioning-valve': proportioningValve,
  'metering-valve': meteringValve,
  'pressure-differential-valve': pressureDifferentialValve,
  'opaque-block': opaqueBlock,
  switch: pressureSwitch,
  'drum-brake': drumBrake,
  'disc-brake': discBrake,
  'clutch-slave': clutchSlave,
  actuator,
};
