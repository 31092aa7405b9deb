/** A line of the parts list, and how lines for the same thing become one. */
import type { WorkAhead } from '../system/work-ahead.ts';

export const partsGroups = [
  'tube',
  'nuts',
  'hoses',
  'unions, tees, adapters, plugs',
  'washers and rings',
  'clips',
  'hydraulic parts',
  'brake and other parts',
  'seal kits',
  'fluid',
] as const;

export type PartsGroup = (typeof partsGroups)[number];

/** How much of it: pieces, or a measure with its SI value. */
export type Amount =
  | { readonly kind: 'pieces'; readonly count: number }
  /** In m; the words are what is asked for. */
  | { readonly kind: 'length'; readonly metres: number; readonly words: string }
  /** In m³. */
  | { readonly kind: 'volume'; readonly cubicMetres: number; readonly words: string }
  | { readonly kind: 'not-known' };

export interface NeededBy {
  readonly id: string;
  readonly label: string;
}

export interface PartsRow {
  readonly group: PartsGroup;
  /** "wheel cylinder, bore 7/8 in, double-ended" */
  readonly item: string;
  readonly amount: Amount;
  readonly neededBy: readonly NeededBy[];
  readonly number: string | undefined;
  readonly bought: string | undefined;
  readonly arrived: string | undefined;
  /** "bore of rear-left cylinder" */
  readonly measureFirst: readonly string[];
  /** "the joint at main.secondary.front": what does not fit and decides whether this is the thing to buy. */
  readonly putRightFirst: readonly string[];
  /** Sentences. */
  readonly remarks: readonly string[];
}

/** What is known of the buying, from the record that asks for it. */
export function buyingOf(work: WorkAhead): Pick<PartsRow, 'number' | 'bought' | 'arrived'> {
  const record = work.kind === 'renew' || work.kind === 'reseal' ? work.record : undefined;
  return { number: record?.number, bought: record?.bought, arrived: record?.arrived };
}

/** Pieces of the same thing with the same number that stand alike become one line; the order of the first stays. */
export function merged(rows: readonly PartsRow[]): readonly PartsRow[] {
  const byKey = new Map<string, PartsRow>();
  for (const row of rows) {
    const key = JSON.stringify([
      row.group,
      row.item,
      row.amount.kind,
      row.number,
      row.bought,
      row.arrived,
      row.putRightFirst,
    ]);
    const first = byKey.get(key);
    byKey.set(key, first === undefined ? row : together(first, row));
  }
  return [...byKey.values()];
}

function together(a: PartsRow, b: PartsRow): PartsRow {
  return {
    ...a,
    amount:
      a.amount.kind === 'pieces' && b.amount.kind === 'pieces'
        ? { kind: 'pieces', count: a.amount.count + b.amount.count }
        : a.amount,
    neededBy: eachOnce([...a.neededBy, ...b.neededBy]),
    measureFirst: [...new Set([...a.measureFirst, ...b.measureFirst])],
    remarks: [...new Set([...a.remarks, ...b.remarks])],
  };
}

function eachOnce(needed: readonly NeededBy[]): readonly NeededBy[] {
  return [...new Map(needed.map((each) => [each.id, each])).values()];
}
