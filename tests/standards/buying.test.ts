import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { si } from '../../language/quantity/index.ts';
import { bottlesFor, fluidBottles } from '../../language/standards/fluid-bottles.ts';
import { banjoWashers } from '../../language/standards/washers.ts';

const litres = (volume: number) => si('volume', volume / 1000);
const bought = (volume: number) =>
  bottlesFor(litres(volume), fluidBottles.litres).map(({ count, bottle }) => `${count} × ${bottle.words}`);

describe('bottles', () => {
  it.each([
    [0.3, ['1 × 0.5 L bottle']],
    [0.5, ['1 × 0.5 L bottle']],
    [0.7, ['1 × 1 L bottle']],
    [1, ['1 × 1 L bottle']],
    [1.2, ['1 × 1 L bottle', '1 × 0.5 L bottle']],
    [1.6, ['2 × 1 L bottle']],
    [0, []],
    [Number.NaN, []],
  ])('for %f L are %j', (volume, words) => expect(bought(volume)).toEqual(words));

  it('are no fewer by any other choice, and none that holds less is enough', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), (millilitres) => {
        const [large, small] = fluidBottles.litres.map(({ words }) => words);
        const got = bottlesFor(si('volume', millilitres * 1e-6), fluidBottles.litres);
        const count = (words: string | undefined) => got.find(({ bottle }) => bottle.words === words)?.count ?? 0;
        const [ones, halves] = [count(large), count(small)];
        expect(ones * 1000 + halves * 500).toBeGreaterThanOrEqual(millilitres);
        const choices = Array.from({ length: 10 }, (_, a) =>
          Array.from({ length: 20 }, (__, b) => [a, b] as const),
        ).flat();
        const enough = choices.filter(([a, b]) => a * 1000 + b * 500 >= millilitres);
        const fewest = Math.min(...enough.map(([a, b]) => a + b));
        const least = Math.min(...enough.filter(([a, b]) => a + b === fewest).map(([a, b]) => a * 1000 + b * 500));
        expect([ones + halves, ones * 1000 + halves * 500]).toEqual([fewest, least]);
      }),
    );
  });

  // 1 US liquid pint = 473.1765 mL (NIST SP 811, appendix B.8).
  it('of a US pint hold 473 mL', () => {
    const pints = (millilitres: number) => bottlesFor(si('volume', millilitres * 1e-6), fluidBottles.pints)[0]?.count;
    expect([pints(473), pints(474)]).toEqual([1, 2]);
  });
});

// Public service manuals: new washers, one on each side of the banjo. Two eyes on one bolt: common practice.
it('a banjo takes a washer on each side of every eye, the one between two eyes counted once', () => {
  expect([0, 1, 2].map(banjoWashers)).toEqual([0, 2, 3]);
});
