/**
 * The units a writer may use, one row each, with factors to SI.
 * Factors: NIST Special Publication 811 (2008), Appendix B, built up from its exact ones: inch, pound, standard
 * gravity, US gallon (231 in³) and imperial gallon. Pressures are gauge pressures.
 */

import type { Dimension } from './dimension.ts';

/** SI value = written value × factor + offset. */
export interface Unit {
  /** How we write it. */
  readonly symbol: string;
  /** How it may be written, the symbol among them. */
  readonly spellings: readonly string[];
  readonly dimension: Dimension;
  readonly factor: number;
  /** Zero for all but °C and °F. */
  readonly offset: number;
  readonly family: 'metric' | 'inch';
  /** Exact by definition, or conventional (a column of liquid of agreed density). */
  readonly exactness: 'exact' | 'conventional';
}

const inch = 0.0254;
const foot = 0.3048;
const pound = 0.453_592_37;
const gravity = 9.806_65;
const poundForce = pound * gravity;
const usGallon = 231 * inch ** 3;
const imperialGallon = 4.546_09e-3;
const litre = 1e-3;
const cubicCentimetre = 1e-6;
/** Conventional density of mercury, 13 595.1 kg/m³, under standard gravity. */
const metreOfMercury = 13_595.1 * gravity;

type Options = Partial<Pick<Unit, 'offset' | 'exactness'>>;
type Row = readonly [spellings: string, factor: number, options?: Options];

function rows(family: Unit['family'], dimension: Dimension, ...table: readonly Row[]): readonly Unit[] {
  return table.map(([words, factor, options]) => {
    const spellings = words.split(' ');
    return {
      symbol: spellings[0] ?? words,
      spellings,
      dimension,
      factor,
      offset: 0,
      family,
      exactness: 'exact',
      ...options,
    };
  });
}

/** All units, each with its spellings; the first spelling is the symbol. */
export const units: readonly Unit[] = [
  ...rows('metric', 'length', ['mm', 1e-3], ['cm', 1e-2], ['m', 1], ['µm μm um', 1e-6]),
  ...rows('inch', 'length', ['in', inch], ['ft', foot], ['thou', inch / 1000]),
  ...rows('metric', 'area', ['mm² mm2', 1e-6], ['cm² cm2', 1e-4], ['m² m2', 1]),
  ...rows('inch', 'area', ['in² in2 sq-in', inch ** 2]),
  ...rows('metric', 'volume', ['mL ml cc cm³ cm3', cubicCentimetre], ['L l', litre], ['mm³ mm3', 1e-9], ['m³ m3', 1]),
  ...rows(
    'inch',
    'volume',
    ['in³ in3 cu-in', inch ** 3],
    ['us-fl-oz', usGallon / 128],
    ['us-pint', usGallon / 8],
    ['us-qt', usGallon / 4],
    ['us-gal', usGallon],
    ['imp-fl-oz', imperialGallon / 160],
    ['imp-pint', imperialGallon / 8],
    ['imp-qt', imperialGallon / 4],
    ['imp-gal', imperialGallon],
  ),
  ...rows('metric', 'angle', ['deg °', Math.PI / 180], ['rad', 1]),
  ...rows('metric', 'mass', ['kg', 1], ['g', 1e-3], ['t', 1000]),
  ...rows('inch', 'mass', ['lb', pound], ['oz', pound / 16]),
  ...rows('metric', 'force', ['N', 1], ['kN', 1000], ['kgf', gravity]),
  ...rows('inch', 'force', ['lbf', poundForce]),
  ...rows(
    'metric',
    'pressure',
    ['bar', 1e5],
    ['Pa', 1],
    ['kPa', 1e3],
    ['MPa', 1e6],
    ['kgf/cm² kgf/cm2', gravity * 1e4],
  ),
  ...rows(
    'inch',
    'pressure',
    ['psi lbf/in² lbf/in2', poundForce / inch ** 2],
    ['inHg', inch * metreOfMercury, { exactness: 'conventional' }],
  ),
  ...rows('metric', 'torque', ['N·m N⋅m N.m Nm', 1]),
  ...rows(
    'inch',
    'torque',
    ['lbf·ft lbf⋅ft lbf.ft lbf-ft ft·lbf ft⋅lbf ft.lbf ft-lbf', poundForce * foot],
    ['lbf·in lbf⋅in lbf.in lbf-in in·lbf in⋅lbf in.lbf in-lbf', poundForce * inch],
  ),
  ...rows('metric', 'time', ['s', 1], ['min', 60], ['h', 3600]),
  ...rows('metric', 'speed', ['km/h', 1 / 3.6], ['m/s', 1]),
  ...rows('inch', 'speed', ['mph', (5280 * foot) / 3600]),
  ...rows('metric', 'acceleration', ['m/s² m/s2', 1]),
  ...rows('inch', 'acceleration', ['ft/s² ft/s2', foot]),
  ...rows('metric', 'temperature', ['°C degC', 1, { offset: 273.15 }], ['K', 1]),
  ...rows('inch', 'temperature', ['°F degF', 5 / 9, { offset: (459.67 * 5) / 9 }]),
  ...rows('metric', 'density', ['kg/m³ kg/m3', 1], ['g/cm³ g/cm3', 1000]),
  ...rows('metric', 'force-per-length', ['N/mm', 1000], ['N/m', 1]),
  ...rows('inch', 'force-per-length', ['lbf/in', poundForce / inch]),
  ...rows('metric', 'volume-per-length', ['cm³/m cm3/m cc/m mL/m ml/m', cubicCentimetre]),
  ...rows('inch', 'volume-per-length', ['cc/ft cm³/ft cm3/ft mL/ft ml/ft', cubicCentimetre / foot]),
  ...rows(
    'metric',
    'volume-per-pressure',
    ['cm³/MPa cm3/MPa cc/MPa mL/MPa ml/MPa', cubicCentimetre / 1e6],
    ['cc/bar cm³/bar cm3/bar mL/bar ml/bar', cubicCentimetre / 1e5],
  ),
  ...rows('inch', 'volume-per-pressure', ['cc/psi', (cubicCentimetre * inch ** 2) / poundForce]),
  ...rows('metric', 'number', ['%', 0.01]),
  ...rows('metric', 'voltage', ['V', 1]),
];

/** What a number without a unit counts in where a plain number belongs. */
export const plainUnit: Unit = {
  symbol: '',
  spellings: [],
  dimension: 'number',
  factor: 1,
  offset: 0,
  family: 'metric',
  exactness: 'exact',
};

const bySpelling: ReadonlyMap<string, Unit> = new Map(
  units.flatMap((unit) => unit.spellings.map((word) => [word, unit] as const)),
);

/** The unit with this spelling, case mattering (`mm` is a length, `MM` is nothing). */
export function findUnit(word: string): Unit | undefined {
  return bySpelling.get(word);
}

/** The same unit for differences of temperature: without the offset. Other units are returned as they are. */
export function forDifferences(unit: Unit): Unit {
  return unit.dimension === 'temperature' ? { ...unit, dimension: 'temperature-difference', offset: 0 } : unit;
}

/** A written number in SI. */
export function toSi(value: number, unit: Unit): number {
  return value * unit.factor + unit.offset;
}

/** An SI value as a number of the unit. */
export function fromSi(value: number, unit: Unit): number {
  return (value - unit.offset) / unit.factor;
}
