import { describe, expect, it } from 'vitest';
import type { PictureDetail, SymbolName } from '../../language/schematic/picture.ts';
import { symbolsOfRows } from '../../language/schematic/reading/symbol-of.ts';
import { boxed } from '../../language/schematic/symbols/box.ts';
import type { PortUse } from '../../language/schematic/symbols/drawing.ts';
import { symbols } from '../../language/schematic/symbols/table.ts';
import { kindRows } from '../../language/system/kinds/index.ts';
import { node } from './sketch.ts';

const names = Object.keys(symbols).filter((name): name is SymbolName => Object.hasOwn(symbols, name));

/** Symbols that fluid goes through or into, so that each of their ports must find a place. */
const wet = names.filter((name) => !['pedal', 'booster'].includes(name));

const details: readonly PictureDetail[] = [
  { id: 'x.primary', kind: 'chamber', label: 'primary' },
  { id: 'x.secondary', kind: 'chamber', label: 'secondary' },
  { id: 'x.upper', kind: 'cylinder', label: 'upper' },
  { id: 'x.lower', kind: 'cylinder', label: 'lower' },
  { id: 'x.upper.bleeder', kind: 'bleeder', label: 'bleeder' },
];

/** Ports in all uses, `count` of them. */
function uses(count: number, flow: PortUse['flow'] | 'mixed'): readonly PortUse[] {
  const mixed = ['in', 'out', 'idle', 'loop'] as const;
  return Array.from({ length: count }, (_, i) => ({
    id: `${i % 2 === 0 ? 'upper' : 'lower'}.p${i}`,
    flow: flow === 'mixed' ? (mixed[i % mixed.length] ?? 'in') : flow,
    toward: i - count / 2,
  }));
}

const counts = [0, 1, 2, 3, 4, 6];
const flows = ['in', 'out', 'idle', 'mixed'] as const;

describe('symbols', () => {
  it('a block joins its ports with a dot only where they share fluid', () => {
    const shapes = (circuits: readonly number[]) => {
      const ports = circuits.map((circuit, i) => ({ id: `p${i}`, circuit }));
      const subject = { node: { ...node({ id: 'x', symbol: 'block' }), ports }, ports: uses(circuits.length, 'mixed') };
      return symbols.block.draw(subject).shapes.map(({ kind }) => kind);
    };
    expect(shapes([0, 0, 0])).toContain('circle');
    expect(shapes([0, 0, 1, 1])).not.toContain('circle');
  });

  it.each(wet)('%s gives each port a place of its own, however many there are and whatever they do', (name) => {
    for (const ports of counts.flatMap((count) => flows.map((flow) => uses(count, flow)))) {
      const subject = { node: node({ id: 'x', symbol: name, details }), ports, words: 'right', loopRoom: 0 } as const;
      const box = boxed(symbols[name], subject);
      expect(box.anchors.map(({ port }) => port).sort()).toEqual(ports.map(({ id }) => id).sort());
      for (const { edge, at, reach } of box.anchors) {
        const expected = { left: 0, right: box.width, top: 0, bottom: box.height }[edge];
        expect(edge === 'left' || edge === 'right' ? at.x : at.y).toBe(expected);
        expect(reach.x).toBeGreaterThanOrEqual(0);
        expect(reach.x).toBeLessThanOrEqual(box.width);
        expect(reach.y).toBeGreaterThanOrEqual(0);
        expect(reach.y).toBeLessThanOrEqual(box.height);
        expect([at.x, at.y, reach.x, reach.y].every(Number.isInteger)).toBe(true);
      }
    }
  });

  it('have words of the trade', () => {
    for (const name of names) expect(symbols[name].words).toMatch(/^[a-z][a-z -]+$/);
  });

  it('exist for every kind of part in the table', () => {
    const named = new Set(kindRows.map(({ symbol }) => symbol));
    const missing = [...named].filter(
      (name) => name !== 'line' && name !== 'none' && !Object.hasOwn(symbolsOfRows, name),
    );
    expect(missing).toEqual([]);
    for (const symbol of Object.values(symbolsOfRows)) expect(names).toContain(symbol);
  });

  it('put the cylinder that is called upper at the top', () => {
    const ports = ['upper.feed', 'lower.feed'].map((id): PortUse => ({ id, flow: 'in', toward: 0 }));
    const lowerFirst = [...details].reverse();
    const box = boxed(symbols['drum-brake'], {
      node: node({ id: 'x', symbol: 'drum-brake', details: lowerFirst }),
      ports,
      words: 'right',
      loopRoom: 0,
    });
    const height = (port: string) => box.anchors.find((anchor) => anchor.port === port)?.reach.y ?? Number.NaN;
    expect(height('upper.feed')).toBeLessThan(height('lower.feed'));
  });

  it('keep the ways through a valve apart from top to bottom', () => {
    const port = (id: string, flow: 'in' | 'out', channel: number): PortUse => ({ id, flow, channel, toward: 0 });
    const ports = [port('b-in', 'in', 1), port('a-out', 'out', 0), port('b-out', 'out', 1), port('a-in', 'in', 0)];
    const subject = {
      node: node({ id: 'x', symbol: 'pressure-differential-valve' }),
      ports,
      words: 'right',
      loopRoom: 0,
    } as const;
    const { anchors } = boxed(symbols['pressure-differential-valve'], subject);
    const x = (id: string) => anchors.find(({ port: name }) => name === id)?.at.x;
    expect(x('a-in')).toBe(x('a-out'));
    expect(x('b-in')).toBe(x('b-out'));
    expect(x('a-in')).toBeLessThan(x('b-in') ?? 0);
  });
});
