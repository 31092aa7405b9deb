/** Waiting for a quiet moment. */
import { expect, test } from 'vitest';
import { debounce } from '../../extension/debounce.ts';

/** A clock that the test winds. */
function clock() {
  let now = 0;
  const alarms = new Map<number, { readonly at: number; readonly ring: () => void }>();
  let last = 0;
  return {
    timer: {
      set: (ring: () => void, wait: number) => {
        alarms.set(++last, { at: now + wait, ring });
        return last;
      },
      clear: (alarm: number) => void alarms.delete(alarm),
    },
    pass: (milliseconds: number) => {
      now += milliseconds;
      for (const [key, { at, ring }] of alarms) {
        if (at > now) continue;
        alarms.delete(key);
        ring();
      }
    },
  };
}

test('only the last of a burst counts, once it has been quiet', () => {
  const { timer, pass } = clock();
  const acted: number[] = [];
  const debounced = debounce((argument: number) => acted.push(argument), 100, timer);
  for (const argument of [1, 2, 3]) {
    debounced.ask(argument);
    pass(60);
  }
  expect(acted).toEqual([]);
  pass(40);
  expect(acted).toEqual([3]);
  pass(1000);
  expect(acted).toEqual([3]);
});

test('what is cancelled does not happen', () => {
  const { timer, pass } = clock();
  const acted: number[] = [];
  const debounced = debounce((argument: number) => acted.push(argument), 100, timer);
  debounced.ask(1);
  debounced.cancel();
  pass(1000);
  expect(acted).toEqual([]);
});
