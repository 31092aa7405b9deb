/** Rows of the kinds that join lines or end them: all ports share one volume of fluid. */
import type { KindRow, PartKind, PropertyRow, SymbolName } from './kind-row.ts';
import * as p from './properties.ts';

function junction(
  keyword: PartKind,
  title: string,
  about: string,
  least: number,
  most: number,
  symbol: SymbolName,
  also: readonly PropertyRow[] = [],
): KindRow {
  return {
    keyword,
    title,
    about,
    within: ['file', 'drum-brake', 'disc-brake'],
    properties: [p.height, p.volume, p.hole, p.rating, ...also, p.partNumber],
    ports: { least, most },
    fluid: 'joined',
    symbol,
  };
}

export const junctions: readonly KindRow[] = [
  junction('tee', 'a tee', 'Joins three lines.', 3, 3, 'junction', [p.jointType]),
  junction('wye', 'a Y', 'Joins three lines, two of them side by side.', 3, 3, 'junction'),
  junction('cross', 'a cross', 'Joins four lines.', 4, 4, 'junction'),
  {
    ...junction(
      'block',
      'a distribution block',
      'A block with several ports. All of them share fluid unless `path` says which do; valves built into it are its sub-parts.',
      0,
      12,
      'block',
    ),
    fluid: 'joined',
  },
  junction('union', 'a union', 'Joins two lines end to end.', 2, 2, 'union', [p.jointType]),
  junction(
    'bulkhead',
    'a bulkhead union',
    'Joins two lines through a panel or bracket and holds them there.',
    2,
    2,
    'bulkhead',
    [p.jointType],
  ),
  junction('adapter', 'an adapter', 'Joins two ends with different threads or seats.', 2, 2, 'adapter', [p.jointType]),
  junction(
    'banjo-bolt',
    'a banjo bolt',
    'A hollow bolt that clamps one or two banjo eyes between washers and screws into a port. Its male port is the shank, its banjo ports take the eyes.',
    2,
    3,
    'banjo-bolt',
    [p.washers],
  ),
  junction('plug', 'a plug', 'Closes a port that is not used.', 1, 1, 'plug'),
];
