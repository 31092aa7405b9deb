import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Picture } from '../../language/schematic/picture.ts';
import type { Placed } from '../../language/schematic/placed.ts';
import { circuitLook } from '../../language/schematic/svg/line-markup.ts';
import { svgOf } from '../../language/schematic/svg.ts';
import { inlineEngine } from '../../server/layout/inline.ts';
import { exampleFiles, examplePicture } from './examples.ts';
import { placedBy } from './placing.ts';
import { car, van } from './sketches.ts';
import { allText, type Element, readXml, withClass, within } from './xml.ts';

const engine = inlineEngine();
afterAll(() => engine.dispose());

const themes = ['light', 'dark', 'high-contrast', 'print', 'window'] as const;
const nasty = `<script>alert("1")</script> & 'quotes' 🔧 \u0000\ud800`;

let drawn: Placed;
let root: Element;
beforeAll(async () => {
  drawn = await placedBy(engine, van());
  root = readXml(svgOf(drawn, { theme: 'window' }));
});

const groups = () => [...withClass(root, 'lw-part'), ...withClass(root, 'lw-pipe-group')];
const idOf = (element: Element) => element.attributes.get('data-id') ?? '';
const child = (element: Element, name: string) => element.children.find((one) => one.name === name);

describe('the SVG', () => {
  it.each(themes)('is well formed in the theme %s, without inline style, script or reference', async (theme) => {
    const svg = svgOf(drawn, { theme });
    const elements = within(readXml(svg));
    expect(svg).not.toContain('style=');
    expect(elements.filter(({ name }) => ['script', 'foreignObject', 'image', 'a', 'use'].includes(name))).toEqual([]);
    const attributes = elements.flatMap(({ attributes: own }) => [...own.keys()]);
    expect(attributes.filter((name) => name.startsWith('on') || name.includes('href') || name === 'id')).toEqual([]);
  });

  it.each(themes)('is the same text each time in the theme %s', async (theme) => {
    const again = await placedBy(engine, van());
    expect(svgOf(again, { theme })).toBe(svgOf(drawn, { theme }));
  });

  it('has a title, a description and a role', () => {
    expect(root.attributes.get('role')).toBe('graphics-document');
    expect(root.children.slice(0, 2).map(({ name }) => name)).toEqual(['title', 'desc']);
    expect(allText(root)).toContain('As planned');
  });

  it('gives every part and line an id, a role, keyboard focus, a title and a description', () => {
    const { nodes, lines } = van();
    expect(groups().map(idOf).sort()).toEqual([...nodes, ...lines].map(({ id }) => id).sort());
    for (const group of groups()) {
      expect(group.attributes.get('role')).toBe('img');
      expect(group.attributes.get('tabindex')).toBe('0');
      expect(child(group, 'title')?.text.length, idOf(group)).toBeGreaterThan(0);
      expect(child(group, 'desc')?.text.length, idOf(group)).toBeGreaterThan(0);
    }
  });

  it('names the cylinders and bleeders inside the symbol of a wheel brake', () => {
    const ids = withClass(root, 'lw-sub-part').map(idOf);
    expect(ids).toContain('rear-left.cylinder');
    expect(ids).toContain('rear-left.cylinder.bleeder');
  });

  it('labels runs with their size and length', () => {
    const run = groups().find((group) => idOf(group) === 'long-line');
    expect(run === undefined ? '' : allText(run)).toContain('3/16 in · 9 ft 4 in');
  });

  it('marks what has findings by a shape, a sign and the finding in words', () => {
    const shape = (id: string) => {
      const group = groups().find((one) => idOf(one) === id);
      const badge = group === undefined ? undefined : withClass(group, 'lw-badge').at(-1);
      return badge?.children.map(({ attributes }) => attributes.get('d')).join(' ');
    };
    const [error, warning, question] = [shape('long-line'), shape('rear-left'), shape('residual')];
    expect(error).toBeDefined();
    expect(new Set([error, warning, question]).size).toBe(3);
    const line = groups().find((group) => idOf(group) === 'long-line');
    expect(line === undefined ? '' : allText(line)).toContain('Seat does not fit.');
  });

  it('shows what is to be fitted and to be removed by sign and line, not by tone alone', async () => {
    const base = van();
    const removal: Picture = { ...base, lines: base.lines.map((line) => ({ ...line, mark: 'to-remove' })) };
    const removing = readXml(svgOf(await placedBy(engine, removal), { theme: 'window' }));
    expect(withClass(removing, 'lw-strike').length).toBeGreaterThanOrEqual(base.lines.length);
    expect(withClass(removing, 'lw-badge-to-remove').length).toBeGreaterThanOrEqual(base.lines.length);
    expect(withClass(root, 'lw-band-fit')).toHaveLength(base.lines.filter(({ mark }) => mark === 'to-fit').length);
    expect(withClass(root, 'lw-badge-to-fit').length).toBeGreaterThan(0);
  });

  it('explains in the legend what it shows and nothing else', () => {
    const [legend] = withClass(root, 'lw-legend');
    const text = legend === undefined ? '' : allText(legend);
    for (const shown of ['rear, from the primary chamber', 'flexible hose', 'to be fitted', 'warning'])
      expect(text).toContain(shown);
    expect(text).not.toContain('to be removed');
    expect(text).not.toContain('information');
  });

  it('draws a flexible line with a bow and two dots', async () => {
    const hose = groups().find((group) => idOf(group) === 'axle-hose');
    const dots = hose === undefined ? [] : within(hose).filter(({ name }) => name === 'circle');
    expect(dots).toHaveLength(2);
  });

  it('hops over a line that it crosses and puts no dot there', async () => {
    const crossing = await placedBy(engine, car());
    const elements = within(readXml(svgOf(crossing, { theme: 'window' })));
    const hops = elements.filter(({ attributes }) => /a5 5 0 0/.test(attributes.get('d') ?? ''));
    expect(hops.length).toBeGreaterThan(0);
    const dots = withClass(readXml(svgOf(crossing, { theme: 'window' })), 'lw-solid').filter(
      ({ name }) => name === 'circle',
    );
    const tees = car().nodes.filter(({ symbol }) => symbol === 'tee').length;
    const legendDots = 2;
    expect(dots).toHaveLength(tees + legendDots);
  });

  it('escapes every word of the file', async () => {
    const base = van();
    const named: Picture = {
      ...base,
      title: nasty,
      description: nasty,
      circuits: base.circuits.map(() => ({ name: nasty })),
      nodes: base.nodes.map((node) => ({
        ...node,
        label: nasty,
        notes: [nasty],
        description: nasty,
        findings: [{ code: nasty, severity: 'error', message: nasty }],
      })),
      lines: base.lines.map((line) => ({ ...line, label: nasty, notes: [nasty], description: nasty })),
    };
    const svg = svgOf(await placedBy(engine, named), { theme: 'light' });
    expect(svg).not.toContain('<script');
    const read = readXml(svg);
    expect(within(read).filter(({ name }) => name === 'script')).toEqual([]);
    expect(allText(read)).toContain(`<script>alert("1")</script> & 'quotes' 🔧`);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: exactly these must not be there
    expect(svg).not.toMatch(/[\u0000-\u0008]/);
  });

  it('embeds a style in a picture that stands alone and none in one for the window', () => {
    const styles = (theme: (typeof themes)[number]) =>
      within(readXml(svgOf(drawn, { theme }))).filter(({ name }) => name === 'style');
    expect(styles('window')).toEqual([]);
    expect(styles('print')).toHaveLength(1);
    expect(svgOf(drawn, { theme: 'dark' })).not.toContain('var(');
  });
});

describe('circuits', () => {
  it('are told apart by their line style alone', () => {
    const styles = [0, 1, 2, 3, 4, 5].map((circuit) => circuitLook(circuit).dash ?? 'solid');
    expect(new Set([...styles, circuitLook(undefined).dash]).size).toBe(7);
  });

  it('are told apart by their tone too', () => {
    expect(new Set([0, 1, 2, 3, 4, 5].map((circuit) => circuitLook(circuit).tone)).size).toBe(6);
  });
});

describe('the examples', () => {
  it.each(exampleFiles)('%s is drawn well formed in both states', async (file) => {
    for (const state of ['found', 'planned'] as const) {
      const picture = examplePicture(file, state);
      const svg = readXml(svgOf(await placedBy(engine, picture), { theme: 'print' }));
      expect(allText(svg)).toContain(state === 'found' ? 'As found' : 'As planned');
      expect(withClass(svg, 'lw-part')).toHaveLength(picture.nodes.length);
    }
  });
});
