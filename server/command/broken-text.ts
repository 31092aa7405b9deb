/** What verbs say that go on with what could be read of a broken file. */
import { type CircuitFile, where } from './circuit-file.ts';
import { plain } from './plain.ts';
import type { ExitCode, Terminal } from './terminal.ts';

/** Complains of broken text and of files that could not be used; 1 if there is any, else 0. */
export function complainOfGaps({ syntax, reading, placeOf }: CircuitFile, terminal: Terminal): ExitCode {
  const gaps = [...syntax, ...reading.problems.filter(({ code }) => code === 'use-failed')];
  for (const { origin, code, message } of gaps) {
    terminal.complain(`${where(placeOf(origin))} error ${code}: ${plain(message)}\n`);
  }
  if (gaps.length === 0) return 0;
  terminal.complain('Only the rest of the file is shown; parts may be missing from it.\n');
  return 1;
}
