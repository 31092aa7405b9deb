/** What the forces and the travel of a pedal come to, told as results. */
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { Need, Result } from '../figure.ts';
import { eachOnce, knownResult, unknownResult } from '../result.ts';
import type { ChamberState } from './application.ts';
import { freePlayOf, type PushedChamber, padTravel, rodStroke } from './chamber-push.ts';
import { sizeOf } from './sizes.ts';
import { type Ends, endsOf, type Marks, marksOf, spreadOf } from './spread.ts';

export function forceResult(
  pedal: Part,
  force: Ends | undefined,
  of: { readonly marks: Marks; readonly needs: readonly Need[] },
): Result<'force'> {
  if (force === undefined) return unknownResult('force', of.needs);
  return knownResult(
    'force',
    spreadOf('force', (end) => force[end], of.marks),
    pedal,
  );
}

/** Free play and the strokes of all chambers; the whole travel where the pedal has met the floor. */
export function travelResult(
  pedal: Part,
  states: readonly ChamberState[],
  at: { readonly atFloor: boolean; readonly force: Ends | undefined; readonly chambers: readonly PushedChamber[] },
): Result<'length'> {
  const travel = sizeOf(pedal, properties.travel);
  if (at.atFloor && travel !== undefined) return knownResult('length', travel, pedal);
  const strokes = states.map(({ stroke }) => stroke);
  const needs = strokes.flatMap((stroke) => (stroke.kind === 'unknown' ? stroke.waitsFor : []));
  const { force } = at;
  if (force === undefined || needs.length > 0) return unknownResult('length', needs);
  const pad = padTravel(
    pedal,
    endsOf((end) => rodStroke(at.chambers, force, end) ?? Number.NaN),
  );
  if (pad === undefined) return unknownResult('length', needs);
  const play = freePlayOf(pedal);
  const ratio = sizeOf(pedal, properties.ratio);
  const estimates = strokes.flatMap((stroke) => (stroke.kind === 'known' ? stroke.estimate : []));
  const marks = marksOf([...estimates, ...[play, ratio].filter((each) => each !== undefined)]);
  const result = knownResult(
    'length',
    spreadOf('length', (end) => pad[end], marks),
    pedal,
  );
  if (result.kind === 'unknown') return result;
  const leftOut = strokes.flatMap((stroke) => (stroke.kind === 'known' ? stroke.leftOut : []));
  const noPlay = play === undefined ? [{ name: `free-play of ${pedal.label}`, origin: pedal.nameOrigin }] : [];
  return { ...result, leftOut: eachOnce([...leftOut, ...noPlay]) };
}
