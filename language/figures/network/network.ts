/** The hydraulic network of one system: prepared once, pressed as often as it is asked. */

import type { Part, PartId } from '../../system/part.ts';
import { pressureBodiesOf } from '../../system/pressure-bodies.ts';
import type { FigureContext } from '../context.ts';
import { once, remembered } from '../remembered.ts';
import type { Network } from './application.ts';
import { chamberModel } from './chamber-state.ts';
import { circuitModel } from './circuit-model.ts';
import { findPush } from './find-push.ts';
import { trainOf } from './pedal-train.ts';
import { press } from './press.ts';

/** Works out nothing yet; every circuit is traced when a pedal over it is first pushed. */
export function networkOf(context: FigureContext): Network {
  const { system } = context;
  const meetings = once(() => pressureBodiesOf(system).meetings);
  const chamberOf = remembered((part: Part) => chamberModel(part, circuitModel(part, context, meetings()), context));
  const train = remembered((pedal: PartId | undefined) => trainOf(system, pedal));
  const network: Network = {
    applied: (application) => press(application, { system, train: train(application.pedal), chamberOf }),
    pushFor: (target) => findPush(target, network),
  };
  return network;
}
