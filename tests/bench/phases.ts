/** Times each stage from text to picture by itself, in this process. */
import { URI } from 'langium';
import { figuresOf } from '../../language/figures/index.ts';
import type { File } from '../../language/grammar/generated/ast.ts';
import { judge } from '../../language/rules/index.ts';
import { largestLayout } from '../../language/schematic/layout/elk.ts';
import { pictureOf } from '../../language/schematic/picture-of.ts';
import { place } from '../../language/schematic/place.ts';
import { svgOf } from '../../language/schematic/svg.ts';
import { createLinewrightServices } from '../../language/services.ts';
import { linesSheet, measureSheet, partsSheet, writeSheet } from '../../language/sheets/index.ts';
import { readFile } from '../../language/system/read/read-file.ts';
import type { UsableFiles } from '../../language/system/read/uses.ts';
import { inlineEngine } from '../../server/layout/inline.ts';
import { timed } from './statistics.ts';

/** Milliseconds by the name of the stage; one that does not apply is missing. */
export type PhaseTimes = ReadonlyMap<string, number>;

export interface PhaseInput {
  readonly uri: string;
  readonly text: string;
  /** Texts of the files it uses, by the path that it names them by. */
  readonly used: ReadonlyMap<string, string>;
  readonly runs: number;
}

export async function timePhases({ uri, text, used, runs }: PhaseInput): Promise<PhaseTimes> {
  const services = createLinewrightServices();
  const often = { runs, warmUp: Math.max(2, Math.ceil(runs / 3)) };
  const parse = (content: string) =>
    services.shared.workspace.LangiumDocumentFactory.fromString<File>(content, URI.parse(uri)).parseResult.value;
  const parsed = new Map([...used].map(([path, content]) => [path, parse(content)]));
  const files: UsableFiles = {
    find: (_from, path) => {
      const file = parsed.get(path);
      return file === undefined ? { failure: 'missing' } : { uri: `${uri}/${path}`, file };
    },
  };
  const file = parse(text);
  const reading = readFile(file, uri, files);
  const system = reading.planned;
  const { findings } = judge(reading, 'planned');
  const picture = () => pictureOf(system, { findings, figures: figuresOf(system) });
  const sheets = (): number => {
    const figures = figuresOf(system);
    const made = [
      linesSheet(system, figures, { findings }),
      partsSheet(reading, system, figures, { findings }),
      measureSheet(reading, system, figures, { findings }),
    ];
    return made.reduce((length, sheet) => length + (writeSheet(sheet, 'html')?.length ?? 0), 0);
  };
  const times = new Map([
    ['parse', await timed(() => parse(text), often)],
    ['read', await timed(() => readFile(file, uri, files), often)],
    ['figures', await timed(() => figuresOf(system).all.length, often)],
    ['rules', await timed(() => judge(reading, 'planned'), often)],
    ['picture', await timed(picture, often)],
    ['all sheets as pages', await timed(sheets, often)],
  ]);
  const drawn = picture();
  if (drawn.nodes.length > largestLayout) return times;
  const engine = inlineEngine();
  const first = await place(drawn, engine);
  if (first.kind === 'placed') {
    const { placed } = first;
    const rarely = { runs: Math.max(3, Math.ceil(runs / 4)), warmUp: 1 };
    times.set('layout, fresh', await timed(() => place(drawn, engine), rarely));
    times.set('layout, kept', await timed(() => place(drawn, engine, { previous: placed.placement }), rarely));
    times.set('svg', await timed(() => svgOf(placed, { theme: 'window' }), rarely));
  }
  await engine.dispose();
  return times;
}
