/** What the stated push on the pedal makes of the brakes: pressures from the network, torques from the brakes. */
import { combineEstimates, type Estimate, sumEstimates } from '../../quantity/index.ts';
import type { Part } from '../../system/part.ts';
import { wheelBrakesOf } from '../../system/wheel-brakes.ts';
import { type Axle, wheelOf } from '../../system/wheels.ts';
import { brakeTorque } from '../brakes/brake-torque.ts';
import type { FigureContext } from '../context.ts';
import type { Need, Result } from '../figure.ts';
import type { Applied } from '../network/application.ts';
import { type AtPush, atPushOf } from '../pedal-push.ts';
import { eachOnce, knownResult, unknownResult } from '../result.ts';
import { tyreRadius } from './axle-brakes.ts';

/** Of the brake pedal that stands first; undefined where the file has none, so that nobody asks for a push. */
export function pushedBrakes(context: FigureContext): AtPush | undefined {
  const pedal = context.system.parts.find(({ kind }) => kind === 'pedal');
  return pedal && atPushOf(pedal, context);
}

/** In N·m; undefined for what no fluid brakes. */
export function torqueAt(brake: Part, applied: Applied, { braking }: FigureContext): Result<'torque'> | undefined {
  const law = braking.lawOf(brake);
  if (law !== undefined && applied.chambers.length === 0) return unknownResult('torque', applied.waitsFor);
  return law && brakeTorque(law, (part) => applied.pressureAt(part.id));
}

/** In N, at the tyre of the wheel. */
export function tyreForceAt(brake: Part, applied: Applied, context: FigureContext): Result<'force'> | undefined {
  const torque = torqueAt(brake, applied, context);
  if (torque === undefined) return undefined;
  const { axle } = wheelOf(brake);
  if (axle === undefined) {
    return unknownResult('force', [{ name: `wheel of ${brake.label}`, origin: brake.nameOrigin }]);
  }
  const tyre = tyreRadius(context.system, axle);
  if (torque.kind === 'unknown' || tyre.kind === 'missing') {
    const needs = torque.kind === 'unknown' ? torque.waitsFor : [];
    return unknownResult('force', [...needs, ...(tyre.kind === 'missing' ? tyre.needs : [])]);
  }
  const force = combineEstimates('force', (turning, radius) => turning / radius, torque.estimate, tyre.estimate);
  return knownResult('force', force, brake);
}

export type PushedAxles =
  | { readonly kind: 'ready'; readonly forces: Readonly<Record<Axle, Estimate<'force'>>> }
  | { readonly kind: 'waits'; readonly needs: readonly Need[] };

/** In N, at all tyres of each axle; waits for what any of its brakes waits for. */
export function axleForcesAt(applied: Applied, context: FigureContext): PushedAxles {
  const found = wheelBrakesOf(context.system).flatMap(({ brake, wheel }) => {
    const force = tyreForceAt(brake, applied, context);
    return force === undefined ? [] : [{ axle: wheel.axle, force }];
  });
  const needs = eachOnce(found.flatMap(({ force }) => (force.kind === 'unknown' ? force.waitsFor : [])));
  if (needs.length > 0) return { kind: 'waits', needs };
  const sumOn = (on: Axle): Estimate<'force'> =>
    sumEstimates(
      'force',
      found.flatMap(({ axle, force }) => (axle === on && force.kind === 'known' ? [force.estimate] : [])),
    );
  return { kind: 'ready', forces: { front: sumOn('front'), rear: sumOn('rear') } };
}
