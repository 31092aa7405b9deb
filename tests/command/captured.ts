/** A terminal that keeps what is printed to it. */
import type { Paint, Terminal } from '../../server/command/terminal.ts';
import { unpainted } from '../../server/command/terminal.ts';
import { root } from '../architecture/sources.ts';

export interface CapturedTerminal extends Terminal {
  readonly printed: () => string;
  readonly complained: () => string;
}

export function captured(folder: string, paint: Paint = unpainted): CapturedTerminal {
  const heard = { out: '', err: '' };
  return {
    folder,
    home: root,
    paint,
    print: (text) => {
      heard.out += text;
    },
    complain: (text) => {
      heard.err += text;
    },
    printed: () => heard.out,
    complained: () => heard.err,
  };
}
