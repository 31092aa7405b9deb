/** The benchmark: a table of what a person waits for and what each stage takes, with how it grows. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { allParts } from '../../language/system/system.ts';
import { largeCircuit } from '../support/large-circuit.ts';
import { readCircuit } from '../support/read.ts';
import { type PhaseTimes, timePhases } from './phases.ts';
import { measureWaits, type Waits } from './scenarios.ts';
import { printTable } from './table.ts';

export interface BenchOptions {
  /** Folder of the project, with its bundles in `dist`. */
  readonly root: string;
  /** Sizes of the generated files in parts; the usual ones if there are none. */
  readonly sizes: readonly number[];
}

export interface Measured {
  readonly title: string;
  readonly parts: number;
  readonly lines: number;
  readonly waits: Waits;
  readonly phases: PhaseTimes;
}

const stockPath = '../workshop-stock/stock.circuit';

export async function bench({ root, sizes }: BenchOptions): Promise<void> {
  const server = join(root, 'dist', 'server.cjs');
  const measured = [await measureExample(root, server)];
  for (const size of sizes.length > 0 ? sizes : [1000, 10_000]) measured.push(await measureGenerated(size, server));
  printTable(measured);
}

async function measureExample(root: string, server: string): Promise<Measured> {
  const examples = join(root, 'examples');
  const path = join(examples, 'orchard-van', 'orchard-van.circuit');
  const text = readFileSync(path, 'utf8');
  const stock = readFileSync(join(examples, 'workshop-stock', 'stock.circuit'), 'utf8');
  const uri = pathToFileURL(path).href;
  return measure('the van', {
    server,
    folder: pathToFileURL(examples).href,
    uri,
    text,
    used: new Map([[stockPath, stock]]),
    anchor: 'tee switch-tee on frame {',
    runs: { starts: 7, keys: 40, atOnce: 10, phases: 30 },
  });
}

async function measureGenerated(size: number, server: string): Promise<Measured> {
  const folder = mkdtempSync(join(tmpdir(), 'linewright-bench-'));
  try {
    const text = largeCircuit(size);
    const path = join(folder, 'large.circuit');
    writeFileSync(path, text);
    return await measure(`generated, ${size}`, {
      server,
      folder: pathToFileURL(folder).href,
      uri: pathToFileURL(path).href,
      text,
      used: new Map(),
      anchor: 'cross cross-3 on frame {',
      runs:
        size > 3000 ? { starts: 2, keys: 5, atOnce: 50, phases: 4 } : { starts: 3, keys: 12, atOnce: 20, phases: 10 },
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Subject {
  readonly server: string;
  readonly folder: string;
  readonly uri: string;
  readonly text: string;
  readonly used: ReadonlyMap<string, string>;
  readonly anchor: string;
  readonly runs: {
    readonly starts: number;
    readonly keys: number;
    readonly atOnce: number;
    readonly phases: number;
  };
}

async function measure(title: string, { runs, used, ...subject }: Subject): Promise<Measured> {
  process.stderr.write(`measuring ${title} …\n`);
  const { planned } = readCircuit(subject.text, Object.fromEntries(used));
  const phases = await timePhases({ ...subject, used, runs: runs.phases });
  const waits = await measureWaits({ ...subject, ...runs });
  return { title, parts: allParts(planned).length, lines: subject.text.split('\n').length, waits, phases };
}
