/** What the figures of brakes and vehicle share, each worked out once and only when asked for. */
import type { Part, PartId } from '../../system/part.ts';
import { type BrakeLaw, brakeLaw } from '../brakes/brake-law.ts';
import type { FigureContext } from '../context.ts';
import type { AtPush } from '../pedal-push.ts';
import { once, remembered } from '../remembered.ts';
import { type AxleBrakes, axleBrakes } from './axle-brakes.ts';
import { type LoadFacts, loadFacts } from './load-case.ts';
import { axleForcesAt, type PushedAxles, pushedBrakes } from './pushed-brakes.ts';

export interface Braking {
  /** Going forward; undefined for what no fluid brakes. */
  lawOf(brake: Part): BrakeLaw | undefined;
  /** Undefined where no fluid brakes a wheel. */
  axles(): AxleBrakes | undefined;
  /** The same with plain tube in the place of every proportioning valve. */
  axlesWithoutValves(): AxleBrakes | undefined;
  /** Those of the file, in its order; of two with one name the first. */
  loads(): readonly LoadFacts[];
  /** The pedal and what its stated push brings about; undefined where no pedal of the brakes is in the file. */
  atPush(): AtPush | undefined;
  /** Undefined where no push is stated. */
  axleForcesAtPush(): PushedAxles | undefined;
}

export function brakingOf(context: FigureContext): Braking {
  const { system } = context;
  const valves = new Set<PartId>(
    [...system.partById.values()].filter(({ kind }) => kind === 'proportioning-valve').map(({ id }) => id),
  );
  const atPush = once(() => pushedBrakes(context));
  return {
    lawOf: remembered((brake) => brakeLaw(brake, 'forward')),
    axles: once(() => axleBrakes(context, new Set())),
    axlesWithoutValves: once(() => axleBrakes(context, valves)),
    loads: once(() => {
      const { vehicle } = system;
      const names = new Set<string>();
      const first = (vehicle?.loads ?? []).filter(({ name }) => !names.has(name) && names.add(name));
      return vehicle === undefined ? [] : first.map((load) => loadFacts(load, vehicle));
    }),
    atPush,
    axleForcesAtPush: once(() => {
      const applied = atPush()?.applied;
      return applied && axleForcesAt(applied, context);
    }),
  };
}
