/** Which symbol stands for a part of the system. */
import { kindRow } from '../../system/kinds/index.ts';
import type { SymbolName as RowSymbol } from '../../system/kinds/kind-row.ts';
import type { Part } from '../../system/part.ts';
import type { SymbolName } from '../picture.ts';

/** What the table of kinds names, and the symbol for it; what depends on the part itself is settled by `symbolOf`. */
export const symbolsOfRows: Readonly<Record<Exclude<RowSymbol, 'line' | 'none'>, SymbolName>> = {
  pedal: 'pedal',
  booster: 'booster',
  'parking-brake': 'parking-brake',
  master: 'master-single',
  reservoir: 'reservoir',
  junction: 'tee',
  block: 'block',
  union: 'union',
  bulkhead: 'bulkhead',
  adapter: 'adapter',
  'banjo-bolt': 'banjo-bolt',
  plug: 'plug',
  'residual-valve': 'residual-valve',
  'proportioning-valve': 'proportioning-valve',
  'metering-valve': 'metering-valve',
  'check-valve': 'check-valve',
  'pressure-differential-valve': 'pressure-differential-valve',
  modulator: 'opaque-block',
  switch: 'switch',
  'drum-brake': 'drum-brake',
  'disc-brake': 'disc-brake',
  'clutch-slave': 'clutch-slave',
  actuator: 'actuator',
};

/** The part's symbol; none for what is drawn as a line or inside the symbol of its owner. */
export function symbolOf(part: Part): SymbolName | undefined {
  const { symbol } = kindRow(part.kind);
  if (symbol === 'line' || symbol === 'none') return undefined;
  if (part.kind === 'cross') return 'cross';
  if (symbol === 'booster') return part.ports.length > 0 ? 'inline-booster' : 'booster';
  if (symbol === 'master')
    return part.parts.some(({ kind }) => kind === 'secondary') ? 'master-tandem' : 'master-single';
  return symbolsOfRows[symbol];
}

export const isLine = (part: Part): boolean => kindRow(part.kind).symbol === 'line';
