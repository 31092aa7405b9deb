/** Tells a quantity in both families of units, and a thread with its sizes and what it goes with. */

import { saySource } from '../figures/explain.ts';
import {
  type Dimension,
  defaultUnitFor,
  dimensionWords,
  type Estimate,
  estimateOf,
  findUnit,
  plainUnit,
  readStated,
  type Stated,
  writeEstimate,
  writeQuantity,
  writeStated,
  writtenIn,
} from '../quantity/index.ts';
import type { WrittenQuantity } from '../scoping/standing.ts';
import { strippingPairs } from '../standards/stripping-pairs.ts';
import { readThread, type Thread } from '../standards/threads.ts';
import { nutBores } from '../standards/tube-nuts.ts';
import { tubeSizeOf } from '../standards/tube-sizes.ts';
import { type Card, capital, fact, text } from './card.ts';

/** Undefined for a quantity that cannot be read; its problem is told elsewhere. */
export function quantityCard({ about, terms, tolerance, upper }: WrittenQuantity): Card | undefined {
  const word = [...terms, ...(upper ?? [])].findLast(({ unit }) => unit !== undefined)?.unit;
  const dimension = word === undefined ? 'number' : findUnit(word)?.dimension;
  if (dimension === undefined) return undefined;
  const { stated } = readStated(
    {
      about,
      terms,
      ...(tolerance ? { toleranceTerms: tolerance } : {}),
      ...(upper ? { toTerms: upper } : {}),
    },
    dimension,
  );
  if (stated === undefined || stated.kind === 'unknown') return undefined;
  const title = writeStated(stated);
  return {
    title,
    lines: [
      text(`${capital(dimensionWords[dimension])}.`),
      ...inBothFamilies(stated, dimension).filter(({ text: shown }) => shown !== title),
    ],
  };
}

function inBothFamilies(stated: Stated, dimension: Dimension): Card['lines'] {
  const estimate = estimateOf(stated);
  if (estimate === undefined || dimension === 'number') return [];
  const shown = (['metric', 'inch'] as const).map((family) => inFamily(estimate, dimension, family));
  return [...new Set(shown)].map(fact);
}

function inFamily(estimate: Estimate, dimension: Dimension, family: 'metric' | 'inch'): string {
  const unit = defaultUnitFor(dimension, family);
  // A figure beside another is compared digit by digit, so inches are told in decimals here.
  return writeEstimate(estimate, { like: { ...writtenIn(unit), style: unit === plainUnit ? 'fraction' : 'decimal' } });
}

/** Undefined for a name that is no thread's. */
export function threadCard(name: string): Card | undefined {
  const { thread } = readThread(name);
  if (thread === undefined) return undefined;
  const strips = strippingPairs.filter(({ threads }) => threads.includes(thread.name));
  return {
    title: `Thread ${thread.name}`,
    lines: [
      text(`${formWords[thread.form]}, ${thread.taper}.`),
      fact(`Across the crests: ${bothWays(thread.majorDiameter)}`),
      fact(`Pitch: ${mm(thread.pitch)}, ${perInch(thread)} threads to the inch`),
      ...nutLine(thread),
      ...strips.map(({ threads, why }) =>
        text(`Not to be mixed with ${threads.find((other) => other !== thread.name)}: ${why}.`),
      ),
      text(saySource(thread.source)),
    ],
  };
}

const formWords: Readonly<Record<Thread['form'], string>> = {
  unified: 'Unified inch thread, 60° flanks',
  metric: 'Metric thread, 60° flanks',
  npt: 'American pipe thread, 60° flanks',
  bsp: 'British pipe thread, 55° flanks',
  bsf: 'British Standard Fine, 55° flanks',
};

function nutLine(thread: Thread): Card['lines'] {
  const sizes = nutBores(thread.name).map((bore) => tubeSizeOf(bore)?.name);
  const known = sizes.filter((size) => size !== undefined);
  return known.length === 0 ? [] : [fact(`Tube nuts with it are made for ${known.join(' and ')} tube`)];
}

const mm = (length: Thread['pitch']): string => writeQuantity(length, { unit: defaultUnitFor('length', 'metric') });

const bothWays = (length: Thread['pitch']): string =>
  `${mm(length)}, ${writeQuantity(length, { unit: defaultUnitFor('length', 'inch'), precision: { significant: 4 } })}`;

/** A number, as threads to the inch are counted: 25.4 mm over the pitch, to two decimals. */
const perInch = (thread: Thread): string => String(Math.round((0.0254 / thread.pitch) * 100) / 100);
