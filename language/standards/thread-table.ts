/**
 * The threads met on brake tubing and its parts, with what is known of each.
 * Sizes follow from the name for inch and metric threads; pipe and Whitworth-form sizes are tabled.
 * Sources: SAE J512 (inverted-flare series), ISO 4038 / SAE J1290, ASME B1.20.1, ISO 228-1, BS 84; each row says how it is known.
 */

import type { Si } from '../quantity/dimension.ts';
import { fromMemory, published, type Source } from './source.ts';
import { degrees, inch, mm } from './written-units.ts';

export type ThreadForm = 'unified' | 'metric' | 'npt' | 'bsp' | 'bsf';

export interface Thread {
  /** The one spelling under which the thread is shown: `3/8-24`, `M10x1`, `1/8 NPT`. */
  readonly name: string;
  /** Other accepted spellings, besides those that differ in spaces, case, `x` or `×`, series letters or class. */
  readonly spellings: readonly string[];
  readonly form: ThreadForm;
  readonly majorDiameter: Si<'length'>;
  readonly pitch: Si<'length'>;
  readonly flankAngle: Si<'angle'>;
  readonly taper: 'straight' | 'tapered';
  /** False when the size was worked out from the name alone and stands in no table here. */
  readonly listed: boolean;
  readonly source: Source;
}

const j512Seen = published('SAE J512 inverted-flare series, as printed in trade lists of American brake threads');
const j512 = fromMemory('SAE J512 inverted-flare series');
const unified = fromMemory('ASME B1.1 unified inch threads');
const iso4038Seen = published('ISO 4038 / SAE J1290 tube nuts, as printed in trade lists of metric brake threads');
const iso261 = fromMemory('ISO 261 metric threads, met on brake parts');
const npt = fromMemory('ASME B1.20.1 pipe threads');
const bsp = fromMemory('ISO 228-1 pipe threads');
const bspt = fromMemory('ISO 7-1 pipe threads');
const bsf = fromMemory('BS 84 British Standard Fine');

function inchThread(size: string, diameterInches: number, perInch: number, source: Source, series?: string): Thread {
  return {
    name: `${size}-${perInch}`,
    spellings: series === undefined ? [] : [`${size} ${series}`],
    form: 'unified',
    majorDiameter: inch(diameterInches),
    pitch: inch(1 / perInch),
    flankAngle: degrees(60),
    taper: 'straight',
    listed: true,
    source,
  };
}

function metricThread(diameter: number, pitch: number, source: Source): Thread {
  return {
    name: `M${diameter}x${pitch}`,
    spellings: [],
    form: 'metric',
    majorDiameter: mm(diameter),
    pitch: mm(pitch),
    flankAngle: degrees(60),
    taper: 'straight',
    listed: true,
    source,
  };
}

function nptThread(size: string, outsideInches: number, perInch: number): Thread {
  return {
    name: `${size} NPT`,
    spellings: [`${size}-${perInch} NPT`, `${size}-${perInch} NPTF`, `${size} NPTF`],
    form: 'npt',
    majorDiameter: inch(outsideInches),
    pitch: inch(1 / perInch),
    flankAngle: degrees(60),
    taper: 'tapered',
    listed: true,
    source: npt,
  };
}

function bspThread(size: string, majorMillimetres: number, perInch: number): Thread {
  return {
    name: `${size} BSP`,
    spellings: [`G ${size}`, `${size} BSPP`, `${size}-${perInch} BSP`, `${size}-${perInch} BSPP`],
    form: 'bsp',
    majorDiameter: mm(majorMillimetres),
    pitch: inch(1 / perInch),
    flankAngle: degrees(55),
    taper: 'straight',
    listed: true,
    source: bsp,
  };
}

function bsptThread(size: string, majorMillimetres: number, perInch: number): Thread {
  return {
    ...bspThread(size, majorMillimetres, perInch),
    name: `${size} BSPT`,
    spellings: [`R ${size}`, `${size}-${perInch} BSPT`],
    taper: 'tapered',
    source: bspt,
  };
}

function bsfThread(size: string, diameterInches: number, perInch: number): Thread {
  return {
    ...inchThread(size, diameterInches, perInch, bsf),
    name: `${size} BSF`,
    spellings: [`${size}-${perInch} BSF`],
    form: 'bsf',
    flankAngle: degrees(55),
  };
}

export const threads: readonly Thread[] = [
  inchThread('1/4', 1 / 4, 28, unified, 'UNF'),
  inchThread('5/16', 5 / 16, 24, unified, 'UNF'),
  inchThread('5/16', 5 / 16, 28, j512),
  inchThread('3/8', 3 / 8, 24, j512Seen, 'UNF'),
  inchThread('7/16', 7 / 16, 24, j512Seen),
  inchThread(
    '7/16',
    7 / 16,
    20,
    published('SAE J512 45° and SAE J514 37° flare series for 1/4 in tube, as printed in trade lists'),
    'UNF',
  ),
  inchThread('1/2', 1 / 2, 20, j512, 'UNF'),
  inchThread('9/16', 9 / 16, 18, unified, 'UNF'),
  inchThread('9/16', 9 / 16, 20, unified),
  inchThread('5/8', 5 / 8, 18, j512, 'UNF'),
  inchThread('11/16', 11 / 16, 18, j512),
  inchThread('3/4', 3 / 4, 18, j512),
  metricThread(6, 1, iso261),
  metricThread(7, 1, iso261),
  metricThread(8, 1, iso261),
  metricThread(8, 1.25, iso261),
  metricThread(10, 1, iso4038Seen),
  metricThread(10, 1.25, iso261),
  metricThread(10, 1.5, iso261),
  metricThread(11, 1.5, iso261),
  metricThread(12, 1, fromMemory('ISO 4038 / SAE J1290 tube nuts')),
  metricThread(12, 1.25, iso261),
  metricThread(12, 1.5, iso261),
  metricThread(13, 1.5, iso261),
  metricThread(14, 1.5, fromMemory('ISO 4038 / SAE J1290 tube nuts')),
  nptThread('1/16', 0.3125, 27),
  nptThread('1/8', 0.405, 27),
  nptThread('1/4', 0.54, 18),
  nptThread('3/8', 0.675, 18),
  bspThread('1/8', 9.728, 28),
  bspThread('1/4', 13.157, 19),
  bspThread('3/8', 16.662, 19),
  bsptThread('1/8', 9.728, 28),
  bsptThread('1/4', 13.157, 19),
  bsfThread('1/4', 1 / 4, 26),
  bsfThread('5/16', 5 / 16, 22),
  bsfThread('3/8', 3 / 8, 20),
  bsfThread('7/16', 7 / 16, 18),
  bsfThread('1/2', 1 / 2, 16),
];
