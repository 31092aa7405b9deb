/** What the stated push on the pedal does to a vehicle in a load case: deceleration, and the adhesion each axle uses. */
import { combineEstimates, type Estimate, plainUnit, si, writtenIn } from '../../quantity/index.ts';
import { standardGravity } from '../../standards/gravity.ts';
import type { FigureContext } from '../context.ts';
import type { Figure, Need } from '../figure.ts';
import { eachOnce, unknownResult } from '../result.ts';
import { writeResult } from '../write-result.ts';
import { newtons } from '../writing.ts';
import { type LoadedCase, type LoadFacts, loadedCase } from './load-case.ts';
import type { PushedAxles } from './pushed-brakes.ts';
import { decelerationLike, inGravities, knownOf, loadSubject, roughly } from './rough.ts';
import { brakedBy, idealForces, staticsSource } from './statics.ts';

type Ready = {
  readonly forces: (PushedAxles & { readonly kind: 'ready' })['forces'];
  readonly loaded: LoadedCase & { readonly kind: 'ready' };
};

/** In m/s², as long as no wheel locks. Undefined where the file has no brake pedal. */
export function decelerationAtPush(facts: LoadFacts, context: FigureContext): Figure<'acceleration'> | undefined {
  const asked = atPush(facts, context);
  if (asked === undefined) return undefined;
  const { ready, frame } = asked;
  const named = {
    ...frame,
    id: 'load.deceleration-at-push',
    title: 'deceleration at the stated push',
    written: decelerationLike(facts),
    formula: 'brake forces of all wheels / mass',
  };
  if (ready === undefined) return { ...named, result: unknownResult('acceleration', asked.needs) };
  const { forces, loaded } = ready;
  const { adhesion, z } = brakedBy(middles(forces), loaded.loaded);
  const most = Math.max(adhesion.front, adhesion.rear);
  const slowed = combineEstimates(
    'acceleration',
    (front, rear, weight) => ((front + rear) / weight) * standardGravity,
    forces.front,
    forces.rear,
    loaded.weight,
  );
  return {
    ...named,
    result: knownOf('acceleration', slowed, facts),
    notes: [
      Number.isFinite(most)
        ? `${inGravities(z)}, on a road with an adhesion of ${most.toFixed(2)} or more; with less a wheel locks.`
        : `${inGravities(z)}: before that the rear wheels lift, so no road gives it.`,
    ],
  };
}

/** Brake force over load of an axle at that deceleration. */
export function adhesionAtPush(
  facts: LoadFacts,
  context: FigureContext,
  axle: 'front' | 'rear',
): Figure<'number'> | undefined {
  return shareAtPush(facts, context, {
    id: `load.${axle}-adhesion-at-push`,
    title: `adhesion that the ${axle} axle uses at the stated push`,
    formula: 'brake force of the axle / its load at that deceleration',
    measure: ({ forces, loaded }) => brakedBy(middles(forces), loaded.loaded).adhesion[axle],
  });
}

/** Of the brake force, 0 to 1. */
export function frontForceShareAtPush(facts: LoadFacts, context: FigureContext): Figure<'number'> | undefined {
  return shareAtPush(facts, context, {
    id: 'load.front-brake-share-at-push',
    title: 'share of the brake force in front at the stated push',
    formula: 'brake force in front / brake force of both axles',
    measure: ({ forces: { front, rear } }) => front.value / (front.value + rear.value),
  });
}

/** The share with which both axles would use the same adhesion at that deceleration. */
export function idealFrontShareAtPush(facts: LoadFacts, context: FigureContext): Figure<'number'> | undefined {
  return shareAtPush(facts, context, {
    id: 'load.ideal-front-share-at-push',
    title: 'share in front with which both axles would use the same adhesion',
    formula: 'load on the front axle at that deceleration / weight',
    measure: ({ forces, loaded }) => {
      const { z } = brakedBy(middles(forces), loaded.loaded);
      const ideal = idealForces(loaded.loaded, z);
      return ideal.front / (ideal.front + ideal.rear);
    },
  });
}

interface Share extends Pick<Figure, 'id' | 'title' | 'formula'> {
  readonly measure: (ready: Ready) => number;
}

function shareAtPush(facts: LoadFacts, context: FigureContext, share: Share): Figure<'number'> | undefined {
  const asked = atPush(facts, context);
  if (asked === undefined) return undefined;
  const { measure, ...about } = share;
  const named = { ...asked.frame, ...about, written: writtenIn(plainUnit) };
  if (asked.ready === undefined) return { ...named, result: unknownResult('number', asked.needs) };
  const { forces, loaded } = asked.ready;
  const from: readonly Estimate[] = [forces.front, forces.rear, ...loaded.from];
  return { ...named, result: knownOf('number', roughly(si('number', measure(asked.ready)), from), facts) };
}

function atPush(facts: LoadFacts, context: FigureContext) {
  const pushed = context.braking.atPush();
  if (pushed === undefined || context.braking.axles() === undefined) return undefined;
  const loaded = loadedCase(facts);
  const axles = context.braking.axleForcesAtPush();
  const needs: readonly Need[] = eachOnce([
    ...pushed.needs,
    ...(axles?.kind === 'waits' ? axles.needs : []),
    ...(loaded.kind === 'waits' ? loaded.needs : []),
  ]);
  const ready: Ready | undefined =
    axles?.kind === 'ready' && loaded.kind === 'ready' ? { forces: axles.forces, loaded } : undefined;
  const forceInputs =
    ready === undefined
      ? []
      : (['front', 'rear'] as const).map((axle) => ({
          name: `brake force of the ${axle} axle`,
          text: writeResult({
            result: { kind: 'known', dimension: 'force', estimate: ready.forces[axle], leftOut: [] },
            written: pushed.push.kind === 'given' ? pushed.push.written : newtons,
          }),
          origin: undefined,
          source: undefined,
        }));
  const frame = {
    subject: loadSubject(facts),
    inputs: [pushed.push.input, ...forceInputs, ...loaded.inputs],
    source: staticsSource,
    notes: [],
  };
  return { ready, needs, frame };
}

const middles = ({ front, rear }: Ready['forces']) => ({ front: front.value, rear: rear.value });
