/** Threads as they are named at the bench, through the parser to the thread that is judged. */
import { describe, expect, test } from 'vitest';
import { threads } from '../../../language/standards/thread-table.ts';
import { parseErrors, readCircuit } from '../../support/read.ts';

function portWith(connection: string): { name: string | undefined; messages: readonly string[] } {
  const text = `tee t {\n  ports a, b, c: ${connection}\n}\n`;
  const { planned, problems } = readCircuit(text);
  const port = planned.parts[0]?.ports[0]?.connection;
  const known = port?.kind === 'threaded' && port.thread.kind === 'known' ? port.thread.thread.name : undefined;
  return { name: known, messages: [...parseErrors(text), ...problems.map(({ message }) => message)] };
}

test.each(threads.flatMap(({ name, spellings }) => [name, ...spellings].map((written) => [written, name] as const)))(
  '%s is %s',
  (written, name) => {
    expect(portWith(`${written} female`)).toEqual({ name, messages: [] });
  },
);

test.each([
  ['M10×1', 'M10x1'],
  ['M10x1.0', 'M10x1'],
  ['3/8-24 UNF', '3/8-24'],
  ['1/8-27 NPT', '1/8 NPT'],
])('%s is %s too', (written, name) => {
  expect(portWith(written)).toEqual({ name, messages: [] });
});

describe('what is no thread is said in its own words', () => {
  test.each([
    ['M10', 'M10 alone does not say the pitch'],
    ['M10x9', 'cannot be cut'],
    ['3/8-400', 'cannot be cut'],
  ])('%s', (written, words) => {
    const { name, messages } = portWith(`${written} male`);
    expect(messages.join(' ')).toContain(words);
    expect(name).toBeUndefined();
  });

  test('as it was written, with its blanks', () => {
    expect(portWith('5 NPT').messages).toEqual([
      '“5 NPT” is not the name of a thread; write it like 3/8-24, M10x1 or 1/8 NPT.',
    ]);
  });
});
