/** `linewright figures`: what a circuit comes to, and how each figure came about. */

import { figuresOf } from '../../language/index.ts';
import { choose, readArguments } from './arguments.ts';
import { complainOfGaps } from './broken-text.ts';
import { openCircuit } from './circuit-file.ts';
import { figuresJson } from './figures-json.ts';
import { figuresText } from './figures-text.ts';
import { plain } from './plain.ts';
import { misused, type Verb } from './verb.ts';

const options = { as: { type: 'string' }, format: { type: 'string' } } as const;

export const figures: Verb = {
  name: 'figures',
  summary: 'work out lengths and volumes, and say how each came about',
  help: `linewright figures FILE [--as planned|found] [--format text|json]

Prints what the circuit comes to: lengths to cut, fluid in every part, each with its formula, inputs and source.

  --as planned    the circuit with what is to be fitted and without what is to be removed (usual)
  --as found      the circuit as it is on the vehicle
  --format text   for reading, in the units of the file (usual)
  --format json   for programs, in SI units: schema linewright/figures/1

Ends with 0; with 1 if part of the text could not be read; with 2 if there was no file to read.
`,
  run: async (args, terminal) => {
    const given = readArguments(args, options);
    if (given.kind === 'wrong') return misused('figures', given.message, terminal);
    const state = choose('as', given.values.as, ['planned', 'found']);
    if (state.kind === 'wrong') return misused('figures', state.message, terminal);
    const format = choose('format', given.values.format, ['text', 'json']);
    if (format.kind === 'wrong') return misused('figures', format.message, terminal);
    const [named, ...more] = given.positionals;
    if (named === undefined || more.length > 0) return misused('figures', 'Name one circuit file.', terminal);

    const circuit = openCircuit(named, { folder: terminal.folder });
    if (circuit.kind === 'unusable') {
      terminal.complain(`${plain(circuit.file)}: ${circuit.reason}\n`);
      return 2;
    }
    const report = { circuit, state: state.value, figures: figuresOf(circuit.reading[state.value]).all };
    terminal.print(format.value === 'json' ? figuresJson(report) : figuresText(report, terminal.paint));
    return complainOfGaps(circuit, terminal);
  },
};
