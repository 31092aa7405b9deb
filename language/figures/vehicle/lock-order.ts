/** Which axle uses more adhesion, and which locks first, while the pressure in the master rises. */
import type { BrakeCurve, BrakePoint } from './brake-curve.ts';
import { type Braked, brakedBy, type Loaded } from './statics.ts';

export interface BalanceQuestion {
  readonly curve: BrakeCurve;
  readonly loaded: Loaded;
}

export interface Balance extends BrakePoint {
  readonly braked: Braked;
}

/** A span in which the rear axle uses more adhesion than the front one; `to` is absent where it stays so. */
export interface RearAhead {
  readonly from: Balance;
  readonly to: Balance | undefined;
}

export interface FirstLock extends Balance {
  readonly axle: 'front' | 'rear' | 'both';
}

/** Braking ratios beyond this are not looked at: no tyre gives as much. */
const greatestRatio = 1.5;

/** What it comes to at a pressure in the master (Pa). */
export function balanceAt({ curve, loaded }: BalanceQuestion, master: number): Balance {
  const forces = curve.forcesAt(master);
  return { master, forces, braked: brakedBy(forces, loaded) };
}

/** In rising order; the ends are exact, a span that lies between two samples is not seen. */
export function rearAhead(question: BalanceQuestion): readonly RearAhead[] {
  const found: RearAhead[] = [];
  let from: Balance | undefined;
  let before: Balance | undefined;
  for (const here of samplesOf(question)) {
    const isAhead = rearLeads(here);
    if (before !== undefined && isAhead !== rearLeads(before)) {
      const turn = turningPoint(question, (each) => rearLeads(each) === isAhead, [before, here]);
      if (isAhead) from = turn;
      else if (from !== undefined) found.push({ from, to: turn });
    }
    if (!isAhead) from = undefined;
    before = here;
  }
  return from === undefined ? found : [...found, { from, to: undefined }];
}

/** The least pressure at which an axle uses this much adhesion; undefined where none comes to it. */
export function firstLock(question: BalanceQuestion, adhesion: number): FirstLock | undefined {
  const locks = ({ braked }: Balance): boolean => Math.max(braked.adhesion.front, braked.adhesion.rear) >= adhesion;
  let before: Balance | undefined;
  for (const here of samplesOf(question)) {
    if (locks(here)) {
      const locked = before === undefined ? here : turningPoint(question, locks, [before, here]);
      const { front, rear } = locked.braked.adhesion;
      const together = Math.abs(front - rear) <= 1e-9 * adhesion;
      return { ...locked, axle: together ? 'both' : front > rear ? 'front' : 'rear' };
    }
    before = here;
  }
  return undefined;
}

/** The samples between two braking ratios. */
export function balancesBetween(
  question: BalanceQuestion,
  between: { readonly from: number; readonly to: number },
): readonly Balance[] {
  return samplesOf(question).filter(({ braked: { z } }) => z >= between.from && z <= between.to);
}

function samplesOf({ curve, loaded }: BalanceQuestion): readonly Balance[] {
  const balances = curve.samples.map((point) => ({ ...point, braked: brakedBy(point.forces, loaded) }));
  const beyond = balances.findIndex(({ braked }) => braked.z > greatestRatio);
  return beyond < 0 ? balances : balances.slice(0, beyond + 1);
}

const rearLeads = ({ braked: { adhesion } }: Balance): boolean => adhesion.rear > adhesion.front;

/** Where between two samples something comes true, which it is at the second one. */
function turningPoint(
  question: BalanceQuestion,
  isTrue: (balance: Balance) => boolean,
  [before, after]: readonly [Balance, Balance],
): Balance {
  let [low, found] = [before.master, after];
  for (let step = 0; step < 50; step++) {
    const middle = balanceAt(question, low + (found.master - low) / 2);
    if (isTrue(middle)) found = middle;
    else low = middle.master;
  }
  return found;
}
