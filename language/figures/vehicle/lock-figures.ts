/** Which axle locks first in a load case, on which road, and from which deceleration the rear axle is ahead. */
import type { Si } from '../../quantity/index.ts';
import { roads, roadsSource } from '../../standards/braking-standards.ts';
import { fromMemory } from '../../standards/source.ts';
import type { FigureContext } from '../context.ts';
import type { Figure, Result } from '../figure.ts';
import { unknownResult } from '../result.ts';
import { type BalanceOf, balanceOf } from './balance-of.ts';
import { greatestPressure } from './brake-curve.ts';
import type { LoadFacts } from './load-case.ts';
import { firstLock, type RearAhead, rearAhead } from './lock-order.ts';
import { decelerationLike, inGravities, loadSubject, plainPressure, roughly } from './rough.ts';

const adhesionSource = fromMemory(
  'adhesion used = brake force / load of each axle, as in Gillespie, Fundamentals of Vehicle Dynamics, chapter 3; the pressure raised until an axle uses all there is',
);
const formula = 'brake force of each axle / its load at that deceleration, while the pressure rises';
const most = plainPressure(greatestPressure);

/** In m/s²: one figure for each road. Undefined where no fluid brakes a wheel. */
export function firstLocks(facts: LoadFacts, context: FigureContext): readonly Figure<'acceleration'>[] {
  const axles = context.braking.axles();
  const balance = axles && balanceOf(facts, axles);
  if (balance === undefined) return [];
  return roads.map((road): Figure<'acceleration'> => {
    const frame = {
      id: `load.first-lock-${road.id}`,
      subject: loadSubject(facts),
      written: decelerationLike(facts),
      formula,
      inputs: [
        ...balance.inputs,
        { name: `adhesion of ${road.words}`, text: `${road.adhesion}`, origin: undefined, source: roadsSource },
      ],
      source: adhesionSource,
    };
    const on = `${road.words} (adhesion ${road.adhesion})`;
    if (balance.kind === 'waits') {
      const title = `deceleration at which the first axle locks on ${on}`;
      return { ...frame, title, notes: [], result: unknownResult('acceleration', balance.needs) };
    }
    const lock = firstLock(balance.question, road.adhesion);
    if (lock === undefined) {
      const title = `deceleration at which the first axle locks on ${on}`;
      const need = { name: `more than ${most} in the lines: below it no axle locks`, origin: facts.load.origin };
      return { ...frame, title, notes: balance.notes, result: unknownResult('acceleration', [need]) };
    }
    const { braked, master, axle } = lock;
    const whose = axle === 'both' ? 'both axles lock' : `the ${axle} axle locks first`;
    const share = Math.round((100 * braked.z) / road.adhesion);
    return {
      ...frame,
      title: `deceleration at which ${whose} on ${on}`,
      notes: [
        `${inGravities(braked.z)}, at ${plainPressure(master)} in the master: ${share} % of what the road gives.`,
        ...(axle === 'rear' ? ['A rear axle that locks first lets the vehicle spin.'] : []),
        ...balance.notes,
      ],
      result: rough(braked.deceleration, balance),
    };
  });
}

/** In m/s². Undefined where the rear axle never gets ahead, or nothing is known of it. */
export function rearFirstAbove(facts: LoadFacts, context: FigureContext): Figure<'acceleration'> | undefined {
  const axles = context.braking.axles();
  const balance = axles && balanceOf(facts, axles);
  return balance && aheadFigure(facts, balance, { id: 'load.rear-first-above', without: '' });
}

/** The same with plain tube in the place of the proportioning valve: what the valve is worth. */
export function rearFirstWithoutValve(facts: LoadFacts, context: FigureContext): Figure<'acceleration'> | undefined {
  const [axles, without] = [context.braking.axles(), context.braking.axlesWithoutValves()];
  if (axles?.kind !== 'ready' || axles.lines.proportioning.length === 0 || without === undefined) return undefined;
  const names = axles.lines.proportioning.map(({ label }) => label).join(' and ');
  const words = { id: 'load.rear-first-above-without-valve', without: `, without ${names}` };
  return aheadFigure(facts, balanceOf(facts, without), words);
}

function aheadFigure(
  facts: LoadFacts,
  balance: BalanceOf,
  { id, without }: { readonly id: string; readonly without: string },
): Figure<'acceleration'> | undefined {
  if (balance.kind === 'waits') return undefined;
  const spans = rearAhead(balance.question);
  const first = spans.find(isInEarnest);
  if (first === undefined) return undefined;
  const { z, deceleration } = first.from.braked;
  const end = first.to === undefined ? [] : [`Up to ${inGravities(first.to.braked.z)}.`];
  return {
    id,
    subject: loadSubject(facts),
    title: `deceleration above which the rear axle is the first to lock${without}`,
    written: decelerationLike(facts),
    formula,
    inputs: balance.inputs,
    source: adhesionSource,
    notes: [
      `${inGravities(z)}, at ${plainPressure(first.from.master)} in the master.`,
      z > 1
        ? 'Hardly a road gives as much: on the others the front axle locks first.'
        : 'On a road of less adhesion than that the front axle locks first, on one of more the rear.',
      ...end,
      ...spans.filter((span) => span !== first).map(wordsForSpan),
      ...balance.notes,
    ],
    result: rough(deceleration, balance),
  };
}

/** Gentle braking locks nothing: a hold-off valve puts the rear ahead there on purpose, and standards begin above it. */
const isInEarnest = ({ to }: RearAhead): boolean => to === undefined || to.braked.z > gentleRatio;
const gentleRatio = 0.15;

function wordsForSpan({ from, to }: RearAhead): string {
  const until = to === undefined ? '' : ` to ${inGravities(to.braked.z)}`;
  return `From ${inGravities(from.braked.z)}${until} too the rear axle uses more adhesion than the front one.`;
}

function rough(value: Si<'acceleration'>, { from }: BalanceOf & { readonly kind: 'ready' }): Result<'acceleration'> {
  return { kind: 'known', dimension: 'acceleration', estimate: roughly(value, from), leftOut: [] };
}
