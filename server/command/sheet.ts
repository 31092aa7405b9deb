/** `linewright sheet`: prints what is wanted at the bench, as text, Markdown, a page for paper, JSON or CSV. */
import { extname, resolve } from 'node:path';
import { figuresOf, type SheetFormat, stateWords, withUnread, writeSheet } from '../../language/index.ts';
import { choose, readArguments } from './arguments.ts';
import { complainOfGaps } from './broken-text.ts';
import { type CircuitFile, openCircuit, where } from './circuit-file.ts';
import { checkFile } from './findings.ts';
import { plain } from './plain.ts';
import { sheetRows } from './sheet-rows.ts';
import { readStockLength } from './stock-length.ts';
import { aligned } from './table.ts';
import { misused, type Verb } from './verb.ts';
import { caution } from './words.ts';
import { writeWhole } from './write-whole.ts';

const options = {
  as: { type: 'string' },
  format: { type: 'string' },
  out: { type: 'string', short: 'o' },
  all: { type: 'boolean' },
  'stock-length': { type: 'string' },
} as const;

const names = sheetRows.map(({ name }) => name);

/** What the ending of a file name asks for where no format is named. */
const formatOfEnding: Readonly<Record<string, SheetFormat>> = {
  '.txt': 'text',
  '.md': 'markdown',
  '.html': 'html',
  '.json': 'json',
  '.csv': 'csv',
};

export const sheet: Verb = {
  name: 'sheet',
  summary: `print a sheet for the bench: ${names.join(', ')}`,
  help: `linewright sheet ${names.join('|')} FILE [-o OUT] [--format text|markdown|html|json|csv]
                 [--as planned|found] [--all] [--stock-length LENGTH]

${aligned(
  sheetRows.map(({ name, summary }) => [name, summary]),
  { indent: '  ', gap: '   ' },
).join('\n')}

  -o, --out OUT         into a file, whole or not at all; its ending .txt, .md, .html, .json or .csv is its format
  --format text         for reading here (usual); html prints on A4 and Letter, json is in SI units
  --as planned          the circuit with what is to be fitted and without what is to be removed (usual)
  --as found            the circuit as it is on the vehicle
  --all                 lines: those too that are done or stay as they are
  --stock-length LENGTH lines: one coil or bar as bought, such as "20 ft" or "6 m"; usual is a coil of 25 ft (7.62 m)

Ends with 0; with 1 if part of the text could not be read and only the rest was printed; with 2 if nothing was.
`,
  run: async (args, terminal) => {
    const given = readArguments(args, options);
    if (given.kind === 'wrong') return misused('sheet', given.message, terminal);
    const { out, all, 'stock-length': stockText } = given.values;
    const state = choose('as', given.values.as, ['planned', 'found']);
    if (state.kind === 'wrong') return misused('sheet', state.message, terminal);
    const ending = out === undefined ? undefined : formatOfEnding[extname(out).toLowerCase()];
    const format = choose('format', given.values.format ?? ending, ['text', 'markdown', 'html', 'json', 'csv']);
    if (format.kind === 'wrong') return misused('sheet', format.message, terminal);
    const stock = stockText === undefined ? undefined : readStockLength(stockText);
    if (stock?.kind === 'wrong') return misused('sheet', stock.message, terminal);
    const [word, named, ...more] = given.positionals;
    const row = sheetRows.find(({ name }) => name === word);
    if (row === undefined) {
      return misused('sheet', `Name a sheet (${names.join(', ')}) and then one circuit file.`, terminal);
    }
    if (named === undefined || more.length > 0) return misused('sheet', 'Name one circuit file.', terminal);

    const circuit = openCircuit(named, { folder: terminal.folder });
    if (circuit.kind === 'unusable') {
      terminal.complain(`${plain(circuit.file)}: ${circuit.reason}\n`);
      return 2;
    }
    const system = circuit.reading[state.value];
    const made = row.make({
      reading: circuit.reading,
      system,
      figures: figuresOf(system),
      findings: checkFile(circuit, state.value).findings,
      choice: { which: all === true ? 'all' : 'to-make', stock: stock?.value },
    });
    const text = writeSheet(withUnread(made, complaintsOf(circuit)), format.value);
    if (text === undefined) return misused('sheet', `The sheet ${row.name} is no list, so not for CSV.`, terminal);
    if (out === undefined) {
      terminal.print(format.value === 'text' || format.value === 'markdown' ? plainLines(text) : text);
      return complainOfGaps(circuit, terminal);
    }
    const written = await writeWhole(resolve(terminal.folder, out), text);
    if (written.kind === 'refused') {
      terminal.complain(`${plain(out)} was not written: ${written.reason}.\n`);
      return 2;
    }
    terminal.print(`${made.title}, ${plain(circuit.file)} ${stateWords[state.value]} → ${plain(out)}\n`);
    terminal.print(`${terminal.paint('quiet', caution)}\n`);
    return complainOfGaps(circuit, terminal);
  },
};

/** What stands on the sheet of what could not be read. */
function complaintsOf({ syntax, reading, placeOf }: CircuitFile): readonly string[] {
  return [...syntax, ...reading.problems].map(({ origin, message }) => `${where(placeOf(origin))} ${plain(message)}`);
}

const plainLines = (text: string): string => text.split('\n').map(plain).join('\n');
