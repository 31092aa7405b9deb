/** Finds the verb, gives help, and keeps the inside of the program off the user's screen. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { check } from './check.ts';
import { demo } from './demo.ts';
import { draw } from './draw.ts';
import { figures } from './figures.ts';
import { plain } from './plain.ts';
import { sheet } from './sheet.ts';
import { aligned } from './table.ts';
import type { ExitCode, Terminal } from './terminal.ts';
import type { Verb } from './verb.ts';
import { caution } from './words.ts';

export const verbs: readonly Verb[] = [check, figures, draw, sheet, demo];

/** Does what the words behind `linewright` ask for. Never rejects. */
export async function run(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const [word, ...rest] = args;
  if (word === undefined) {
    terminal.complain(help());
    return 2;
  }
  if (word === '--help' || word === '-h' || word === 'help') return helpOn(rest[0], terminal);
  if (word === '--version' || word === '-v') {
    terminal.print(`linewright ${versionIn(terminal.home)}\n`);
    return 0;
  }
  const verb = verbs.find(({ name }) => name === word);
  if (verb === undefined) return unknownVerb(word, terminal);
  if (asksForHelp(rest)) return helpOn(verb.name, terminal);
  try {
    return await verb.run(rest, terminal);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    terminal.complain(`A mistake in linewright itself stopped it: ${plain(message)}\n`);
    return 2;
  }
}

function asksForHelp(args: readonly string[]): boolean {
  const end = args.indexOf('--');
  return (end < 0 ? args : args.slice(0, end)).some((word) => word === '--help' || word === '-h');
}

function helpOn(word: string | undefined, terminal: Terminal): ExitCode {
  const verb = verbs.find(({ name }) => name === word);
  if (word !== undefined && verb === undefined) return unknownVerb(word, terminal);
  terminal.print(verb?.help ?? help());
  return 0;
}

function unknownVerb(word: string, terminal: Terminal): ExitCode {
  const names = verbs.map(({ name }) => name);
  terminal.complain(`linewright has no verb “${plain(word)}”. There are ${names.join(', ')}; see --help.\n`);
  return 2;
}

function help(): string {
  const rows = verbs.map(({ name, summary }) => [name, summary]);
  return `linewright checks, computes and draws the hydraulic circuits of vehicles, written as text in .circuit files.

${aligned(rows, { indent: '  linewright ', gap: '   ' }).join('\n')}

  linewright VERB --help   says more about one of them
  linewright --version     says which linewright this is

${caution}
`;
}

function versionIn(home: string): string {
  const manifest: unknown = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'));
  const version = typeof manifest === 'object' && manifest !== null && 'version' in manifest ? manifest.version : '';
  return String(version);
}
