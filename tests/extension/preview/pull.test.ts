/** Pulling pictures: one at a time, the newest question last, nothing of an old subject. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createPull } from '../../../extension/preview/pull.ts';

interface Asked {
  readonly question: number;
  readonly answer: () => Promise<void>;
  readonly refuse: () => Promise<void>;
}

/** A server that answers when the test says so. */
function slowServer() {
  const asked: Asked[] = [];
  const delivered: number[] = [];
  const failed: number[] = [];
  const settled = () => new Promise<void>((resolve) => setImmediate(resolve));
  const pull = createPull<number, number>({
    fetch: (question) =>
      new Promise((resolve, reject) => {
        asked.push({
          question,
          answer: () => {
            resolve(question);
            return settled();
          },
          refuse: () => {
            reject(new Error('no'));
            return settled();
          },
        });
      }),
    deliver: (answer) => delivered.push(answer),
    fail: (_error, question) => failed.push(question),
  });
  return { pull, asked, delivered, failed };
}

test('while one question is open the newest waits and those between are skipped', async () => {
  const { pull, asked, delivered } = slowServer();
  for (const version of [1, 2, 3, 4]) pull.ask(version);
  expect(asked.map(({ question }) => question)).toEqual([1]);
  await asked[0]?.answer();
  expect(asked.map(({ question }) => question)).toEqual([1, 4]);
  await asked[1]?.answer();
  expect(delivered).toEqual([1, 4]);
});

test('an answer to an old subject is dropped, however late it comes', async () => {
  const { pull, asked, delivered } = slowServer();
  pull.ask(1);
  pull.drop();
  pull.ask(2);
  await asked[1]?.answer();
  await asked[0]?.answer();
  expect(delivered).toEqual([2]);
});

test('after a failure the next question is asked all the same', async () => {
  const { pull, asked, delivered, failed } = slowServer();
  pull.ask(1);
  pull.ask(2);
  await asked[0]?.refuse();
  await asked[1]?.answer();
  expect([failed, delivered]).toEqual([[1], [2]]);
});

test('whatever is typed, and however slow the server is, the last question is answered last and never more than one is open', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.constantFrom('ask', 'answer', 'refuse', 'drop'), { maxLength: 40 }), async (steps) => {
      const { pull, asked, delivered } = slowServer();
      let question = 0;
      let open = 0;
      for (const step of steps) {
        if (step === 'ask') pull.ask(++question);
        if (step === 'drop') pull.drop();
        if (step === 'drop') open = asked.length;
        if (step === 'answer') await asked[open]?.answer();
        if (step === 'refuse') await asked[open]?.refuse();
        if ((step === 'answer' || step === 'refuse') && open < asked.length) open++;
        expect(asked.length - open).toBeLessThanOrEqual(1);
      }
      pull.ask(++question);
      while (open < asked.length) await asked[open++]?.answer();
      expect(delivered.at(-1)).toBe(question);
      expect(delivered).toEqual([...delivered].sort((a, b) => a - b));
    }),
  );
});
