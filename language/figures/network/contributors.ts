/** Where the fluid went that a chamber displaced. */
import { isKnown, si } from '../../quantity/index.ts';
import type { PartId } from '../../system/part.ts';
import type { Contributor } from './application.ts';
import { leakOf } from './chamber-push.ts';
import type { ChamberUnder } from './chamber-results.ts';
import { type Ends, marksOf, spreadOf } from './spread.ts';

/** Those that took any; together they are what the piston displaced behind its closed port. */
export function contributorsOf(
  { chamber }: ChamberUnder,
  force: Ends,
  failed: ReadonlySet<PartId>,
): readonly Contributor[] {
  const { model, pushed, pressing, open } = chamber;
  if (pushed === undefined) return [];
  const id = model.part.id;
  if (open) {
    if (model.stroke === undefined) return [];
    const lost = pushed.displaced(force);
    const volume = spreadOf('volume', () => lost, marksOf([model.stroke]));
    return isKnown(volume) && lost > 0 ? [{ chamber: id, part: leakOf(chamber, failed), what: 'leak', volume }] : [];
  }
  const at = {
    low: si('pressure', pushed.pressure(force, 'low')),
    value: si('pressure', pushed.pressure(force, 'value')),
    high: si('pressure', pushed.pressure(force, 'high')),
  };
  return pressing.each(at).flatMap(({ taking, taken }): readonly Contributor[] => {
    const volume = spreadOf('volume', (end) => taken[end], taking.marks);
    return isKnown(volume) && volume.value > 0 ? [{ chamber: id, part: taking.part, what: taking.what, volume }] : [];
  });
}
