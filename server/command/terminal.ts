/** Where the command stands: its folder, the project it belongs to, and where words go. */

/** 0: done, warnings at most. 1: the circuit has errors. 2: there was nothing to work on. */
export type ExitCode = 0 | 1 | 2;

export interface Terminal {
  /** The folder that paths on the command line start from. */
  readonly folder: string;
  /** The folder of the installed project: its `package.json` and its examples. */
  readonly home: string;
  readonly paint: Paint;
  /** What was asked for. */
  print(text: string): void;
  /** What went wrong on the way. */
  complain(text: string): void;
}

type Tone = 'strong' | 'quiet' | 'error' | 'warning' | 'question' | 'information' | 'good';

/** Sets a piece of text in a tone, or leaves it as it is. */
export type Paint = (tone: Tone, text: string) => string;

const codes: Readonly<Record<Tone, readonly [on: number, off: number]>> = {
  strong: [1, 22],
  quiet: [2, 22],
  error: [31, 39],
  warning: [33, 39],
  question: [36, 39],
  information: [34, 39],
  good: [32, 39],
};

export const unpainted: Paint = (_tone, text) => text;

export const painted: Paint = (tone, text) => {
  const [on, off] = codes[tone];
  return `\u001b[${on}m${text}\u001b[${off}m`;
};

/** Colours only for eyes at a terminal, and never where they were declined (no-color.org). */
export function paintFor(stream: { readonly isTTY?: boolean }, environment: NodeJS.ProcessEnv): Paint {
  const declined = (environment['NO_COLOR'] ?? '') !== '' || environment['TERM'] === 'dumb';
  return stream.isTTY === true && !declined ? painted : unpainted;
}
