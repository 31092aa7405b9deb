/**
 * Which pieces to cut from which length of stock, with as few lengths as can be: bin packing, solved exactly by branch
 * and bound. Bounds: first-fit decreasing from above; L2 of Martello and Toth (Knapsack Problems, 1990, chapter 8, from
 * memory) from below. The search is bounded, and the plan says whether it is proved to be the best.
 */
import { type Si, si } from '../quantity/index.ts';
import { firstFitDecreasing, leastBins, search } from './cutting-search.ts';

export interface Piece<Of> {
  readonly length: Si<'length'>;
  readonly of: Of;
}

export interface CuttingOptions {
  /** One length of stock, in m, more than zero. */
  readonly stock: Si<'length'>;
  /** What each cut takes, in m. A piece that ends with the stock needs none. */
  readonly kerf: Si<'length'>;
}

export interface CutLength<Of> {
  /** Longest first. */
  readonly pieces: readonly Piece<Of>[];
  /** What stays of this length. */
  readonly left: Si<'length'>;
}

export interface CuttingPlan<Of> {
  /** The fullest first, so that what is left over is in the last and in one piece. */
  readonly lengths: readonly CutLength<Of>[];
  /** No plan can do with fewer lengths than this; equal to their number where the plan is proved to be the best. */
  readonly atLeast: number;
  /** Pieces that are longer than the stock. */
  readonly tooLong: readonly Piece<Of>[];
  /** Pieces whose length is no positive number. */
  readonly notKnown: readonly Piece<Of>[];
}

/** Lengths are counted in these (m): finer than any tape, and whole numbers add up without error. */
const grain = 1e-6;
const upward = (length: number): number => Math.ceil(length / grain - 1e-3);

/** Plans the cuts. Never throws: what cannot be cut is handed back by name. */
export function planCuts<Of>(pieces: readonly Piece<Of>[], { stock, kerf }: CuttingOptions): CuttingPlan<Of> {
  const known = pieces.filter(({ length }) => Number.isFinite(length) && length > 0);
  const notKnown = pieces.filter((piece) => !known.includes(piece));
  const [cut, whole] = [upward(kerf), Math.floor(stock / grain + 1e-3)];
  // The last piece of a length may end with it, so each length is counted one cut longer.
  const room = whole + cut;
  const sized = known.map((piece) => ({ piece, size: upward(piece.length) + cut }));
  const fitting = sized.filter(({ size }) => size <= room).sort((a, b) => b.size - a.size);
  const sizes = fitting.map(({ size }) => size);

  const below = leastBins(sizes, room);
  const first = firstFitDecreasing(sizes, room);
  const found = first.length > below ? search(sizes, room, { start: first, below }) : { bins: first, atLeast: below };
  const lengths = found.bins.map((bin): CutLength<Of> => {
    const used = bin.reduce((sum, index) => sum + (sizes[index] ?? 0), 0);
    return {
      pieces: bin.flatMap((index) => fitting[index]?.piece ?? []),
      left: si('length', Math.max(0, Math.min(whole, whole - used)) * grain),
    };
  });
  return {
    lengths: lengths.sort((a, b) => a.left - b.left),
    atLeast: found.atLeast,
    tooLong: sized.filter((each) => !fitting.includes(each)).map(({ piece }) => piece),
    notKnown,
  };
}
