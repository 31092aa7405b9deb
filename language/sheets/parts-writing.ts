/** How the amount of a line of the parts list is written, and when its box is ticked. */
import type { PartsRow } from './parts-row.ts';
import type { Tick } from './sheet.ts';

export function amountWords({ amount }: PartsRow): string {
  switch (amount.kind) {
    case 'pieces':
      return String(amount.count);
    case 'length':
    case 'volume':
      return amount.words;
    case 'not-known':
      return 'not known';
  }
}

/** What has arrived needs no second look at the shop. */
export const tickOf = ({ arrived }: PartsRow): Tick => (arrived === undefined ? 'open' : 'done');
