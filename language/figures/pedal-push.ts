/** What the figures for the push that a pedal states have in common: whose push it is, or what it waits for. */
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Need } from './figure.ts';
import { type Given, givenFact } from './given.ts';
import type { Applied } from './network/application.ts';

export interface AtPush {
  readonly pedal: Part;
  readonly push: Given<'force'>;
  /** Undefined where no push is stated. */
  readonly applied: Applied | undefined;
  /** The push, where it is not stated. */
  readonly needs: readonly Need[];
}

/** For a pedal itself. */
export function atPushOf(pedal: Part, { network }: FigureContext): AtPush {
  const push = givenFact(pedal, properties.push);
  return {
    pedal,
    push,
    applied: push.kind === 'given' ? network.atStatedPush(pedal.id) : undefined,
    needs: push.kind === 'missing' ? push.needs : [],
  };
}

/** For a part that a pedal presses; undefined for one that none does. */
export function atPushOn(part: Part, context: FigureContext): AtPush | undefined {
  const pedal = context.network.pedalOf(part.id);
  return pedal && atPushOf(pedal, context);
}
