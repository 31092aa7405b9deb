/** Where a rising function meets a value, by halving a bracket: always ends, never leaves the bracket. */

/** Enough halvings to use up the digits of a number. */
const mostSteps = 120;

/**
 * The argument in [low, high] at which `rising` reaches `target`, low or high if it does so outside. Any units. The
 * function has to rise or stay; where it jumps over the target the place of the jump is returned, from below.
 */
export function risingRoot(
  rising: (at: number) => number,
  target: number,
  bracket: { readonly low: number; readonly high: number; readonly within?: number },
): number {
  let { low, high } = bracket;
  const within = bracket.within ?? 0;
  if (rising(high) <= target) return high;
  for (let step = 0; step < mostSteps && high - low > within; step++) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) break;
    if (rising(middle) <= target) low = middle;
    else high = middle;
  }
  return low;
}
