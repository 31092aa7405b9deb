import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../language/figures/index.ts';
import { originOf } from '../../language/schematic/origin-of.ts';
import type { Picture } from '../../language/schematic/picture.ts';
import { pictureOf } from '../../language/schematic/picture-of.ts';
import type { SubjectFinding } from '../../language/schematic/reading/findings.ts';
import type { State } from '../../language/system/presence.ts';
import { readCircuit } from '../support/read.ts';
import { exampleFiles, examplePicture } from './examples.ts';

function read(text: string, state: State = 'planned', findings: readonly SubjectFinding[] = []): Picture {
  const system = readCircuit(text)[state];
  return pictureOf(system, { figures: figuresOf(system), findings });
}

const node = (picture: Picture, id: string) => picture.nodes.find((one) => one.id === id);
const line = (picture: Picture, id: string) => picture.lines.find((one) => one.id === id);

const cart = `
vehicle cart "Milk cart" { fixed frame  sprung rear-axle on frame travel 100 mm }
pedal foot { ratio 5  pushes main }
master main single on frame {
  bore 3/4 in
  port out: 3/8-24 inverted-flare
  reservoir { capacity 0.2 L  feeds main }
}
run feed {
  tube 3/16 in wall 0.028 in steel
  flare double-45
  from main.out
  to hose-one.from
  length 20 in ± 1/4 in
}
hose hose-one {
  from: 3/8-24 female inverted-flare fixed
  to rear-left.cylinder.feed: 3/8-24 male inverted-flare swivel
  length 12 in
}
to-remove run stray {
  tube 3/16 in wall 0.028 in steel
  from main.out
}
to-fit drum-brake rear-left on rear-axle {
  cylinder { bore ?  port feed: 3/8-24 inverted-flare  bleeder {} }
}
`;

describe('a picture', () => {
  it('takes its title from the caption of the vehicle and says which state it shows', () => {
    expect(read(cart)).toMatchObject({ title: 'Milk cart', state: 'planned' });
    expect(read(cart, 'found').state).toBe('found');
  });

  it('shows what is to be fitted only as planned, what is to be removed only as found', () => {
    expect(node(read(cart, 'planned'), 'rear-left')?.mark).toBe('to-fit');
    expect(node(read(cart, 'found'), 'rear-left')).toBeUndefined();
    expect(line(read(cart, 'found'), 'stray')?.mark).toBe('to-remove');
    expect(line(read(cart, 'planned'), 'stray')).toBeUndefined();
  });

  it('puts a nut where a run meets a hose', () => {
    const picture = read(cart);
    expect(node(picture, 'hose-one.from')?.symbol).toBe('joint');
    expect(line(picture, 'feed')?.to.node).toBe('hose-one.from');
    expect(line(picture, 'hose-one')?.from.node).toBe('hose-one.from');
  });

  it('shows an open end open', () => {
    const picture = read(cart, 'found');
    expect(node(picture, 'stray.to')?.symbol).toBe('open-end');
    expect(line(picture, 'stray')?.to.node).toBe('stray.to');
  });

  it('draws cylinders and bleeders inside their wheel brake', () => {
    const brake = node(read(cart), 'rear-left');
    expect(brake?.details.map(({ kind }) => kind)).toEqual(['cylinder', 'bleeder']);
    expect(brake).toMatchObject({ station: 'rear', side: 'left' });
    expect(line(read(cart), 'hose-one')?.to).toEqual({ node: 'rear-left', port: 'cylinder.feed' });
  });

  it('draws the reservoir of a master above it and joins them', () => {
    const picture = read(cart);
    expect(node(picture, 'main.reservoir')?.symbol).toBe('reservoir');
    expect(picture.lines.find(({ kind }) => kind === 'feed')).toMatchObject({
      from: { node: 'main.reservoir' },
      to: { node: 'main' },
    });
  });

  it('writes size and cut length on a run, and the limits of the length into its description', () => {
    const run = line(read(cart), 'feed');
    expect(run?.notes).toHaveLength(1);
    expect(run?.notes[0]).toMatch(/^3\/16 in · cut \d/);
    expect(run?.notes[0]).not.toMatch(/±|\.\./);
    expect(run?.description).toMatch(/cut length .*(±|\.\.)/);
  });

  it('writes the centreline length where the flares are not stated', () => {
    expect(line(read(cart.replace('flare double-45', '')), 'feed')?.notes).toEqual(['3/16 in · centreline 20 in']);
  });

  it('says that a length is not known', () => {
    expect(line(read(cart, 'found'), 'stray')?.notes).toEqual(['3/16 in · length ?']);
  });

  it('tells which circuit a line belongs to', () => {
    const picture = read(cart);
    expect(picture.circuits).toHaveLength(1);
    expect(line(picture, 'feed')?.circuit).toBe(0);
    expect(line(read(cart.replace('from main.out', '')), 'feed')?.circuit).toBeUndefined();
  });

  it('shows a finding on a sub-part or port at the symbol that it is drawn in', () => {
    const finding = { code: 'c', severity: 'warning', message: 'm' } as const;
    const at = (subject: string) => read(cart, 'planned', [{ ...finding, subject }]);
    expect(node(at('rear-left.cylinder.bleeder'), 'rear-left')?.findings).toEqual([finding]);
    expect(node(at('rear-left.cylinder.feed'), 'rear-left')?.findings).toEqual([finding]);
    expect(line(at('feed.to'), 'feed')?.findings).toEqual([finding]);
    const twice = read(cart, 'planned', [{ ...finding, subject: 'rear-left', also: ['rear-left.cylinder'] }]);
    expect(node(twice, 'rear-left')?.findings).toEqual([finding]);
  });

  it('knows where each thing that it shows stands in the text', () => {
    for (const state of ['found', 'planned'] as const) {
      const system = readCircuit(cart)[state];
      const picture = pictureOf(system, { figures: figuresOf(system), findings: [] });
      for (const { id } of [...picture.nodes, ...picture.lines]) expect(originOf(system, id), id).toBeDefined();
      expect(originOf(system, 'nothing-of-the-kind')).toBeUndefined();
    }
  });

  it('is made of any part of a text', () => {
    for (let end = 0; end <= cart.length; end += 7) expect(() => read(cart.slice(0, end))).not.toThrow();
  });
});

describe.each(exampleFiles)('the picture of %s', (file) => {
  it('joins every line to parts that it shows', () => {
    for (const state of ['found', 'planned'] as const) {
      const { nodes, lines } = examplePicture(file, state);
      const ids = new Set(nodes.map(({ id }) => id));
      expect(lines.flatMap(({ from, to }) => [from.node, to.node]).filter((id) => !ids.has(id))).toEqual([]);
      expect(new Set([...nodes, ...lines].map(({ id }) => id)).size).toBe(nodes.length + lines.length);
    }
  });
});
