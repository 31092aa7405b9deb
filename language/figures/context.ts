/** What the computations of one system share, each thing worked out once and only when asked for. */
import type { PartKind } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { System } from '../system/system.ts';
import type { Figure } from './figure.ts';
import { pressuresReadIn, type StatedPressure } from './highest-pressure.ts';
import type { Network } from './network/application.ts';
import { networkOf } from './network/network.ts';
import { partVolumes } from './part-volumes.ts';
import { once, remembered } from './remembered.ts';
import type { Development } from './route-geometry.ts';
import { centrelineLength } from './run-centreline-length.ts';
import { developmentOf } from './run-route.ts';
import { type Braking, brakingOf } from './vehicle/braking.ts';

export interface FigureContext {
  readonly system: System;
  /** The developed route; undefined for a part without one. */
  developmentOf(part: Part): Development | undefined;
  centrelineLengthOf(run: Part): Figure<'length'>;
  /** The fluid in a part; undefined for one that holds none. */
  volumeOf(part: Part): Figure<'volume'> | undefined;
  /** The highest line pressure read in the circuits of a part. */
  highestPressureAt(part: Part): StatedPressure | undefined;
  /** Pressures, strokes and pedal travel for a push. */
  readonly network: Network;
  /** Brakes, axles and load cases. */
  readonly braking: Braking;
}

export function contextOf(system: System): FigureContext {
  const volumesByKind = new Map<PartKind, (typeof partVolumes)[number]>();
  for (const row of partVolumes) for (const kind of row.kinds) volumesByKind.set(kind, row);
  const pressures = once(() => pressuresReadIn(system));
  const network = once(() => networkOf(context));
  const braking = once(() => brakingOf(context));
  const context: FigureContext = {
    system,
    developmentOf: remembered(developmentOf),
    centrelineLengthOf: remembered((run) => centrelineLength(run, context)),
    volumeOf: remembered((part) => volumesByKind.get(part.kind)?.compute(part, context)),
    highestPressureAt: (part) => pressures()(part),
    get network() {
      return network();
    },
    get braking() {
      return braking();
    },
  };
  return context;
}
