/** The layout engine in the thread that asks: for the command, for tests, and inside the browser's server worker. */

import { type Elk, loadElk } from '../../language/schematic/layout/elk.ts';
import type { LayoutAnswer, LayoutEngine, LayoutGraph } from '../../language/schematic/layout/engine.ts';
import { latestWins } from '../../language/schematic/layout/latest-wins.ts';

export function inlineEngine(): LayoutEngine {
  const state: { elk?: Promise<Elk>; disposed: boolean } = { disposed: false };
  const elk = () => {
    state.elk ??= loadElk();
    return state.elk;
  };
  const queue = latestWins(async (graph: LayoutGraph): Promise<LayoutAnswer> => {
    try {
      return await (await elk()).layout(graph);
    } catch (error) {
      return { kind: 'refused', reason: `The layout engine could not be loaded: ${String(error)}.` };
    }
  });
  return {
    layout: async (graph, { lane }) => {
      if (state.disposed) return { kind: 'superseded' };
      const outcome = await queue.submit(lane, graph);
      return outcome.kind === 'done' ? outcome.result : outcome;
    },
    warmUp: async () => {
      await (await elk()).layout({ mode: 'fresh', nodes: [], edges: [] });
    },
    dispose: async () => {
      state.disposed = true;
      queue.clear();
    },
  };
}
