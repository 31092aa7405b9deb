/** Writes quantities back in the writer's unit, with as many digits as help at the bench and no more. */

import { type WrittenUnit, writtenIn } from './amount.ts';
import { type Grid, gridFor, type Precision, spellPlain } from './digits.ts';
import type { Dimension, Si } from './dimension.ts';
import type { Estimate } from './estimate.ts';
import type { Known, Stated } from './stated.ts';
import { findUnit, forDifferences, fromSi, plainUnit, type Unit } from './units.ts';

export const notKnown = 'not known';

/** Inches are read off a tape: nearest 1/32 in. Everything else has four significant digits. */
const defaultPrecision: { readonly inches: Precision; readonly other: Precision } = {
  inches: { fraction: 32 },
  other: { significant: 4 },
};

/** A fraction is not written where rounding to it would change the value by more than this part of it. */
const mostRoundingLoss = 0.05;

export interface QuantityWriting {
  readonly unit: Unit;
  readonly precision?: Precision;
}

export interface EstimateWriting {
  /** How the writer wrote the quantity that this one is to look like. */
  readonly like: WrittenUnit;
  readonly precision?: Precision;
}

/** One value: `1372 mm`, `54 1/32 in`. "not known" if it is not finite. */
export function writeQuantity<D extends Dimension>(value: Si<D>, options: QuantityWriting): string {
  const { unit, precision } = options;
  const counted = countIn(value, writtenIn(unit), precision);
  return counted ? counted.spell(counted.nearest(counted.units)) : notKnown;
}

/**
 * An estimate: `54 1/32 in`, `about 52 in`, `52 in ± 1/2 in`, `61 psi (55 .. 70 psi)`, each with ` (assumed)` behind it
 * where an assumption is in it. Limits are rounded outwards, so what is written always holds; `about` writes none.
 */
export function writeEstimate<D extends Dimension>(estimate: Estimate<D>, options: EstimateWriting): string {
  const { like, precision } = options;
  const counted = countIn(estimate.value, like, precision);
  if (!counted || !Number.isFinite(estimate.low) || !Number.isFinite(estimate.high)) return notKnown;
  const text = estimate.about
    ? `about ${counted.spell(counted.nearest(counted.units))}`
    : withLimits(counted, fromSi(estimate.low, counted.unit), fromSi(estimate.high, counted.unit));
  return estimate.assumed ? `${text} (assumed)` : text;
}

/** A lower limit, rounded down, so that "at least" before it holds. */
export function writeLowerLimit<D extends Dimension>(limit: Si<D>, options: EstimateWriting): string {
  const counted = countIn(limit, options.like, options.precision);
  return counted ? counted.spell(Math.floor(counted.units * counted.perUnit + noise)) : notKnown;
}

/** What was said, in the notation and without rounding: `?`, `? assume 1 in`, `about 2 in`, `52 in ± 1/2 in`. */
export function writeStated<D extends Dimension>(stated: Stated<D>): string {
  switch (stated.kind) {
    case 'unknown':
      return '?';
    case 'assumed':
      return `? assume ${writeKnown(stated.assumption)}`;
    default:
      return writeKnown(stated);
  }
}

/** The unit to show a dimension in where no writer's unit is at hand. */
export function defaultUnitFor(dimension: Dimension, family: Unit['family']): Unit {
  const symbol = defaultSymbols[dimension][family];
  const unit = symbol === '' ? plainUnit : findUnit(symbol);
  if (!unit) throw new Error(`no unit is spelt ${symbol}`);
  return dimension === 'temperature-difference' ? forDifferences(unit) : unit;
}

const defaultSymbols: Readonly<Record<Dimension, Readonly<Record<Unit['family'], string>>>> = {
  number: { metric: '', inch: '' },
  length: { metric: 'mm', inch: 'in' },
  area: { metric: 'mm²', inch: 'in²' },
  volume: { metric: 'mL', inch: 'in³' },
  angle: { metric: 'deg', inch: 'deg' },
  mass: { metric: 'kg', inch: 'lb' },
  force: { metric: 'N', inch: 'lbf' },
  pressure: { metric: 'bar', inch: 'psi' },
  torque: { metric: 'N·m', inch: 'lbf·ft' },
  time: { metric: 's', inch: 's' },
  speed: { metric: 'km/h', inch: 'mph' },
  acceleration: { metric: 'm/s²', inch: 'ft/s²' },
  temperature: { metric: '°C', inch: '°F' },
  'temperature-difference': { metric: '°C', inch: '°F' },
  density: { metric: 'kg/m³', inch: 'kg/m³' },
  'force-per-length': { metric: 'N/mm', inch: 'lbf/in' },
  'volume-per-length': { metric: 'cm³/m', inch: 'cc/ft' },
  'volume-per-pressure': { metric: 'cm³/MPa', inch: 'cc/psi' },
  voltage: { metric: 'V', inch: 'V' },
};

/** A value on the grid it is to be written on. */
interface Counted {
  /** The unit that is counted: inches where feet and inches are written. */
  readonly unit: Unit;
  readonly units: number;
  readonly perUnit: number;
  readonly nearest: (units: number) => number;
  /** Spells a number of steps, unit and all. */
  readonly spell: (steps: number) => string;
}

function countIn(value: number, like: WrittenUnit, precision: Precision | undefined): Counted | undefined {
  const minor = minorOf(like);
  const unit = minor?.unit ?? like.unit;
  const units = fromSi(value, unit);
  const grid = gridFor(units, precision ?? suited(units, unit, like.style));
  const steps = units * grid.perUnit;
  if (!countable(steps)) return undefined;
  const word = minor?.word ?? like.word;
  const most = minor ? Math.round(like.unit.factor / unit.factor) : undefined;
  const spell =
    most === undefined
      ? (count: number) => withUnit(grid.spell(count), word)
      : (count: number) => compound(count, grid, { most, major: like.word, minor: word });
  return { unit, units, perUnit: grid.perUnit, nearest: (x) => nearest(x * grid.perUnit), spell };
}

/** Feet are followed by inches, unless the writer uses decimals of a foot. */
function minorOf(like: WrittenUnit): WrittenUnit['minor'] {
  if (like.minor || like.unit.symbol !== 'ft' || like.style === 'decimal') return like.minor;
  return { unit: defaultUnitFor('length', 'inch'), word: 'in' };
}

function suited(units: number, unit: Unit, style: WrittenUnit['style']): Precision {
  if (unit.symbol !== 'in' || style === 'decimal') return defaultPrecision.other;
  const rounded = Math.round(units * 32) / 32;
  return Math.abs(rounded - units) <= mostRoundingLoss * Math.abs(units)
    ? defaultPrecision.inches
    : defaultPrecision.other;
}

/** Beyond this the arithmetic of steps overflows, and nothing on a vehicle is anywhere near. */
function countable(steps: number): boolean {
  return Math.abs(steps) < 1e100;
}

/** Nearest whole number of steps, halves away from zero, so that a thing and its mirror image read alike. */
function nearest(steps: number): number {
  return Math.sign(steps) * Math.round(Math.abs(steps));
}

function compound(steps: number, grid: Grid, words: { most: number; major: string; minor: string }): string {
  const size = Math.abs(steps);
  const perMajor = grid.perUnit * words.most;
  const major = Math.floor(size / perMajor);
  const rest = size - major * perMajor;
  const parts = [
    ...(major === 0 ? [] : [`${spellPlain(major)} ${words.major}`]),
    ...(rest === 0 && major !== 0 ? [] : [`${grid.spell(rest)} ${words.minor}`]),
  ];
  return `${steps < 0 ? '-' : ''}${parts.join(' ')}`;
}

/** Steps that rounding noise alone would add are not taken. */
const noise = 1e-6;

function withLimits(counted: Counted, low: number, high: number): string {
  const { units, perUnit, nearest: round, spell } = counted;
  if (!countable(low * perUnit) || !countable(high * perUnit)) return notKnown;
  const middle = round(units);
  const text = spell(middle);
  if (high - low <= 1e-9 * Math.abs(units)) return text;
  const [below, above] = [units - low, high - units];
  if (Math.abs(above - below) > Math.max(1 / perUnit, 0.1 * Math.max(above, below))) {
    const ends = [Math.floor(low * perUnit + noise), Math.ceil(high * perUnit - noise)] as const;
    return `${text} (${fromTo(spell(ends[0]), spell(ends[1]))})`;
  }
  const width = Math.ceil(Math.max(high * perUnit - middle, middle - low * perUnit) - noise);
  return `${text} ± ${spell(Math.max(1, width))}`;
}

function writeKnown<D extends Dimension>(known: Known<D>): string {
  switch (known.kind) {
    case 'exact':
      return unrounded(known.value, known.written);
    case 'about':
      return `about ${unrounded(known.value, known.written)}`;
    case 'range':
      return fromTo(unrounded(known.low, known.written), unrounded(known.high, known.written));
    case 'toleranced': {
      const { unit } = known.toleranceWritten;
      const width = known.high - known.value;
      // A tolerance is a difference: the offset of a temperature does not belong to it.
      const written = { ...known.toleranceWritten, unit: forDifferences(unit) };
      return `${unrounded(known.value, known.written)} ± ${unrounded(width, written)}`;
    }
  }
}

const finestFraction = 128;

function unrounded(value: number, like: WrittenUnit): string {
  const minor = minorOf(like);
  const unit = minor?.unit ?? like.unit;
  const units = Number(fromSi(value, unit).toPrecision(12));
  if (!Number.isFinite(units)) return notKnown;
  const parts = units * finestFraction;
  if (like.style === 'fraction' && unit.symbol === 'in' && Math.abs(parts - Math.round(parts)) < 1e-6) {
    return countIn(value, like, { fraction: finestFraction })?.spell(Math.round(parts)) ?? notKnown;
  }
  if (!minor) return withUnit(spellPlain(units), like.word);
  const decimals = Math.min(12, spellPlain(units).split('.')[1]?.length ?? 0);
  const counted = countIn(value, like, { decimals });
  return counted ? counted.spell(counted.nearest(units)) : notKnown;
}

/** `60 .. 120 psi`: the first end leaves its unit to the second where both are single and alike. */
function fromTo(low: string, high: string): string {
  const single = /^([-\d./e ]+) (\S+)$/;
  const [, number, word] = single.exec(low) ?? [];
  const bare = number !== undefined && word === single.exec(high)?.[2] ? number : low;
  return `${bare} .. ${high}`;
}

function withUnit(number: string, word: string): string {
  return word === '' ? number : `${number} ${word}`;
}
