/** Waits for a quiet moment before acting. */
export interface Debounced<A> {
  /** Acts with the newest argument once nothing more has been asked for the given time. */
  readonly ask: (argument: A) => void;
  readonly cancel: () => void;
}

/** The part of the clock that is needed, so that tests bring their own. */
export interface Timer<H> {
  readonly set: (action: () => void, milliseconds: number) => H;
  readonly clear: (handle: H) => void;
}

export function debounce<A, H>(act: (argument: A) => void, milliseconds: number, timer: Timer<H>): Debounced<A> {
  let pending: H | undefined;
  const cancel = () => {
    if (pending !== undefined) timer.clear(pending);
    pending = undefined;
  };
  return {
    ask: (argument) => {
      cancel();
      pending = timer.set(() => {
        pending = undefined;
        act(argument);
      }, milliseconds);
    },
    cancel,
  };
}
