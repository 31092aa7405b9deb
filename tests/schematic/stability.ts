/** How much a picture moved: how far each part that stayed went, and how many pairs changed their order. */
import type { Placed } from '../../language/schematic/placed.ts';

export interface Movement {
  /** Pixels by which each part in both pictures moved. */
  readonly shifts: readonly number[];
  readonly pairs: number;
  /** Pairs of parts that stood clearly apart, across or along, and now stand the other way round. */
  readonly swaps: number;
}

const clearlyApart = 4;

export function compare(before: Placed, after: Placed): Movement {
  const now = new Map(middles(after));
  const kept = middles(before).flatMap(([id, was]) => {
    const is = now.get(id);
    return is === undefined ? [] : [{ was, is }];
  });
  let [pairs, swaps] = [0, 0];
  kept.forEach((a, i) => {
    for (const b of kept.slice(i + 1)) {
      for (const axis of ['x', 'y'] as const) {
        const difference = a.was[axis] - b.was[axis];
        if (Math.abs(difference) < clearlyApart) continue;
        pairs += 1;
        if (difference * (a.is[axis] - b.is[axis]) < 0) swaps += 1;
      }
    }
  });
  return { shifts: kept.map(({ was, is }) => Math.hypot(was.x - is.x, was.y - is.y)), pairs, swaps };
}

const middles = (placed: Placed) =>
  placed.nodes.map(
    ({ node, at, box }) =>
      [node.id, { x: at.x + box.origin.x + box.core.width / 2, y: at.y + box.origin.y + box.core.height / 2 }] as const,
  );
