/** Entry point of the layout thread: one graph in, one answer out, one at a time. */
import { parentPort } from 'node:worker_threads';
import { type Elk, loadElk } from '../../language/schematic/layout/elk.ts';
import type { LayoutAnswer } from '../../language/schematic/layout/engine.ts';
import type { FromWorker, ToWorker } from './messages.ts';

const port = parentPort;
if (port === null) throw new Error('The layout worker runs only as a worker thread.');

let loading: Promise<Elk> | undefined;

port.on('message', async (message: ToWorker) => {
  const reply: FromWorker = { id: message.id, answer: await answerTo(message) };
  port.postMessage(reply);
});

async function answerTo(message: ToWorker): Promise<LayoutAnswer> {
  try {
    loading ??= loadElk();
    const elk = await loading;
    return await elk.layout(message.kind === 'layout' ? message.graph : { mode: 'fresh', nodes: [], edges: [] });
  } catch (error) {
    return { kind: 'refused', reason: `The layout engine could not be loaded: ${String(error)}.` };
  }
}
