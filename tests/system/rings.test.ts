import fc from 'fast-check';
import Graph from 'graphology';
import { countConnectedComponents } from 'graphology-components';
import { describe, expect, it } from 'vitest';
import { isOpenWay } from '../../language/system/pressure-bodies.ts';
import { ringsOf } from '../../language/system/rings.ts';
import { readCircuit } from '../support/read.ts';
import { randomCircuit, writeCircuit } from './random-circuit.ts';

function ringsIn(text: string) {
  const { graph } = readCircuit(text).planned;
  return { graph, rings: ringsOf(graph, graph.volumes, graph.ties.filter(isOpenWay)) };
}

describe('Rings', () => {
  it('are as many independent ways as ties − volumes + components (cyclomatic number, components by graphology)', () => {
    fc.assert(
      fc.property(randomCircuit, (circuit) => {
        const { graph, rings } = ringsIn(writeCircuit(circuit));
        const other = new Graph({ multi: true });
        for (const { id } of graph.volumes) other.addNode(id);
        for (const { a, b } of graph.ties) other.addEdge(a, b);
        const independent = other.size - other.order + countConnectedComponents(other);
        expect(rings.reduce((sum, { ways }) => sum + ways, 0)).toBe(independent);
      }),
      { numRuns: 80 },
    );
  });

  it('hold no tie without which graphology would count one component more', () => {
    fc.assert(
      fc.property(randomCircuit, (circuit) => {
        const { graph, rings } = ringsIn(writeCircuit(circuit));
        const onRing = new Set(rings.flatMap(({ volumes }) => volumes.map(({ id }) => id)));
        const other = new Graph({ multi: true });
        for (const { id } of graph.volumes) other.addNode(id);
        for (const [index, { a, b }] of graph.ties.entries()) other.addEdgeWithKey(String(index), a, b);
        const before = countConnectedComponents(other);
        const round = new Set<string>();
        for (const [index, { a, b }] of graph.ties.entries()) {
          other.dropEdge(String(index));
          if (countConnectedComponents(other) === before) for (const end of [a, b]) round.add(end);
          other.addEdgeWithKey(String(index), a, b);
        }
        expect([...onRing].sort()).toEqual([...round].sort());
      }),
      { numRuns: 40 },
    );
  });

  it('are found in a line of ten thousand parts without running out of stack', () => {
    const volumes = Array.from({ length: 10_000 }, (_, index) => index);
    const { graph } = readCircuit('block b { port a: 3/8-24 inverted-flare }').planned;
    const [block] = graph.volumes;
    expect(block).toBeDefined();
    if (block === undefined) return;
    const line = volumes.map((index) => ({ ...block, id: String(index) }));
    const through = { kind: 'valve', part: block.part } as const;
    const ties = volumes.map((index) => ({ a: String(index), b: String((index + 1) % volumes.length), through }));
    const tiesAt = new Map(
      volumes.map((index) => [String(index), [ties[index], ties.at(index - 1)].flatMap((tie) => tie ?? [])]),
    );
    expect(ringsOf({ tiesAt }, line, ties).map(({ ways }) => ways)).toEqual([1]);
    expect(ringsOf({ tiesAt }, line, ties.slice(1))).toEqual([]);
  });
});
