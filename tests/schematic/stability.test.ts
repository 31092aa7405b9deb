import { afterAll, describe, expect, it } from 'vitest';
import type { Picture } from '../../language/schematic/picture.ts';
import type { Placed, Placement } from '../../language/schematic/placed.ts';
import { placementText, readPlacement } from '../../language/schematic/placement-text.ts';
import { inlineEngine } from '../../server/layout/inline.ts';
import { edits } from './edits.ts';
import { exampleFiles, examplePicture } from './examples.ts';
import { placedBy } from './placing.ts';
import { compare, type Movement } from './stability.ts';

const engine = inlineEngine();
afterAll(() => engine.dispose());

const placed = (picture: Picture, previous?: Placement): Promise<Placed> => placedBy(engine, picture, previous);

const bases = exampleFiles.map((file) => examplePicture(file, 'planned'));

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

describe('a small edit', () => {
  it('moves parts by less than 10 px in the middle and swaps less than 2 % of the pairs', async () => {
    const movements: Movement[] = [];
    for (const base of bases) {
      const before = await placed(base);
      for (const { picture } of edits(base)) movements.push(compare(before, await placed(picture, before.placement)));
    }
    const shifts = movements.flatMap((movement) => movement.shifts);
    const pairs = movements.reduce((sum, movement) => sum + movement.pairs, 0);
    const swaps = movements.reduce((sum, movement) => sum + movement.swaps, 0);
    expect(movements.length).toBeGreaterThan(200);
    expect(median(shifts)).toBeLessThan(10);
    expect(swaps / pairs).toBeLessThan(0.02);
  }, 240_000);

  it.each(exampleFiles)('that is none moves nothing in %s', async (file) => {
    const picture = examplePicture(file, 'planned');
    const before = await placed(picture);
    const after = await placed(picture, before.placement);
    expect(Math.max(...compare(before, after).shifts)).toBe(0);
  });
});

describe('a placement kept as text', () => {
  it('comes back as it was', async () => {
    for (const base of bases) {
      const { placement } = await placed(base);
      expect(readPlacement(placementText(placement))).toEqual(placement);
    }
  });

  it.each(['', 'null', '[]', '{"a":1}', '{"a":{"x":"1","y":2}}', '{"a":{"x":1}}', '{"a":{"x":1e999,"y":0}}'])(
    'that is none (%s) counts as no placement',
    (text) => {
      expect(readPlacement(text)).toBeUndefined();
    },
  );
});
