/** What verbs say that go on with what could be read of a broken file. */
import type { Problem, TextProblem } from '../../language/index.ts';
import { type CircuitFile, where } from './circuit-file.ts';
import { plain } from './plain.ts';
import type { ExitCode, Terminal } from './terminal.ts';

type Gap = Pick<TextProblem | Problem, 'code' | 'message' | 'origin'>;

/** Where text could not be read or a used file could not be had, so that parts may be missing. */
export function gapsIn({ syntax, reading }: CircuitFile): readonly Gap[] {
  return [...syntax, ...reading.problems.filter(({ code }) => code === 'use-failed')];
}

/** Complains of the gaps; 1 if there is any, else 0. */
export function complainOfGaps(circuit: CircuitFile, terminal: Terminal): ExitCode {
  const gaps = gapsIn(circuit);
  for (const { origin, code, message } of gaps) {
    terminal.complain(`${where(circuit.placeOf(origin))} error ${code}: ${plain(message)}\n`);
  }
  if (gaps.length === 0) return 0;
  terminal.complain('Only the rest of the file is shown; parts may be missing from it.\n');
  return 1;
}
