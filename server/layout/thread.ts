/** The layout engine on a thread of its own, so that a layout never holds up the editor. */
import { Worker } from 'node:worker_threads';
import type { LayoutAnswer, LayoutEngine, LayoutGraph } from '../../language/schematic/layout/engine.ts';
import { latestWins } from '../../language/schematic/layout/latest-wins.ts';
import type { FromWorker, ToWorker } from './messages.ts';

export interface ThreadOptions {
  /** The bundled layout worker. */
  readonly script: string | URL;
}

interface Thread {
  readonly worker: Worker;
  /** Answers that are awaited, by request. */
  readonly waiting: Map<number, (answer: LayoutAnswer) => void>;
}

/** The thread starts with the first request, and again after a crash. */
export function threadEngine({ script }: ThreadOptions): LayoutEngine {
  const state: { thread?: Thread | undefined; lastId: number; disposed: boolean } = { lastId: 0, disposed: false };

  const start = (): Thread => {
    const thread: Thread = { worker: new Worker(script), waiting: new Map() };
    const fail = (reason: string) => {
      if (state.thread === thread) state.thread = undefined;
      for (const settle of thread.waiting.values()) settle({ kind: 'refused', reason });
      thread.waiting.clear();
    };
    thread.worker.on('message', ({ id, answer }: FromWorker) => {
      thread.waiting.get(id)?.(answer);
      thread.waiting.delete(id);
    });
    thread.worker.on('error', (error) => fail(`The layout thread failed: ${error.message}.`));
    thread.worker.on('exit', () => fail('The layout thread has ended.'));
    // An idle thread must not keep a finished process alive.
    thread.worker.unref();
    return thread;
  };

  const ask = (message: (id: number) => ToWorker): Promise<LayoutAnswer> => {
    if (state.disposed) return Promise.resolve({ kind: 'superseded' });
    state.thread ??= start();
    const { worker, waiting } = state.thread;
    state.lastId += 1;
    const id = state.lastId;
    worker.ref();
    return new Promise<LayoutAnswer>((settle) => {
      waiting.set(id, settle);
      worker.postMessage(message(id));
    }).then((answer) => {
      if (waiting.size === 0) worker.unref();
      return answer;
    });
  };

  const queue = latestWins((graph: LayoutGraph) => ask((id) => ({ kind: 'layout', id, graph })));
  return {
    layout: async (graph, { lane }) => {
      if (state.disposed) return { kind: 'superseded' };
      const outcome = await queue.submit(lane, graph);
      return outcome.kind === 'done' ? outcome.result : outcome;
    },
    warmUp: async () => {
      await ask((id) => ({ kind: 'warm-up', id }));
    },
    dispose: async () => {
      state.disposed = true;
      queue.clear();
      await state.thread?.worker.terminate();
    },
  };
}
