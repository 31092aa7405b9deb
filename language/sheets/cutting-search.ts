/** Bin packing in whole numbers: the least number of bins there can be, a quick packing, and a search for the best. */

/** Which items, by index, go into each bin. */
export type Bins = readonly (readonly number[])[];

export interface Found {
  readonly bins: Bins;
  /** No packing does with fewer. */
  readonly atLeast: number;
}

/** A vehicle's lines are settled in a few hundred steps; these bounds keep any file within a tenth of a second. */
const mostSteps = 50_000;
const mostItems = 400;

/** Each item into the first bin with room. `sizes` fall, and none is above `room`. */
export function firstFitDecreasing(sizes: readonly number[], room: number): Bins {
  const bins: { items: number[]; free: number }[] = [];
  for (const [index, size] of sizes.entries()) {
    const bin = bins.find(({ free }) => free >= size);
    if (bin === undefined) bins.push({ items: [index], free: room - size });
    else {
      bin.items.push(index);
      bin.free -= size;
    }
  }
  return bins.map(({ items }) => items);
}

/** Lower bound L2: for every threshold, bins that large items open and what the middling ones need beyond them. */
export function leastBins(sizes: readonly number[], room: number): number {
  const thresholds = [0, ...sizes.filter((size) => size <= room / 2)];
  return thresholds.reduce((most, small) => {
    const alone = sizes.filter((size) => size > room - small);
    const large = sizes.filter((size) => size <= room - small && size > room / 2);
    const middling = sizes.filter((size) => size <= room / 2 && size >= small);
    const spare = large.length * room - total(large);
    const more = Math.max(0, Math.ceil((total(middling) - spare) / room));
    return Math.max(most, alone.length + large.length + more);
  }, 0);
}

const total = (sizes: readonly number[]): number => sizes.reduce((sum, size) => sum + size, 0);

/** Tries to do better than `start`, item by item from the largest, until `below` is reached or the steps run out. */
export function search(
  sizes: readonly number[],
  room: number,
  { start, below }: { readonly start: Bins; readonly below: number },
): Found {
  if (sizes.length > mostItems) return { bins: start, atLeast: below };
  const bins: { items: number[]; free: number }[] = [];
  const rest = sizes.map((_, index) => total(sizes.slice(index)));
  let best = start;
  let steps = 0;

  const place = (index: number): void => {
    if (best.length === below || steps >= mostSteps) return;
    steps += 1;
    const size = sizes[index];
    if (size === undefined) {
      if (bins.length < best.length) best = bins.map(({ items }) => [...items]);
      return;
    }
    const free = bins.reduce((sum, bin) => sum + bin.free, 0);
    if (bins.length + Math.max(0, Math.ceil(((rest[index] ?? 0) - free) / room)) >= best.length) return;
    const tried = new Set<number>();
    for (const bin of bins) {
      // Bins with equal room are alike to this item.
      if (bin.free < size || tried.has(bin.free)) continue;
      tried.add(bin.free);
      bin.items.push(index);
      bin.free -= size;
      place(index + 1);
      bin.free += size;
      bin.items.pop();
    }
    if (bins.length + 1 < best.length) {
      bins.push({ items: [index], free: room - size });
      place(index + 1);
      bins.pop();
    }
  };

  place(0);
  return { bins: best, atLeast: steps < mostSteps ? best.length : below };
}
