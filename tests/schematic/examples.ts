/** The example vehicles as pictures, in both states. */
import { readFileSync } from 'node:fs';
import { figuresOf } from '../../language/figures/index.ts';
import type { Picture } from '../../language/schematic/picture.ts';
import { pictureOf } from '../../language/schematic/picture-of.ts';
import type { State } from '../../language/system/presence.ts';
import { readCircuit } from '../support/read.ts';

const folder = new URL('../../examples/', import.meta.url);

export const exampleFiles = [
  'orchard-van/orchard-van.circuit',
  'orchard-van-finished/orchard-van.circuit',
  'coupe-disc-drum/coupe.circuit',
  'diagonal-split/hatchback.circuit',
  'hydraulic-clutch/clutch.circuit',
] as const;

const stockPath = '../workshop-stock/stock.circuit';

export function examplePicture(file: (typeof exampleFiles)[number], state: State): Picture {
  const text = readFileSync(new URL(file, folder), 'utf8');
  const stock = readFileSync(new URL('workshop-stock/stock.circuit', folder), 'utf8');
  const system = readCircuit(text, { [stockPath]: stock })[state];
  return pictureOf(system, { figures: figuresOf(system), findings: [] });
}
