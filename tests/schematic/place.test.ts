import { afterAll, describe, expect, it } from 'vitest';
import type { Picture } from '../../language/schematic/picture.ts';
import { place } from '../../language/schematic/place.ts';
import type { Placed } from '../../language/schematic/placed.ts';
import { inlineEngine } from '../../server/layout/inline.ts';
import { exampleFiles, examplePicture } from './examples.ts';
import { labelAreas, overlap, piecesOf, runsThrough, symbolArea } from './geometry.ts';
import { placedBy } from './placing.ts';
import { car, clutch, diagonal, van } from './sketches.ts';

const engine = inlineEngine();
afterAll(() => engine.dispose());

const placed = (picture: Picture): Promise<Placed> => placedBy(engine, picture);

const pictures: readonly (readonly [string, () => Picture])[] = [
  ['van', van],
  ['car', car],
  ['diagonal', diagonal],
  ['clutch', clutch],
  ...exampleFiles.flatMap((file) =>
    (['found', 'planned'] as const).map((state): [string, () => Picture] => [
      `${file} ${state}`,
      () => examplePicture(file, state),
    ]),
  ),
];

describe.each(pictures)('the picture of %s', (_name, make) => {
  it('shows every part and every line once', async () => {
    const picture = make();
    const { nodes, lines } = await placed(picture);
    expect(nodes.map(({ node }) => node.id).sort()).toEqual(picture.nodes.map(({ id }) => id).sort());
    expect(lines.map(({ line }) => line.id).sort()).toEqual(picture.lines.map(({ id }) => id).sort());
    for (const { line, points } of lines) expect(points.length, line.id).toBeGreaterThanOrEqual(2);
  });

  it('lets no symbols overlap', async () => {
    const areas = (await placed(make())).nodes.map(symbolArea);
    const overlaps = areas.flatMap((p, i) =>
      areas
        .slice(i + 1)
        .filter((q) => overlap(p, q))
        .map((q) => `${p.name} ${q.name}`),
    );
    expect(overlaps).toEqual([]);
  });

  it('puts no words on other words, on a symbol or on a line', async () => {
    const { nodes, lines, ...rest } = await placed(make());
    const words = labelAreas({ nodes, lines, ...rest });
    const symbols = nodes.map(symbolArea);
    const onWords = words.flatMap((p, i) =>
      words
        .slice(i + 1)
        .filter((q) => overlap(p, q))
        .map((q) => `${p.name} on ${q.name}`),
    );
    const onSymbols = words.flatMap((p) =>
      symbols.filter((q) => overlap(p, q)).map((q) => `${p.name} on symbol ${q.name}`),
    );
    const onLines = words.flatMap((area) =>
      lines
        .flatMap(piecesOf)
        .filter((piece) => runsThrough(piece, area))
        .map((piece) => `${area.name} on line ${piece.line}`),
    );
    expect([...onWords, ...onSymbols, ...onLines]).toEqual([]);
  });

  it('leads no line through the symbol of a part that it does not join', async () => {
    const { nodes, lines } = await placed(make());
    const wrong = lines.flatMap((placedLine) => {
      const { line } = placedLine;
      const others = nodes.filter(({ node }) => node.id !== line.from.node && node.id !== line.to.node).map(symbolArea);
      return piecesOf(placedLine).flatMap((piece) =>
        others.filter((area) => runsThrough(piece, area)).map(({ name }) => `${line.id} through ${name}`),
      );
    });
    expect(wrong).toEqual([]);
  });

  it('draws lines upright and level only, from port to port', async () => {
    const { nodes, lines } = await placed(make());
    const slanted = lines.flatMap(piecesOf).filter(({ a, b }) => a.x !== b.x && a.y !== b.y);
    expect(slanted).toEqual([]);
    for (const { line, points } of lines) {
      for (const end of [line.from, line.to]) {
        const owner = nodes.find(({ node }) => node.id === end.node);
        const anchor = owner?.box.anchors.find(({ port }) => port === end.port);
        expect(anchor, `${line.id} at ${end.node} ${end.port}`).toBeDefined();
        if (owner === undefined || anchor === undefined) continue;
        const reach = { x: owner.at.x + anchor.reach.x, y: owner.at.y + anchor.reach.y };
        expect([points[0], points.at(-1)]).toContainEqual(reach);
      }
    }
  });

  it('reads like a vehicle: front before rear, left on the left', async () => {
    const wheels = (await placed(make())).nodes.filter(
      ({ node }) => /brake$/.test(node.symbol) && node.symbol !== 'parking-brake',
    );
    for (const one of wheels) {
      for (const other of wheels) {
        const [a, b] = [symbolArea(one), symbolArea(other)];
        if (one.node.station === 'front' && other.node.station === 'rear') expect(a.bottom).toBeLessThan(b.top);
        if (one.node.station === other.node.station && one.node.side === 'left' && other.node.side === 'right') {
          expect(a.right).toBeLessThan(b.left);
          expect(a.top).toBe(b.top);
        }
      }
    }
  });

  it('begins with the actuation and ends with the wheels', async () => {
    const { nodes } = await placed(make());
    const feet = nodes.filter(({ node }) => ['pedal', 'master-single', 'master-tandem'].includes(node.symbol));
    const rest = nodes.filter(({ node }) => node.station === 'junction');
    for (const foot of feet) for (const other of rest) expect(foot.at.y, other.node.id).toBeLessThan(other.at.y);
    const rear = nodes.filter(({ node }) => node.station === 'rear');
    for (const wheel of rear) {
      for (const other of nodes) {
        if (other.node.station === 'rear') continue;
        expect(symbolArea(other).top, other.node.id).toBeLessThan(symbolArea(wheel).bottom);
      }
    }
  });

  it('is the same each time', async () => {
    expect(await placed(make())).toEqual(await placed(make()));
  });
});

describe('placing', () => {
  it('draws nothing for an empty picture', async () => {
    const { nodes, lines, width, height } = await placed({ ...van(), nodes: [], lines: [] });
    expect({ nodes, lines, width, height }).toEqual({ nodes: [], lines: [], width: 0, height: 0 });
  });

  it('leaves out lines that lead to nothing and the second of two parts with one name', async () => {
    const base = clutch();
    const dangling = base.lines.map((line) => ({
      ...line,
      id: `${line.id}-nowhere`,
      to: { node: 'nothing', port: 'x' },
    }));
    const { nodes, lines } = await placed({
      ...base,
      nodes: [...base.nodes, ...base.nodes],
      lines: [...base.lines, ...dangling],
    });
    expect(nodes).toHaveLength(base.nodes.length);
    expect(lines).toHaveLength(base.lines.length);
  });

  it('places a ring, a part joined to itself and two lines at one port', async () => {
    const base = van();
    const [first] = base.lines.filter(({ kind }) => kind === 'run');
    if (first === undefined) throw new Error('The van has runs.');
    const ring = {
      ...first,
      id: 'ring',
      from: { node: 'rear-left', port: 'cylinder.x' },
      to: { node: 'front-left', port: 'cylinder.y' },
    };
    const self = { ...first, id: 'self', from: { node: 'front-tee', port: 'a' }, to: { node: 'front-tee', port: 'b' } };
    const twice = { ...first, id: 'twice' };
    const { lines } = await placed({ ...base, lines: [...base.lines, ring, self, twice] });
    expect(lines).toHaveLength(base.lines.length + 3);
  });

  it('refuses a picture that is too large, and says up to what size it draws', async () => {
    const [tee] = van().nodes.filter(({ symbol }) => symbol === 'tee');
    if (tee === undefined) throw new Error('The van has a tee.');
    const nodes = Array.from({ length: 2501 }, (_, i) => ({ ...tee, id: `tee-${i}` }));
    const result = await place({ ...van(), nodes, lines: [] }, engine);
    expect(result).toMatchObject({ kind: 'refused', reason: expect.stringContaining('2500') });
  });
});
