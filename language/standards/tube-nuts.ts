/**
 * The nuts that hold flared tube: which thread for which tube in which seat, the standing pairs and the oversize ones.
 * Sources: SAE J512 inverted-flare series, ISO 4038 / SAE J1290, SAE J514; each row says how it is known.
 */

import type { Si } from '../quantity/dimension.ts';
import type { SeatName } from './seats.ts';
import { fromMemory, published, type Source } from './source.ts';
import type { Thread } from './thread-table.ts';
import { sameTubeSize } from './tube-sizes.ts';
import { inch, mm } from './written-units.ts';

export interface TubeNut {
  /** As named in the table of threads. */
  readonly thread: string;
  readonly tubeOd: Si<'length'>;
  readonly seats: readonly SeatName[];
  /** `usual` is the nut of the series; `oversize` is drilled small to bring a thin tube to a big port, and is as sound. */
  readonly use: 'usual' | 'oversize';
  readonly source: Source;
}

export type NutOnTube =
  | { readonly kind: 'listed'; readonly nut: TubeNut }
  | { readonly kind: 'not-listed'; readonly usual: readonly TubeNut[] }
  | { readonly kind: 'impossible'; readonly why: string; readonly usual: readonly TubeNut[] };

const inverted: readonly SeatName[] = ['inverted-flare'];
const metricSeats: readonly SeatName[] = ['bubble', 'inverted-flare'];
const bothNoses: readonly SeatName[] = ['37-degree', '45-degree'];

const tradeList = published('SAE J512 inverted-flare nuts, as printed in trade lists of American brake threads');
const j512 = fromMemory('SAE J512 inverted-flare series');
const oversize = fromMemory('nuts sold for valve and master cylinder ports');
const british = published('notes on British cars of the 1960s: 7/16-20 UNF on 1/4 in lines and on some 3/16 in ones');
const iso4038 = published('ISO 4038 / DIN 74234 pipes, as printed in trade lists and a lift-truck manual');
const metricMemory = fromMemory('ISO 4038 / SAE J1290 tube nuts');
const j514 = fromMemory('SAE J514 37° and J512 45° flare nuts');

export const tubeNuts: readonly TubeNut[] = [
  nut('5/16-28', inch(1 / 8), inverted, 'usual', j512),
  nut('3/8-24', inch(3 / 16), ['inverted-flare', 'bubble'], 'usual', tradeList),
  nut('7/16-24', inch(1 / 4), inverted, 'usual', tradeList),
  nut('1/2-20', inch(5 / 16), inverted, 'usual', j512),
  nut('5/8-18', inch(3 / 8), inverted, 'usual', j512),
  nut('11/16-18', inch(7 / 16), inverted, 'usual', j512),
  nut('3/4-18', inch(1 / 2), inverted, 'usual', j512),
  nut('7/16-24', inch(3 / 16), inverted, 'oversize', oversize),
  nut('1/2-20', inch(3 / 16), inverted, 'oversize', oversize),
  nut('1/2-20', inch(1 / 4), inverted, 'oversize', oversize),
  nut('9/16-18', inch(3 / 16), inverted, 'oversize', oversize),
  nut('9/16-18', inch(1 / 4), inverted, 'oversize', oversize),
  nut('9/16-20', inch(3 / 16), inverted, 'oversize', oversize),
  nut('9/16-20', inch(1 / 4), inverted, 'oversize', oversize),
  nut('7/16-20', inch(1 / 4), ['bubble', 'inverted-flare'], 'usual', british),
  nut('7/16-20', inch(3 / 16), ['bubble', 'inverted-flare'], 'oversize', british),
  nut(
    '3/8 BSF',
    inch(3 / 16),
    ['bubble', 'inverted-flare'],
    'usual',
    fromMemory('British cars before unified threads'),
  ),
  nut(
    '7/16 BSF',
    inch(1 / 4),
    ['bubble', 'inverted-flare'],
    'usual',
    fromMemory('British cars before unified threads'),
  ),
  nut('M10x1', mm(4.75), metricSeats, 'usual', iso4038),
  nut('M12x1', mm(6), metricSeats, 'usual', metricMemory),
  nut('M12x1', mm(4.75), metricSeats, 'oversize', metricMemory),
  nut('M14x1.5', mm(8), metricSeats, 'usual', fromMemory('ISO 4038 / SAE J1290 tube nuts; doubtful')),
  nut('M11x1.5', mm(4.75), metricSeats, 'oversize', fromMemory('ports of American anti-lock units')),
  nut('M12x1.5', mm(4.75), metricSeats, 'oversize', fromMemory('ports of American anti-lock units')),
  nut('M13x1.5', mm(4.75), metricSeats, 'oversize', fromMemory('ports of American anti-lock units')),
  nut('3/8-24', inch(3 / 16), bothNoses, 'usual', published('AN924 table of 37° fittings: size 3 is .3750-24')),
  nut('7/16-20', inch(1 / 4), bothNoses, 'usual', published('AN924 table of 37° fittings: size 4 is .4375-20')),
  nut('1/2-20', inch(5 / 16), bothNoses, 'usual', j514),
  nut('9/16-18', inch(3 / 8), ['37-degree'], 'usual', j514),
  nut('5/8-18', inch(3 / 8), ['45-degree'], 'usual', j514),
];

function nut(
  thread: string,
  tubeOd: Si<'length'>,
  seats: readonly SeatName[],
  use: TubeNut['use'],
  source: Source,
): TubeNut {
  return { thread, tubeOd, seats, use, source };
}

/** The nuts made for a tube (outside diameter in metres) and a seat, the usual ones first. */
export function nutsFor(tubeOd: Si<'length'>, seat: SeatName): readonly TubeNut[] {
  const made = tubeNuts.filter((row) => sameTubeSize(row.tubeOd, tubeOd) && row.seats.includes(seat));
  return [...made.filter(({ use }) => use === 'usual'), ...made.filter(({ use }) => use === 'oversize')];
}

/**
 * Whether a nut with this thread goes on a tube (outside diameter in metres). Impossible where the tube is
 * as thick as the core of the thread (major diameter less 1.0825 pitch, ISO 68-1); `not-listed` is no verdict.
 */
export function nutOnTube(thread: Thread, tubeOd: Si<'length'>, seat: SeatName): NutOnTube {
  const made = nutsFor(tubeOd, seat);
  const listed = made.find((row) => row.thread === thread.name);
  if (listed) return { kind: 'listed', nut: listed };
  const usual = made.filter(({ use }) => use === 'usual');
  if (tubeOd >= thread.majorDiameter - 1.0825 * thread.pitch) {
    return {
      kind: 'impossible',
      why: 'the tube is as thick as the core of the thread, so no nut can be bored for it',
      usual,
    };
  }
  return { kind: 'not-listed', usual };
}

/** The tubes (outside diameters in metres) for which nuts with this thread are made. */
export function nutBores(threadName: string): readonly Si<'length'>[] {
  const bores = tubeNuts.filter(({ thread }) => thread === threadName).map(({ tubeOd }) => tubeOd);
  return bores.filter((bore, index) => bores.findIndex((other) => sameTubeSize(other, bore)) === index);
}

/** Whether nuts with this thread come for a tube (outside diameter in metres) only drilled small: as sound, to be asked for. */
export function isOversizeNut(threadName: string, tubeOd: Si<'length'>): boolean {
  const made = tubeNuts.filter((row) => row.thread === threadName && sameTubeSize(row.tubeOd, tubeOd));
  return made.length > 0 && made.every(({ use }) => use === 'oversize');
}
