/** Tells a screen reader how the circuit stands: once the typing has stopped, and only what is new. */
import { debounce } from '../debounce.ts';

/** Milliseconds without a new picture. */
const quiet = 1000;

export interface Voice {
  readonly sayLater: (text: string) => void;
  readonly hush: () => void;
}

export function createVoice(region: HTMLElement): Voice {
  const say = debounce(
    (text: string) => {
      if (region.textContent !== text) region.textContent = text;
    },
    quiet,
    { set: (act, wait) => window.setTimeout(act, wait), clear: (timeout) => window.clearTimeout(timeout) },
  );
  return { sayLater: say.ask, hush: say.cancel };
}
