/** The push that brings something about, by halving. */
import { type Si, si } from '../../quantity/index.ts';
import type { Applied, Network, PushAnswer, PushTarget } from './application.ts';
import { risingRoot } from './rising-root.ts';

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
  const short = (push: number): number => ((measure(at(si('force', push))) ?? 0) >= reach ? 1 : 0);
  const within = most * 1e-6;
  const below = risingRoot(short, 0.5, { low: 0, high: most, within });
  const push = si('force', short(below) >= 1 ? below : Math.min(most, below + within));
  return { kind: 'push', push, applied: at(push) };
}
