/** `linewright draw`: writes the schematic of a circuit as SVG. */
import { extname, resolve } from 'node:path';
import { stateWords } from '../../language/index.ts';
import { choose, readArguments } from './arguments.ts';
import { complainOfGaps } from './broken-text.ts';
import { openCircuit } from './circuit-file.ts';
import { drawFile } from './picture.ts';
import { plain } from './plain.ts';
import { misused, type Verb } from './verb.ts';
import { caution } from './words.ts';
import { writeWhole } from './write-whole.ts';

const options = { as: { type: 'string' }, out: { type: 'string', short: 'o' }, theme: { type: 'string' } } as const;

export const draw: Verb = {
  name: 'draw',
  summary: 'write the schematic of a circuit as SVG',
  help: `linewright draw FILE [-o OUT.svg] [--as planned|found] [--theme print|light|dark|high-contrast]

Draws the circuit and writes the picture whole or not at all.

  -o, --out OUT.svg   where to; usual is the circuit's own name with .svg behind it, beside the circuit
  --as planned        the circuit with what is to be fitted and without what is to be removed (usual)
  --as found          the circuit as it is on the vehicle
  --theme THEME       print (usual), light, dark or high-contrast

Ends with 0; with 1 if part of the text could not be read and only the rest was drawn; with 2 if nothing was drawn.
`,
  run: async (args, terminal) => {
    const given = readArguments(args, options);
    if (given.kind === 'wrong') return misused('draw', given.message, terminal);
    const state = choose('as', given.values.as, ['planned', 'found']);
    if (state.kind === 'wrong') return misused('draw', state.message, terminal);
    const theme = choose('theme', given.values.theme, ['print', 'light', 'dark', 'high-contrast']);
    if (theme.kind === 'wrong') return misused('draw', theme.message, terminal);
    const [named, ...more] = given.positionals;
    if (named === undefined || more.length > 0) return misused('draw', 'Name one circuit file.', terminal);
    const { out } = given.values;
    if (out !== undefined && extname(out) !== '.svg') {
      return misused('draw', `The picture is SVG; give it a name that ends in .svg, not “${plain(out)}”.`, terminal);
    }

    const circuit = openCircuit(named, { folder: terminal.folder });
    if (circuit.kind === 'unusable') {
      terminal.complain(`${plain(circuit.file)}: ${circuit.reason}\n`);
      return 2;
    }
    const drawn = await drawFile(circuit, { state: state.value, theme: theme.value });
    if (drawn.kind === 'refused') {
      terminal.complain(`${plain(circuit.file)}: ${drawn.reason}\n`);
      complainOfGaps(circuit, terminal);
      return 2;
    }
    const target = out === undefined ? besideOf(circuit.path) : resolve(terminal.folder, out);
    const written = await writeWhole(target, drawn.svg);
    if (written.kind === 'refused') {
      terminal.complain(`${plain(out ?? target)} was not written: ${written.reason}.\n`);
      return 2;
    }
    terminal.print(`${plain(circuit.file)} ${stateWords[state.value]} → ${plain(out ?? target)}\n`);
    terminal.print(`${terminal.paint('quiet', caution)}\n`);
    return complainOfGaps(circuit, terminal);
  },
};

function besideOf(circuit: string): string {
  return circuit.replace(/\.circuit$/, '.svg');
}
