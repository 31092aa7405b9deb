/** What seals against what, flare in seat and seat against seat, with the reason in words where it does not. */

import { type FlareForm, flareWords } from './flare-forms.ts';
import { type SeatName, seats } from './seats.ts';
import { commonPractice, fromMemory, published, type Source } from './source.ts';

export type Mating =
  | { readonly kind: 'seals'; readonly source: Source }
  | { readonly kind: 'does-not-seal'; readonly why: string; readonly source: Source };

const notMixed = published(
  'flaring guides: flare and seat types are not to be mixed; a wrong pair may seal once and leak later',
);

const goodPairs: readonly (readonly [FlareForm, SeatName, Source])[] = [
  [
    'double-45',
    'inverted-flare',
    published(
      'SAE J512, scope page: inverted seats are meant for double-flared tube; ISO 13486-1, scope page: double-flare pipes with their tapped holes and male fittings',
    ),
  ],
  ['double-45', '45-degree', fromMemory('SAE J512 and J533: 45° fittings take single or double 45° flares')],
  ['single-45', '45-degree', fromMemory('SAE J512 and J533: 45° fittings take single or double 45° flares')],
  ['single-37', '37-degree', fromMemory('SAE J514 and J533: 37° fittings take 37° flares')],
  ['bubble', 'bubble', published('ISO 4038, scope page: simple-flare pipes with their tapped holes and male fittings')],
];

const badPairs: readonly (readonly [FlareForm, SeatName, string, Source])[] = [
  [
    'double-45',
    'bubble',
    'the funnel of a bubble-flare port has no cone to fill the hollow of a double flare, so the flare touches it at its rim only',
    notMixed,
  ],
  [
    'bubble',
    'inverted-flare',
    'the cone of an inverted-flare port meets the rounded front of a bubble flare on one thin line and dents it instead of filling it',
    notMixed,
  ],
  [
    'single-45',
    'inverted-flare',
    'an inverted-flare seat is made for double-flared tube: a single layer thins and splits between nut and cone',
    published('SAE J512, scope page: its steel inverted-flare seats are meant for double-flared tube'),
  ],
  [
    'single-37',
    'inverted-flare',
    'the flare opens at 37° and the seat is made for 45°, so they touch on one ring only, in a single layer of tube',
    notMixed,
  ],
  ['single-37', '45-degree', 'the flare opens at 37° and the seat at 45°, so they touch on one ring only', notMixed],
  ['double-45', '37-degree', 'the flare opens at 45° and the seat at 37°, so they touch on one ring only', notMixed],
  ['single-45', '37-degree', 'the flare opens at 45° and the seat at 37°, so they touch on one ring only', notMixed],
  ['single-37', 'bubble', 'a funnel has no nose to fill the hollow of a 37° flare', notMixed],
  ['single-45', 'bubble', 'a funnel has no nose to fill the hollow of a 45° flare', notMixed],
  ['bubble', '37-degree', 'a 37° nose needs a hollow flare over it, and a bubble flare is rounded', notMixed],
  ['bubble', '45-degree', 'a 45° nose needs a hollow flare over it, and a bubble flare is rounded', notMixed],
];

/** Whether a tube end with this flare seals in this seat when its nut is tight. */
export function flareInSeat(flare: FlareForm, seat: SeatName): Mating {
  const good = goodPairs.find(([form, name]) => form === flare && name === seat);
  if (good) return { kind: 'seals', source: good[2] };
  const bad = badPairs.find(([form, name]) => form === flare && name === seat);
  if (bad) return { kind: 'does-not-seal', why: bad[2], source: bad[3] };
  const why =
    flare === 'none'
      ? 'a tube end without a flare is held by nothing and pulls out under pressure'
      : `${seats[seat].words} seals ${seats[seat].seals}; it has no place for ${flareWords[flare]}`;
  return { kind: 'does-not-seal', why, source: commonPractice('what the joint seals on') };
}

/** Whether two parts screwed together without a tube seal: they do when both are made for the same way of sealing. */
export function seatOnSeat(a: SeatName, b: SeatName): Mating {
  const source = commonPractice('what the joint seals on');
  if (a === b) return { kind: 'seals', source: seats[a].source };
  // A banjo bolt is tightened on the same flat face and washer as a flat-faced end.
  if (seats[a].sealing === 'washer' && seats[b].sealing === 'washer') return { kind: 'seals', source };
  return {
    kind: 'does-not-seal',
    why: `${seats[a].words} seals ${seats[a].seals}, ${seats[b].words} ${seats[b].seals}`,
    source,
  };
}

/** The seats in which a flare seals, in the order of the table: what to offer instead of a wrong one. */
export function seatsFor(flare: FlareForm): readonly SeatName[] {
  return goodPairs.filter(([form]) => form === flare).map(([, seat]) => seat);
}

/** The flares that seal in a seat, in the order of the table; none for seats that take no flared tube. */
export function flaresFor(seat: SeatName): readonly FlareForm[] {
  return goodPairs.filter(([, name]) => name === seat).map(([form]) => form);
}
