/** The push that brings something about, by straight lines between pushes that fall short and pushes that do not. */
import { type Si, si } from '../../quantity/index.ts';
import type { Applied, Network, PushAnswer, PushTarget } from './application.ts';

/** Far beyond what a leg can do. */
const usualMost = si('force', 3000);

/** The least push to within a millionth of the greatest; the measure rises with the push or stays. */
export function findPush(target: PushTarget, network: Pick<Network, 'applied'>): PushAnswer {
  const { measure, reach, most = usualMost, ...rest } = target;
  const at = (push: Si<'force'>): Applied => network.applied({ ...rest, push });
  const strongest = at(most);
  const reached = measure(strongest);
  if (reached === undefined || Number.isNaN(reached)) return { kind: 'unknown', waitsFor: strongest.waitsFor };
  if (reached < reach) return { kind: 'out-of-reach', most, reached };
  const push = si(
    'force',
    leastReaching((force) => measure(at(si('force', force))) ?? 0, { reach, most, reached }),
  );
  return { kind: 'push', push, applied: at(push) };
}

const mostSteps = 120;

/**
 * The line through the two latest pushes meets the target at once where the measure is straight: a guess a little beyond
 * that place and one a little short of it then close the bracket. Every third guess halves it, so that it ends whatever
 * the measure does.
 */
function leastReaching(
  measure: (push: number) => number,
  { reach, most, reached }: { readonly reach: number; readonly most: number; readonly reached: number },
): number {
  const within = most * 1e-6;
  let low = { push: 0, value: measure(0) };
  let high = { push: most, value: reached };
  if (low.value >= reach) return 0;
  let [before, latest] = [low, high];
  for (let step = 0; step < mostSteps && high.push - low.push > within; step++) {
    const line = before.push + ((reach - before.value) / (latest.value - before.value)) * (latest.push - before.push);
    const isInside = low.push < line && line < high.push;
    const beside = line + (step % 3 === 0 ? 0.4 : -0.4) * within;
    const guess = step % 3 === 2 || !isInside ? (low.push + high.push) / 2 : beside;
    const push = Math.min(Math.max(guess, low.push + 0.1 * within), high.push - 0.1 * within);
    const found = { push, value: measure(push) };
    if (found.value >= reach) high = found;
    else low = found;
    [before, latest] = [latest, found];
  }
  return high.push;
}
