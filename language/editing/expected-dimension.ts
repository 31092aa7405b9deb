/** Which dimension the value belongs to that is being written, told from the words before it on the line. */
import type { Dimension } from '../quantity/index.ts';
import { kindRows, loadProperties, type PropertyRow, vehicleProperties } from '../system/kinds/index.ts';
import { readingDimensions } from '../system/read/read-record.ts';

const grammarWords: ReadonlyMap<string, Dimension> = new Map([
  ['straight', 'length'],
  ['corner', 'length'],
  ['bend', 'angle'],
  ['turn', 'angle'],
  ['coil', 'number'],
  ['radius', 'length'],
  ['diameter', 'length'],
  ['point', 'length'],
  ['wall', 'length'],
  ['tube', 'length'],
  ['travel', 'length'],
  ['every', 'length'],
  ['height', 'length'],
  ['banjo', 'length'],
  ['barb', 'length'],
  ['after', 'time'],
]);

const rows: readonly PropertyRow[] = [
  ...vehicleProperties,
  ...loadProperties,
  ...kindRows.flatMap(({ properties }) => properties),
];
const factDimensions: ReadonlyMap<string, Dimension> = new Map(
  rows.flatMap((row) => (row.value === 'measure' ? [[row.key, row.dimension] as const] : [])),
);

/** Undefined where the line has no word that takes a value. */
export function expectedDimension(lineBefore: string): Dimension | undefined {
  const words = lineBefore.match(/[A-Za-z][\w-]*/g) ?? [];
  for (const word of words.toReversed()) {
    // At which push a reading was taken; anywhere else a distance along the run.
    if (word === 'at') return words.some((other) => other in readingDimensions) ? 'force' : 'length';
    const dimension = factDimensions.get(word) ?? grammarWords.get(word) ?? readingDimensions[word];
    if (dimension !== undefined) return dimension;
  }
  return undefined;
}
