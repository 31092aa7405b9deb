/** The parts list for machines, and for a spreadsheet. */
import type { State } from '../system/presence.ts';
import type { Amount, PartsRow } from './parts-row.ts';
import { amountWords } from './parts-writing.ts';
import type { Data, Sheet } from './sheet.ts';

export function dataOfParts(state: State, rows: readonly PartsRow[]): Data {
  return {
    state,
    parts: rows.map(
      ({ group, item, amount, neededBy, number, bought, arrived, measureFirst, putRightFirst, remarks }) => ({
        group,
        item,
        ...dataOfAmount(amount),
        neededBy: neededBy.map(({ id }) => id),
        partNumber: number ?? null,
        bought: bought ?? null,
        arrived: arrived ?? null,
        putRightFirst: [...putRightFirst],
        measureFirst: [...measureFirst],
        remarks: [...remarks],
      }),
    ),
  };
}

function dataOfAmount(amount: Amount): { readonly [name: string]: Data } {
  return {
    pieces: amount.kind === 'pieces' ? amount.count : null,
    lengthMetres: amount.kind === 'length' ? amount.metres : null,
    volumeCubicMetres: amount.kind === 'volume' ? amount.cubicMetres : null,
  };
}

export function listOfParts(rows: readonly PartsRow[]): NonNullable<Sheet['list']> {
  return {
    columns: [
      'group',
      'how many',
      'what',
      'needed by',
      'part number',
      'bought',
      'arrived',
      'put right first',
      'measure first',
    ],
    rows: rows.map((row) => [
      row.group,
      amountWords(row),
      row.item,
      row.neededBy.map(({ id }) => id).join(' '),
      row.number ?? '',
      row.bought ?? '',
      row.arrived ?? '',
      row.putRightFirst.join('; '),
      row.measureFirst.join('; '),
    ]),
  };
}
