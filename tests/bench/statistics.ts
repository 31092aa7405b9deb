/** Medians and growth, the two figures that a benchmark on a shared machine can honestly give. */

/** The middle of the values; NaN of none. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.ceil((sorted.length - 1) / 2)]];
  return low === undefined || high === undefined ? Number.NaN : (low + high) / 2;
}

export interface Sized {
  readonly size: number;
  readonly value: number;
}

/** The exponent e of value ~ size^e between two measurements; NaN where either is missing. */
export function growthExponent(small: Sized, large: Sized): number {
  return Math.log(large.value / small.value) / Math.log(large.size / small.size);
}

/** Runs `work` until `runs` are measured, the first `warmUp` not counted; milliseconds each. */
export async function timed(work: () => unknown, { runs, warmUp }: { runs: number; warmUp: number }) {
  const times: number[] = [];
  for (let run = 0; run < warmUp + runs; run++) {
    const begun = performance.now();
    await work();
    if (run >= warmUp) times.push(performance.now() - begun);
  }
  return median(times);
}
