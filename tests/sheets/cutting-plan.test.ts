/**
 * Laws of bin packing; optimality against a brute force over all partitions (definition of the problem) and against
 * Martello and Toth's classical bound (from memory).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { si } from '../../language/quantity/index.ts';
import { type CuttingOptions, type Piece, planCuts } from '../../language/sheets/cutting-plan.ts';
import { firstFitDecreasing } from '../../language/sheets/cutting-search.ts';

const m = (length: number) => si('length', length);
const pieces = (...lengths: readonly number[]): Piece<number>[] =>
  lengths.map((length, index) => ({ length: m(length), of: index }));
const options = (stock: number, kerf = 0): CuttingOptions => ({ stock: m(stock), kerf: m(kerf) });

/** Fewest bins over all ways to share the pieces out. */
function bruteForce(sizes: readonly number[], room: number): number {
  let best = sizes.length;
  const free: number[] = [];
  const go = (index: number): void => {
    const size = sizes[index];
    if (size === undefined) {
      best = Math.min(best, free.length);
      return;
    }
    for (let bin = 0; bin < free.length; bin += 1) {
      if ((free[bin] ?? 0) < size) continue;
      free[bin] = (free[bin] ?? 0) - size;
      go(index + 1);
      free[bin] = (free[bin] ?? 0) + size;
    }
    free.push(room - size);
    go(index + 1);
    free.pop();
  };
  go(0);
  return best;
}

describe('a cutting plan', () => {
  it('beats first fit where first fit needs one length more', () => {
    // First fit takes 4 + 4 together and then wants a third length.
    const plan = planCuts(pieces(0.4, 0.4, 0.3, 0.3, 0.3, 0.3), options(1));
    expect(firstFitDecreasing([4, 4, 3, 3, 3, 3], 10)).toHaveLength(3);
    expect(plan.lengths).toHaveLength(2);
    expect(plan.atLeast).toBe(2);
  });

  it('lets the last piece of a length end with it, without a cut', () => {
    expect(planCuts(pieces(0.5, 0.499), options(1, 0.001)).lengths).toHaveLength(1);
    expect(planCuts(pieces(0.5, 0.5), options(1, 0.001)).lengths).toHaveLength(2);
    expect(planCuts(pieces(1), options(1, 0.001)).lengths.map(({ left }) => left)).toEqual([0]);
  });

  it('hands back what is longer than the stock and what has no length', () => {
    const plan = planCuts(pieces(2, 0.5, Number.NaN, -1, 0, Number.POSITIVE_INFINITY), options(1));
    expect(plan.tooLong.map(({ of }) => of)).toEqual([0]);
    expect(plan.notKnown.map(({ of }) => of)).toEqual([2, 3, 4, 5]);
    expect(plan.lengths.map((each) => each.pieces.map(({ of }) => of))).toEqual([[1]]);
  });

  it('of nothing is empty', () => {
    expect(planCuts([], options(1))).toEqual({ lengths: [], atLeast: 0, tooLong: [], notKnown: [] });
  });

  it('of three dozen awkward pieces comes soon and says how good it is', () => {
    const plan = planCuts(pieces(...Array.from({ length: 36 }, (_, i) => 0.26 + (i % 9) * 0.013)), options(1));
    expect(plan.lengths.length).toBeGreaterThanOrEqual(plan.atLeast);
    expect(plan.lengths.length).toBeLessThanOrEqual(13);
  });
});

const many = fc.array(fc.integer({ min: 20, max: 900 }), { maxLength: 24 });
const few = fc.array(fc.integer({ min: 100, max: 900 }), { maxLength: 8 });
const inMillimetres = (sizes: readonly number[]) => pieces(...sizes.map((size) => size / 1000));

describe('every cutting plan', () => {
  it('covers all pieces once, and no length is cut beyond its end', () => {
    fc.assert(
      fc.property(many, fc.integer({ min: 0, max: 5 }), (sizes, kerf) => {
        const plan = planCuts(inMillimetres(sizes), options(1, kerf / 1000));
        const cut = plan.lengths.flatMap((each) => each.pieces.map(({ of }) => of));
        expect([...cut].sort((a, b) => a - b)).toEqual(sizes.map((_, index) => index));
        for (const { pieces: taken, left } of plan.lengths) {
          const length = taken.reduce((sum, each) => sum + each.length, 0);
          const cuts = length + (taken.length - 1) * (kerf / 1000);
          expect(cuts).toBeLessThanOrEqual(1 + 1e-9);
          expect(left).toBeGreaterThanOrEqual(0);
          expect(left).toBeLessThanOrEqual(1 - length + 1e-9);
        }
      }),
    );
  });

  it('is never worse than first fit, nor better than its own lower bound', () => {
    fc.assert(
      fc.property(many, (sizes) => {
        const plan = planCuts(inMillimetres(sizes), options(1));
        const falling = [...sizes].sort((a, b) => b - a);
        expect(plan.lengths.length).toBeLessThanOrEqual(firstFitDecreasing(falling, 1000).length);
        expect(plan.lengths.length).toBeGreaterThanOrEqual(plan.atLeast);
        expect(plan.atLeast).toBeGreaterThanOrEqual(Math.ceil(sizes.reduce((a, b) => a + b, 0) / 1000));
      }),
    );
  });

  it('of a few pieces is as good as trying every way, and says so', () => {
    fc.assert(
      fc.property(few, fc.integer({ min: 0, max: 40 }), (sizes, kerf) => {
        const plan = planCuts(inMillimetres(sizes), options(1, kerf / 1000));
        const best = bruteForce(
          sizes.map((size) => size + kerf),
          1000 + kerf,
        );
        expect([plan.lengths.length, plan.atLeast]).toEqual([best, best]);
      }),
    );
  });

  it('does not depend on the order of the pieces', () => {
    fc.assert(
      fc.property(many, (sizes) => {
        const count = (order: readonly number[]) => planCuts(inMillimetres(order), options(1)).lengths.length;
        expect(count([...sizes].reverse())).toBe(count(sizes));
      }),
    );
  });
});
