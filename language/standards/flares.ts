/**
 * The flares formed on tube ends: how wide the head is and how much tube goes into it.
 * Source of the head diameters: SAE J533 (2024), table 1 as abstracted in print for 45° flares; 37° heads after MS33584.
 */

import { type Si, si } from '../quantity/dimension.ts';
import type { FlareForm } from './flare-forms.ts';
import { commonPractice, fromMemory, published, type Source } from './source.ts';
import { degrees, inch, mm } from './written-units.ts';

export interface FlareHead {
  readonly form: FlareForm;
  readonly tubeOd: Si<'length'>;
  /** The finished head across, smallest and largest. */
  readonly smallest: Si<'length'>;
  readonly largest: Si<'length'>;
  /** The thickest wall for which the table holds. */
  readonly wallUpTo?: Si<'length'>;
  readonly source: Source;
}

export interface FlareAllowance {
  /** Tube to add to one end beyond the finished flare face. */
  readonly value: Si<'length'>;
  readonly low: Si<'length'>;
  readonly high: Si<'length'>;
  readonly why: string;
  readonly source: Source;
}

const j533 = published('SAE J533 (2024), table 1, as abstracted in print');
const ms33584 = fromMemory('MS33584, heads of 37° single flares');

export const flareHeads: readonly FlareHead[] = [
  head('double-45', inch(1 / 8), mm(5.0), mm(5.4), j533, mm(0.63)),
  head('double-45', inch(3 / 16), mm(6.7), mm(7.1), j533, mm(0.71)),
  head('double-45', inch(1 / 4), mm(8.7), mm(9.1), j533, mm(0.83)),
  head('double-45', inch(5 / 16), mm(10.4), mm(10.8), j533, mm(0.89)),
  head('single-45', inch(3 / 16), mm(6.1), mm(6.3), j533, mm(0.89)),
  head('single-45', inch(1 / 4), mm(8.0), mm(8.3), j533, mm(1.24)),
  head('single-45', inch(5 / 16), mm(9.9), mm(10.3), j533, mm(1.24)),
  head('single-37', inch(3 / 16), inch(0.292), inch(0.302), ms33584),
  head('single-37', inch(1 / 4), inch(0.349), inch(0.359), ms33584),
  head('single-37', inch(5 / 16), inch(0.411), inch(0.421), ms33584),
  head('single-37', inch(3 / 8), inch(0.474), inch(0.484), ms33584),
  head('bubble', mm(4.75), mm(6.9), mm(7.3), fromMemory('ISO 4038 simple flare, about 7.1 mm; doubtful')),
];

function head(
  form: FlareForm,
  tubeOd: Si<'length'>,
  smallest: Si<'length'>,
  largest: Si<'length'>,
  source: Source,
  wallUpTo?: Si<'length'>,
): FlareHead {
  return { form, tubeOd, smallest, largest, source, ...(wallUpTo === undefined ? {} : { wallUpTo }) };
}

/** Half the opening angle of the cones that are made by spreading the tube; a bubble is upset, not spread. */
const cones = {
  'double-45': { angle: degrees(45), layers: 2 },
  'single-45': { angle: degrees(45), layers: 1 },
  'single-37': { angle: degrees(37), layers: 1 },
} as const;

/**
 * Metres of tube that a cone takes beyond its finished face, by geometry alone: slant length of each layer less the
 * cone's height. Takes diameters in metres with the head wider than the tube; the metal is taken not to stretch.
 */
export function coneAllowance(
  form: keyof typeof cones,
  tubeOd: Si<'length'>,
  headDiameter: Si<'length'>,
): Si<'length'> {
  const { angle, layers } = cones[form];
  const rise = Math.max(0, headDiameter - tubeOd) / 2;
  return si('length', (layers * rise) / Math.sin(angle) - rise / Math.tan(angle));
}

/**
 * Tube to add at one end for this flare on a tube of this outside diameter (metres); undefined where nothing is known,
 * which is for
 * sizes more than 6 % off the tabled ones (bubble: outside 4.75 mm to 8 mm tube).
 *
 * For the double flare the trade's 3 mm is taken, not the 2 mm of geometry: the cut end is faced before flaring, and a
 * tube a little long can be dressed while a short one is scrap. Geometry is the lower bound.
 */
export function flareAllowance(form: FlareForm, tubeOd: Si<'length'>): FlareAllowance | undefined {
  if (form === 'none') {
    const nothing = mm(0);
    return {
      value: nothing,
      low: nothing,
      high: nothing,
      why: 'nothing goes into a plain end',
      source: commonPractice('a plain end is left as it is cut'),
    };
  }
  if (form === 'bubble') {
    if (tubeOd < 0.0045 || tubeOd > 0.0085) return undefined;
    return {
      value: mm(2.5),
      low: mm(2),
      high: mm(3),
      why: 'a bubble flare takes 2 mm to 3 mm; make a test flare',
      source: fromMemory('usual allowance for an ISO 4038 simple flare; doubtful'),
    };
  }
  const row = headFor(form, tubeOd);
  if (row === undefined) return undefined;
  // A size next to a tabled one has its head wider by the same amount.
  const low = coneAllowance(form, row.tubeOd, row.smallest);
  const high = coneAllowance(form, row.tubeOd, row.largest);
  if (form === 'double-45') {
    return {
      value: mm(3),
      low,
      high: inch(1 / 8),
      why: 'the trade allows 3 mm (1/8 in) per double flare; the cone alone takes about 2 mm',
      source: commonPractice('3 mm per double flare; lower bound from the heads of SAE J533'),
    };
  }
  return {
    value: si('length', (low + high) / 2),
    low,
    high,
    why: 'slant of the cone less its height, from the width of the head',
    source: row.source,
  };
}

function headFor(form: FlareForm, tubeOd: Si<'length'>): FlareHead | undefined {
  const off = (row: FlareHead) => Math.abs(tubeOd / row.tubeOd - 1);
  const [nearest] = flareHeads.filter((row) => row.form === form).sort((a, b) => off(a) - off(b));
  return nearest !== undefined && off(nearest) <= 0.06 ? nearest : undefined;
}
