/** Pulls answers one at a time and never lets an old one arrive after the question has changed. */
export interface Pull<Q> {
  /** Asks; while an earlier question of the same subject is still open, the newest one waits for its answer. */
  readonly ask: (question: Q) => void;
  /** The subject has changed: whatever is under way no longer counts. */
  readonly drop: () => void;
}

export interface PullSteps<Q, A> {
  readonly fetch: (question: Q) => Promise<A>;
  readonly deliver: (answer: A, question: Q) => void;
  readonly fail: (error: unknown, question: Q) => void;
}

export function createPull<Q, A>(steps: PullSteps<Q, A>): Pull<Q> {
  let subject = 0;
  let underWay = false;
  let waiting: { readonly question: Q } | undefined;

  const begin = async (question: Q) => {
    const asked = subject;
    underWay = true;
    try {
      const answer = await steps.fetch(question);
      if (asked === subject) steps.deliver(answer, question);
    } catch (error) {
      if (asked === subject) steps.fail(error, question);
    }
    if (asked !== subject) return;
    underWay = false;
    const next = waiting;
    waiting = undefined;
    if (next !== undefined) void begin(next.question);
  };

  return {
    ask: (question) => {
      if (underWay) waiting = { question };
      else void begin(question);
    },
    drop: () => {
      subject++;
      underWay = false;
      waiting = undefined;
    },
  };
}
