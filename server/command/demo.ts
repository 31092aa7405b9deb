/** `linewright demo`: the main job on an example: what is wrong, what it comes to, and the picture. */
import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { figuresOf, type State, stateWords, writeResult } from '../../language/index.ts';
import { readArguments } from './arguments.ts';
import { findingLines, measuringLines, tallyLine } from './check-text.ts';
import { type CircuitFile, openCircuit } from './circuit-file.ts';
import { checkFile } from './findings.ts';
import { drawFile } from './picture.ts';
import { plain } from './plain.ts';
import { aligned } from './table.ts';
import type { ExitCode, Terminal } from './terminal.ts';
import { misused, type Verb } from './verb.ts';
import { caution } from './words.ts';
import { writeWhole } from './write-whole.ts';

const options = { out: { type: 'string', short: 'o' } } as const;
const example = join('examples', 'orchard-van', 'orchard-van.circuit');

export const demo: Verb = {
  name: 'demo',
  summary: 'check, compute and draw an example',
  help: `linewright demo [-o FOLDER]

Takes an old van whose single brake circuit is to be split: says what is wrong with it as found and as planned, prints
the key figures of the plan, and writes both schematics.

  -o, --out FOLDER   where the schematics go; usual is .cache/demo in linewright's own folder
`,
  run: async (args, terminal) => {
    const given = readArguments(args, options);
    if (given.kind === 'wrong') return misused('demo', given.message, terminal);
    if (given.positionals.length > 0) return misused('demo', 'The demo takes no file.', terminal);
    const circuit = openCircuit(join(terminal.home, example), { folder: terminal.folder, workspace: terminal.home });
    if (circuit.kind === 'unusable') {
      terminal.complain(`${plain(circuit.file)}: ${circuit.reason}\n`);
      return 2;
    }
    const { out } = given.values;
    const folder = out === undefined ? join(terminal.home, '.cache', 'demo') : resolve(terminal.folder, out);
    const { paint } = terminal;
    for (const state of ['found', 'planned'] as const) {
      const checked = checkFile(circuit, state);
      terminal.print(`${[...findingLines(checked, state, paint), tallyLine(checked, paint), ''].join('\n')}\n`);
    }
    terminal.print(`${measuringLines(circuit, paint).join('\n')}\n`);
    terminal.print(keyFigures(circuit, terminal));
    const code = await writePictures(circuit, folder, terminal);
    terminal.print(`\nOpen ${plain(circuit.file)} in the editor and change it, or go on with
  linewright check ${plain(circuit.file)} --as found
  linewright figures ${plain(circuit.file)}
\n${paint('quiet', caution)}\n`);
    return code;
  },
};

/** What the work on the plan needs first: how long each tube is cut, how much fluid goes in. */
const keyIds: readonly string[] = ['run.cut-length', 'circuit.volume', 'system.volume'];

function keyFigures({ reading }: CircuitFile, { paint }: Terminal): string {
  const key = figuresOf(reading.planned).all.filter(({ id }) => keyIds.includes(id));
  const labelOf = (subject: string): string => {
    const parts: ReadonlyMap<string, { readonly label: string }> = reading.planned.partById;
    return parts.get(subject)?.label ?? 'the whole system';
  };
  const rows = key.map((figure) => [plain(labelOf(figure.subject)), figure.title, writeResult(figure)]);
  const lines = [paint('strong', 'Key figures as planned'), ...aligned(rows, { indent: '  ', gap: '  ' })];
  return `${lines.join('\n')}\n\n`;
}

async function writePictures(circuit: CircuitFile, folder: string, terminal: Terminal): Promise<ExitCode> {
  for (const state of ['found', 'planned'] satisfies readonly State[]) {
    const drawn = await drawFile(circuit, { state, theme: 'light' });
    const path = join(folder, `orchard-van-as-${state}.svg`);
    const failure = drawn.kind === 'refused' ? drawn.reason : await write(path, drawn.svg);
    if (failure !== undefined) {
      terminal.complain(`${plain(path)} was not written: ${failure}\n`);
      return 2;
    }
    terminal.print(`Schematic ${stateWords[state]}: ${plain(path)}\n`);
  }
  return 0;
}

/** A sentence if it could not be written. */
async function write(path: string, svg: string): Promise<string | undefined> {
  try {
    mkdirSync(join(path, '..'), { recursive: true });
  } catch {
    return 'its folder could not be made; name another with -o.';
  }
  const written = await writeWhole(path, svg);
  return written.kind === 'refused' ? `${written.reason}; name another folder with -o.` : undefined;
}
