/** Parts that are bought as such, and seal kits for those that are resealed. */
import { kindRow, type PartKind } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { wrongAt } from './parts-misfits.ts';
import { buyingOf, type NeededBy, type PartsGroup, type PartsRow } from './parts-row.ts';
import { isGathered, type PartStanding } from './parts-standing.ts';
import { connectionWords, describe, describeSizes } from './parts-words.ts';

/** The line for one part; undefined where nothing of it is to be bought. Tube is bought by the length, not here. */
export function boughtRow({ part, work, included }: PartStanding, wrong: ReadonlySet<string>): PartsRow | undefined {
  if (work.kind === 'reseal') return kitRow(part, buyingOf(work));
  if (work.kind !== 'renew' || included || part.kind === 'run' || isGathered(part)) return undefined;
  const { words, measureFirst } = part.kind === 'hose' ? describeHose(part) : describe(part);
  const buying = buyingOf(work);
  return {
    group: groupOf(part.kind),
    item: words,
    amount: { kind: 'pieces', count: 1 },
    neededBy: [neededBy(part)],
    ...buying,
    number: buying.number ?? numberOf(part),
    measureFirst: measureFirst.map((fact) => `${fact} of ${part.label}`),
    putRightFirst: buying.bought === undefined ? wrongAt(part, wrong) : [],
    remarks: remarksOn(part.kind),
  };
}

function kitRow(part: Part, buying: Pick<PartsRow, 'number' | 'bought' | 'arrived'>): PartsRow {
  const { words, measureFirst } = describeSizes(part);
  return {
    group: 'seal kits',
    item: `seal kit for ${words}`,
    amount: { kind: 'pieces', count: 1 },
    neededBy: [neededBy(part)],
    ...buying,
    measureFirst: measureFirst.map((fact) => `${fact} of ${part.label}`),
    putRightFirst: [],
    remarks: ['Rubber for brake fluid of the grade in the file; a pitted or scored bore takes no new seals.'],
  };
}

const neededBy = ({ id, label }: Part): NeededBy => ({ id, label });

function numberOf({ facts }: Part): string | undefined {
  const fact = facts.get('part-number');
  return fact?.kind === 'text' ? fact.text : undefined;
}

/** A hose by its two ends, which decide whether it fits. */
function describeHose(hose: Part): ReturnType<typeof describe> {
  const sizes = describeSizes(hose);
  const ends = hose.ports.map(({ connection }) => connectionWords(connection));
  const unknown = hose.ports.flatMap(({ connection, name }) =>
    connection.kind === 'threaded' && connection.thread.kind !== 'known' ? [`thread of the ${name} end`] : [],
  );
  return { words: `${sizes.words}, ${ends.join(' to ')}`, measureFirst: [...sizes.measureFirst, ...unknown] };
}

function groupOf(kind: PartKind): PartsGroup {
  const { symbol, fluid } = kindRow(kind);
  if (symbol === 'line') return 'hoses';
  if (fittings.has(kind)) return 'unions, tees, adapters, plugs';
  return fluid === 'none' || fluid === 'parts' ? 'brake and other parts' : 'hydraulic parts';
}

const fittings: ReadonlySet<PartKind> = new Set([
  'tee',
  'wye',
  'cross',
  'block',
  'union',
  'bulkhead',
  'adapter',
  'banjo-bolt',
  'plug',
]);

function remarksOn(kind: PartKind): readonly string[] {
  if (kind === 'linings' || kind === 'pads') return ['Linings and pads are renewed in axle sets (common practice).'];
  if (kind === 'hose') return ['Hoses of one axle are renewed together (common practice); look at the date on each.'];
  return [];
}
