import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LayoutEngine, LayoutGraph } from '../../language/schematic/layout/engine.ts';
import { planOf } from '../../language/schematic/layout/plan.ts';
import { inlineEngine } from '../../server/layout/inline.ts';
import { threadEngine } from '../../server/layout/thread.ts';
import { car, clutch, van } from '../schematic/sketches.ts';
import { type Bundle, bundled } from './worker-script.ts';

let script: Bundle;
beforeAll(async () => {
  script = await bundled({ file: 'server/layout/worker.ts' });
});
afterAll(() => script.remove());

const graphOf = (picture: ReturnType<typeof van>): LayoutGraph => planOf(picture, undefined).graph;
const lane = 'preview';

describe.each([
  ['inline', (): LayoutEngine => inlineEngine()],
  ['on a thread', (): LayoutEngine => threadEngine({ script: script.path })],
])('the layout engine %s', (_name, make) => {
  let engine: LayoutEngine;
  beforeAll(() => {
    engine = make();
  });
  afterAll(() => engine.dispose());

  it('answers with a place for every node and a way for every edge', async () => {
    const graph = graphOf(van());
    const answer = await engine.layout(graph, { lane });
    if (answer.kind !== 'laid') throw new Error(answer.kind);
    expect(answer.nodes.map(({ id }) => id)).toEqual(graph.nodes.map(({ id }) => id));
    expect(answer.edges.every(({ points }) => points.length >= 2)).toBe(true);
  });

  it('keeps the ports where the symbols have them', async () => {
    const graph = graphOf(car());
    const answer = await engine.layout(graph, { lane });
    if (answer.kind !== 'laid') throw new Error(answer.kind);
    const corners = new Map(answer.nodes.map((node) => [node.id, node]));
    for (const [i, edge] of graph.edges.entries()) {
      const node = graph.nodes.find(({ id }) => id === edge.from.node);
      const port = node?.ports.find(({ id }) => id === edge.from.port);
      const corner = corners.get(edge.from.node);
      const [start] = answer.edges[i]?.points ?? [];
      expect(start?.x).toBeCloseTo((corner?.x ?? 0) + (port?.x ?? 0), 6);
      expect(start?.y).toBeCloseTo((corner?.y ?? 0) + (port?.y ?? 0), 6);
    }
  });

  it('leaves the graph as it was given', async () => {
    const graph = graphOf(clutch());
    const before = JSON.stringify(graph);
    await engine.layout(graph, { lane });
    expect(JSON.stringify(graph)).toBe(before);
  });

  it('gives the answer that the inline engine gives', async () => {
    const other = inlineEngine();
    for (const picture of [van(), car(), clutch()]) {
      const graph = graphOf(picture);
      expect(await engine.layout(graph, { lane })).toEqual(await other.layout(graph, { lane }));
    }
    await other.dispose();
  });

  it('lays out the newest of those that wait in a lane and says of the others that they are superseded', async () => {
    const graph = graphOf(clutch());
    const answers = await Promise.all([1, 2, 3, 4].map(() => engine.layout(graph, { lane })));
    expect(answers.map(({ kind }) => kind)).toEqual(['laid', 'superseded', 'superseded', 'laid']);
  });

  it('does not let one lane supersede another', async () => {
    const graph = graphOf(clutch());
    const answers = await Promise.all(['a', 'b', 'c', 'd'].map((one) => engine.layout(graph, { lane: one })));
    expect(answers.map(({ kind }) => kind)).toEqual(['laid', 'laid', 'laid', 'laid']);
  });

  it('refuses what it cannot lay out, and goes on', async () => {
    const graph = graphOf(clutch());
    const [edge] = graph.edges;
    if (edge === undefined) throw new Error('The clutch has lines.');
    const dangling: LayoutGraph = { ...graph, edges: [{ ...edge, to: { node: 'nothing', port: 'x' } }] };
    expect(await engine.layout(dangling, { lane })).toMatchObject({ kind: 'refused' });
    expect(await engine.layout(graph, { lane })).toMatchObject({ kind: 'laid' });
  });

  it('can be warmed up', async () => {
    await expect(engine.warmUp()).resolves.toBeUndefined();
  });

  it('answers nothing more once it is disposed', async () => {
    const short = make();
    const graph = graphOf(clutch());
    const waiting = [1, 2, 3].map(() => short.layout(graph, { lane }));
    await short.dispose();
    const kinds = (await Promise.all(waiting)).map(({ kind }) => kind);
    expect(kinds.slice(1)).toEqual(['superseded', 'superseded']);
    expect(await short.layout(graph, { lane })).toEqual({ kind: 'superseded' });
  });
});

describe('a layout thread', () => {
  it('that cannot start refuses instead of hanging', async () => {
    const engine = threadEngine({ script: '/nowhere/at-all.cjs' });
    expect(await engine.layout(graphOf(clutch()), { lane })).toMatchObject({ kind: 'refused' });
    await engine.dispose();
  });

  it('lets the process end that forgot to dispose of it', async () => {
    const program = await bundled({
      code: `
        import { planOf } from './language/schematic/layout/plan.ts';
        import { threadEngine } from './server/layout/thread.ts';
        import { clutch } from './tests/schematic/sketches.ts';
        const engine = threadEngine({ script: ${JSON.stringify(script.path)} });
        engine.layout(planOf(clutch(), undefined).graph, { lane: 'one' }).then(({ kind }) => console.log(kind));
      `,
    });
    const { stdout } = await promisify(execFile)(process.execPath, [program.path], { timeout: 30_000 });
    expect(stdout.trim()).toBe('laid');
    await program.remove();
  });
});
