/** A queue that runs one job at a time and keeps, for each lane, only the newest job that waits. */

type Outcome<Result> = { readonly kind: 'done'; readonly result: Result } | { readonly kind: 'superseded' };

interface Waiting<Job, Result> {
  readonly job: Job;
  readonly settle: (outcome: Outcome<Result>) => void;
}

export interface LatestWins<Job, Result> {
  submit(lane: string, job: Job): Promise<Outcome<Result>>;
  /** What still waits is superseded. */
  clear(): void;
}

/** `run` must not reject. */
export function latestWins<Job, Result>(run: (job: Job) => Promise<Result>): LatestWins<Job, Result> {
  const waiting = new Map<string, Waiting<Job, Result>>();
  const state = { busy: false };

  const next = async (): Promise<void> => {
    if (state.busy) return;
    state.busy = true;
    for (let entry = waiting.entries().next(); !entry.done; entry = waiting.entries().next()) {
      const [lane, { job, settle }] = entry.value;
      waiting.delete(lane);
      settle({ kind: 'done', result: await run(job) });
    }
    state.busy = false;
  };

  return {
    submit: (lane, job) =>
      new Promise((settle) => {
        waiting.get(lane)?.settle({ kind: 'superseded' });
        waiting.set(lane, { job, settle });
        void next();
      }),
    clear: () => {
      for (const { settle } of waiting.values()) settle({ kind: 'superseded' });
      waiting.clear();
    },
  };
}
