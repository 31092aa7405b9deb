/** The hydraulic network of one system: prepared once, pressed as often as it is asked. */

import { properties } from '../../system/kinds/index.ts';
import type { Part, PartId } from '../../system/part.ts';
import { pressureBodiesOf } from '../../system/pressure-bodies.ts';
import type { System } from '../../system/system.ts';
import type { FigureContext } from '../context.ts';
import { once, remembered } from '../remembered.ts';
import type { Network } from './application.ts';
import { type ChamberModel, chamberModel } from './chamber-state.ts';
import { circuitModel } from './circuit-model.ts';
import { findPush } from './find-push.ts';
import { type FoundTrain, trainOf } from './pedal-train.ts';
import { press } from './press.ts';
import { amountOf } from './sizes.ts';

/** Works out nothing yet; every circuit is traced when a pedal over it is first pushed. */
export function networkOf(context: FigureContext): Network {
  const { system } = context;
  const meetings = once(() => pressureBodiesOf(system).meetings);
  const chamberOf = remembered((part: Part) => chamberModel(part, circuitModel(part, context, meetings()), context));
  const train = remembered((pedal: PartId | undefined) => trainOf(system, pedal));
  const pedals = once(() => pedalsByPart(system, (pedal) => pressedBy(train(pedal), chamberOf)));
  const network: Network = {
    applied: (application) => press(application, { system, train: train(application.pedal), chamberOf }),
    pushFor: (target) => findPush(target, network),
    pedalOf: (part) => pedals().get(part),
    atStatedPush: remembered((pedal) => {
      const part = system.partById.get(pedal);
      const push = part && amountOf(part, properties.push);
      return push && network.applied({ push, pedal });
    }),
  };
  return network;
}

function pedalsByPart(system: System, pressed: (pedal: PartId) => Iterable<PartId>): ReadonlyMap<PartId, Part> {
  const found = new Map<PartId, Part>();
  for (const pedal of system.parts.filter(({ kind }) => kind === 'pedal' || kind === 'clutch-pedal')) {
    for (const part of pressed(pedal.id)) if (!found.has(part)) found.set(part, pedal);
  }
  return found;
}

/** The master too, of a tandem: its chambers are. */
function pressedBy(found: FoundTrain, chamberOf: (part: Part) => ChamberModel): readonly PartId[] {
  if (found.kind === 'none') return [];
  const { master, chambers } = found.train;
  return [master.id, ...chambers.flatMap((chamber) => [...chamberOf(chamber).circuit.zonesOfPart.keys()])];
}
