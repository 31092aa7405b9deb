/** What a person at the keyboard waits for, measured from outside on a running server. */
import { type Editor, startEditor } from './editor.ts';
import { keystrokesIn } from './keystrokes.ts';
import { median } from './statistics.ts';

export interface Scenario {
  readonly server: string;
  readonly folder: string;
  readonly uri: string;
  readonly text: string;
  /** Behind it the keys are typed. */
  readonly anchor: string;
  readonly starts: number;
  readonly keys: number;
  /** How many of the thousand edits for the memory are sent without waiting. */
  readonly atOnce: number;
}

/** Milliseconds, and bytes for the memory. */
export interface Waits {
  readonly coldStart: number;
  readonly diagnostics: number;
  /** NaN if the picture is too large to be drawn. */
  readonly picture: number;
  readonly burst: number;
  readonly memoryBefore: number;
  readonly memoryAfter: number;
}

export async function measureWaits(scenario: Scenario): Promise<Waits> {
  const cold: number[] = [];
  for (let start = 0; start < scenario.starts; start++) {
    const begun = performance.now();
    const editor = await open(scenario);
    cold.push(performance.now() - begun);
    await editor.close();
  }
  const editor = await open(scenario);
  try {
    await repeat(scenario.keys, () => key(editor));
    const memoryBefore = editor.memory();
    const diagnostics = median(await repeat(scenario.keys, () => key(editor)));
    const burst = median(await repeat(Math.ceil(scenario.keys / 2), () => keys(editor, 10)));
    const picture = await pictures(editor, scenario.keys);
    for (let sent = 0; sent < 1000; sent += scenario.atOnce) await keys(editor, scenario.atOnce);
    return { coldStart: median(cold), diagnostics, picture, burst, memoryBefore, memoryAfter: editor.memory() };
  } finally {
    await editor.close();
  }
}

async function open({ server, folder, uri, text, anchor }: Scenario): Promise<Editor> {
  const editor = await startEditor({ server, folder, uri, keys: keystrokesIn(text, anchor) });
  await editor.open();
  return editor;
}

async function repeat(times: number, measured: () => Promise<number>): Promise<readonly number[]> {
  const results: number[] = [];
  for (let time = 0; time < times; time++) results.push(await measured());
  return results;
}

const key = (editor: Editor): Promise<number> => keys(editor, 1);

async function keys(editor: Editor, count: number): Promise<number> {
  const begun = performance.now();
  for (let typed = 0; typed < count; typed++) editor.type();
  await editor.settled();
  return performance.now() - begun;
}

async function pictures(editor: Editor, times: number): Promise<number> {
  if ((await editor.picture()).kind !== 'drawn') return Number.NaN;
  const waits = await repeat(times, async () => {
    const begun = performance.now();
    editor.type();
    const answer = await editor.picture();
    if (answer.kind !== 'drawn') throw new Error(`no picture came, but ${answer.kind}`);
    return performance.now() - begun;
  });
  return median(waits.slice(Math.min(3, times - 1)));
}
