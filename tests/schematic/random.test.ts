import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import type { Picture, SymbolName } from '../../language/schematic/picture.ts';
import { svgOf } from '../../language/schematic/svg.ts';
import { symbols } from '../../language/schematic/symbols/table.ts';
import { inlineEngine } from '../../server/layout/inline.ts';
import { overlap, symbolArea } from './geometry.ts';
import { placedBy } from './placing.ts';
import { line, node } from './sketch.ts';
import { readXml, withClass } from './xml.ts';

const engine = inlineEngine();
afterAll(() => engine.dispose());

const names = Object.keys(symbols).filter((name): name is SymbolName => Object.hasOwn(symbols, name));

/** Any parts joined in any way, sense or nonsense. */
const pictures: fc.Arbitrary<Picture> = fc
  .array(
    fc.record({
      symbol: fc.constantFrom(...names),
      side: fc.constantFrom('left', 'centre', 'right'),
      station: fc.constantFrom('actuation', 'junction', 'front', 'rear'),
      label: fc.string({ unit: 'grapheme', maxLength: 12 }),
    }),
    { minLength: 1, maxLength: 9 },
  )
  .chain((parts) =>
    fc
      .array(
        fc.record({
          from: fc.nat(parts.length - 1),
          to: fc.nat(parts.length - 1),
          kind: fc.constantFrom('run', 'hose', 'low-pressure-hose', 'feed', 'screwed', 'mechanical'),
          port: fc.constantFrom('a', 'b', 'cylinder.c'),
        }),
        { maxLength: 14 },
      )
      .map((joins) => ({
        title: 'Anything',
        state: 'planned' as const,
        description: '',
        circuits: [{ name: 'one' }],
        nodes: parts.map((part, i) => node({ id: `p${i}`, ...part })),
        lines: joins.map(({ from, to, kind, port }, i) =>
          line({ id: `l${i}`, kind, from: `p${from}:${port}${i}`, to: `p${to}:${port}${i}x`, circuit: 0 }),
        ),
      })),
  );

describe('any picture', () => {
  it('is placed without overlap, drawn well formed, and whole', async () => {
    await fc.assert(
      fc.asyncProperty(pictures, async (picture) => {
        const placed = await placedBy(engine, picture);
        const areas = placed.nodes.map(symbolArea);
        expect(areas.some((p, i) => areas.slice(i + 1).some((q) => overlap(p, q)))).toBe(false);
        const svg = readXml(svgOf(placed, { theme: 'light' }));
        expect(withClass(svg, 'lw-part')).toHaveLength(picture.nodes.length);
        expect(withClass(svg, 'lw-pipe-group')).toHaveLength(picture.lines.length);
        const again = await placedBy(engine, picture, placed.placement);
        expect(again.nodes).toHaveLength(picture.nodes.length);
      }),
      { numRuns: 120, seed: 1961 },
    );
  }, 120_000);
});
