/** `linewright check`: says what is wrong with circuits. */
import { createLinewrightServices } from '../../language/index.ts';
import { choose, readArguments } from './arguments.ts';
import { checkJson } from './check-json.ts';
import { type CheckReport, checkText } from './check-text.ts';
import { openCircuit } from './circuit-file.ts';
import { checkFile, tallyOf } from './findings.ts';
import { plain } from './plain.ts';
import type { ExitCode, Terminal } from './terminal.ts';
import { misused, type Verb } from './verb.ts';

const options = {
  as: { type: 'string' },
  format: { type: 'string' },
  strict: { type: 'boolean' },
} as const;

export const check: Verb = {
  name: 'check',
  summary: 'say what is wrong with circuits',
  help: `linewright check FILES… [--as planned|found] [--format text|json] [--strict]

Says what is wrong with each circuit file, line by line, and what is still to be measured.

  --as planned    the circuit with what is to be fitted and without what is to be removed (usual)
  --as found      the circuit as it is on the vehicle
  --format text   for reading (usual): file:line:column severity code: message
  --format json   for programs: schema linewright/check/1
  --strict        warnings count as errors

Ends with 0 if there are no errors, with 1 if there are, with 2 if a file could not be read.
A file may use others from the git checkout that holds it; without one, from the folder that you are in, if that holds
it, or else from its own folder.
`,
  run: async (args, terminal) => {
    const given = readArguments(args, options);
    if (given.kind === 'wrong') return misused('check', given.message, terminal);
    const state = choose('as', given.values.as, ['planned', 'found']);
    if (state.kind === 'wrong') return misused('check', state.message, terminal);
    const format = choose('format', given.values.format, ['text', 'json']);
    if (format.kind === 'wrong') return misused('check', format.message, terminal);
    if (given.positionals.length === 0) return misused('check', 'Name at least one circuit file.', terminal);

    const services = createLinewrightServices();
    const opened = given.positionals.map((named) => openCircuit(named, { folder: terminal.folder, services }));
    const circuits = opened.filter((file) => file.kind === 'circuit');
    const report: CheckReport = {
      state: state.value,
      checked: circuits.map((circuit) => checkFile(circuit, state.value)),
      unusable: opened.filter((file) => file.kind === 'unusable'),
    };
    print(report, format.value, terminal);
    return exitCodeOf(report, given.values.strict === true ? 'warning' : 'error');
  },
};

function print(report: CheckReport, format: 'text' | 'json', terminal: Terminal): void {
  if (format === 'json') terminal.print(checkJson(report));
  else if (report.checked.length > 0) terminal.print(checkText(report, terminal.paint));
  for (const { file, reason } of report.unusable) terminal.complain(`${plain(file)}: ${reason}\n`);
}

function exitCodeOf({ checked, unusable }: CheckReport, least: 'error' | 'warning'): ExitCode {
  if (unusable.length > 0) return 2;
  const { error, warning } = tallyOf(checked.flatMap(({ findings }) => findings));
  return error > 0 || (least === 'warning' && warning > 0) ? 1 : 0;
}
