/** The example circuits, read with the files they use. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { FileReading } from '../../language/system/system.ts';
import { readCircuit } from '../support/read.ts';

export const examplesFolder = resolve(dirname(fileURLToPath(import.meta.url)), '../../examples');

export interface Example {
  /** `orchard-van/orchard-van.circuit` */
  readonly name: string;
  readonly folder: string;
  readonly text: string;
}

/** Every circuit file under examples/, in the order of its name. */
export const examples: readonly Example[] = readdirSync(examplesFolder, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.circuit'))
  .map((path) => path.split(sep).join(posix.sep))
  .sort()
  .map((name) => ({
    name,
    folder: posix.dirname(name),
    text: readFileSync(join(examplesFolder, name), 'utf8'),
  }));

/** The text by the path that the file of the example would write in its `use`. */
function besides({ folder }: Example): Readonly<Record<string, string>> {
  return Object.fromEntries(
    examples.map(({ name, text }) => [relative(folder, name).split(sep).join(posix.sep), text]),
  );
}

/** What an example says; `text` in the place of its own for trying what a change does. */
export function readExample(example: Example, text: string = example.text): FileReading {
  return readCircuit(text, besides(example));
}
