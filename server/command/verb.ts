/** What a verb of the command is. */
import type { ExitCode, Terminal } from './terminal.ts';

export interface Verb {
  readonly name: string;
  /** One line for the list of verbs. */
  readonly summary: string;
  /** What `--help` behind the verb prints. */
  readonly help: string;
  run(args: readonly string[], terminal: Terminal): Promise<ExitCode>;
}

/** Says what is wrong with the command line and where to read on. */
export function misused(verb: string, message: string, terminal: Terminal): ExitCode {
  terminal.complain(`${message}\nSee linewright ${verb} --help.\n`);
  return 2;
}
