/**
 * How joints seal: the seats of ports and ends, which thread forms and genders go with each, and what each seals against.
 * Sources: SAE J512, J514, J533, J1290, J1291, J1926, ISO 4038, ASME B1.20.1; each row says how it is known.
 */

import { commonPractice, fromMemory, published, type Source } from './source.ts';
import type { ThreadForm } from './thread-table.ts';

export const seatNames = [
  'inverted-flare',
  'bubble',
  '37-degree',
  '45-degree',
  'washer',
  'o-ring',
  'taper',
  'banjo',
] as const;

export type SeatName = (typeof seatNames)[number];

export type Gender = 'male' | 'female';

/** What closes the gap: the flare of a tube, a washer, a ring of rubber, or the thread itself. */
export type Sealing = 'flare' | 'washer' | 'o-ring' | 'thread';

export interface Seat {
  readonly name: SeatName;
  /** As spoken of in a sentence. */
  readonly words: string;
  readonly sealing: Sealing;
  /** What makes it tight, as the rest of the sentence "… seals". */
  readonly seals: string;
  readonly threadForms: readonly ThreadForm[];
  /** The gender of the nut that holds a flared tube in this seat; none where no flared tube goes. */
  readonly nutGender?: Gender;
  readonly source: Source;
}

const straight: readonly ThreadForm[] = ['unified', 'metric', 'bsp', 'bsf'];

export const seats: Readonly<Record<SeatName, Seat>> = {
  'inverted-flare': {
    name: 'inverted-flare',
    words: 'an inverted-flare seat',
    sealing: 'flare',
    seals: 'on a cone standing in the bottom of the port, against the inside of a 45° double flare',
    threadForms: straight,
    nutGender: 'male',
    source: published('SAE J512, scope page: its steel inverted-flare seats are meant for double-flared tube'),
  },
  bubble: {
    name: 'bubble',
    words: 'a bubble-flare seat',
    sealing: 'flare',
    seals: 'in a funnel at the bottom of the port, against the rounded front of a bubble flare',
    threadForms: straight,
    nutGender: 'male',
    source: published('ISO 4038 and SAE J1290, scope pages'),
  },
  '37-degree': {
    name: '37-degree',
    words: 'a 37° seat',
    sealing: 'flare',
    seals: 'on a 37° nose, against the inside of a 37° flare drawn up by a nut and sleeve',
    threadForms: straight,
    nutGender: 'female',
    source: fromMemory('SAE J514 37° flared fittings'),
  },
  '45-degree': {
    name: '45-degree',
    words: 'a 45° seat',
    sealing: 'flare',
    seals: 'on a 45° nose, against the inside of a 45° flare drawn up by a nut',
    threadForms: straight,
    nutGender: 'female',
    source: fromMemory('SAE J512 45° flared fittings (not the inverted series)'),
  },
  washer: {
    name: 'washer',
    words: 'a washer face',
    sealing: 'washer',
    seals: 'on a flat machined face, with a soft washer between',
    threadForms: straight,
    source: commonPractice('flat-faced ends with a copper washer'),
  },
  'o-ring': {
    name: 'o-ring',
    words: 'an O-ring seat',
    sealing: 'o-ring',
    seals: 'with a rubber ring held in a chamfer or a groove',
    threadForms: straight,
    source: fromMemory('SAE J1926 and ISO 6149 ports with O-rings'),
  },
  taper: {
    name: 'taper',
    words: 'a taper thread',
    sealing: 'thread',
    seals: 'on the thread itself as the taper wedges tight',
    threadForms: ['npt', 'bsp'],
    source: fromMemory('ASME B1.20.1 and ISO 7-1 taper pipe threads'),
  },
  banjo: {
    name: 'banjo',
    words: 'a banjo',
    sealing: 'washer',
    seals: 'between a washer on each side of the banjo, clamped by its hollow bolt',
    threadForms: straight,
    source: published('SAE J1291 banjo bolts and ports, scope page; a washer on each side in public service manuals'),
  },
};

/** Whether a thread of this form and taper can carry this seat; false says that one of the two is written wrongly. */
export function seatTakesThread(
  seat: SeatName,
  thread: { readonly form: ThreadForm; readonly taper: 'straight' | 'tapered' },
): boolean {
  const tapers = seats[seat].sealing === 'thread';
  return seats[seat].threadForms.includes(thread.form) && (thread.taper === 'tapered') === tapers;
}

/** Male goes into female, whatever the seat; two of a kind need a union, a tee or an adapter. */
export const gendersJoin = (a: Gender, b: Gender): boolean => a !== b;
