/** The units table against independent libraries and against NIST SP 811. */
import Qty from 'js-quantities';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  dimensions,
  findUnit,
  fromSi,
  plainUnit,
  siSymbols,
  toSi,
  units,
  unitWords,
} from '../../language/quantity/index.ts';
import { findRefused, refusedUnits } from '../../language/quantity/refused-units.ts';

/** Our symbol in the words of js-quantities, and of mathjs where that library has the unit. */
const elsewhere: Readonly<Record<string, { readonly qty?: string; readonly math?: string }>> = {
  mm: { qty: 'mm', math: 'mm' },
  cm: { qty: 'cm', math: 'cm' },
  m: { qty: 'm', math: 'm' },
  µm: { qty: 'um', math: 'um' },
  in: { qty: 'in', math: 'in' },
  ft: { qty: 'ft', math: 'ft' },
  thou: { qty: 'mil', math: 'mil' },
  'mm²': { qty: 'mm^2', math: 'mm^2' },
  'cm²': { qty: 'cm^2', math: 'cm^2' },
  'm²': { qty: 'm^2', math: 'm^2' },
  'in²': { qty: 'in^2', math: 'in^2' },
  mL: { qty: 'ml', math: 'ml' },
  L: { qty: 'l', math: 'l' },
  'mm³': { qty: 'mm^3', math: 'mm^3' },
  'm³': { qty: 'm^3', math: 'm^3' },
  'in³': { qty: 'in^3', math: 'in^3' },
  'us-fl-oz': { qty: 'floz', math: 'floz' },
  'us-pint': { qty: 'pt', math: 'pint' },
  'us-qt': { qty: 'qt', math: 'quart' },
  'us-gal': { qty: 'gal', math: 'gallon' },
  'imp-fl-oz': { qty: 'flozimp' },
  'imp-pint': { qty: 'ptimp' },
  'imp-qt': { qty: '2 ptimp' },
  'imp-gal': { qty: 'galimp' },
  deg: { qty: 'deg', math: 'deg' },
  rad: { qty: 'rad', math: 'rad' },
  kg: { qty: 'kg', math: 'kg' },
  g: { qty: 'g', math: 'g' },
  t: { qty: 'tonne', math: 'tonne' },
  lb: { qty: 'lbs', math: 'lbm' },
  oz: { qty: 'oz', math: 'oz' },
  N: { qty: 'N', math: 'N' },
  kN: { qty: 'kN', math: 'kN' },
  kgf: { math: 'kgf' },
  lbf: { qty: 'lbf', math: 'lbf' },
  bar: { qty: 'bar', math: 'bar' },
  Pa: { qty: 'Pa', math: 'Pa' },
  kPa: { qty: 'kPa', math: 'kPa' },
  MPa: { qty: 'MPa', math: 'MPa' },
  'kgf/cm²': { math: 'kgf/cm^2' },
  psi: { qty: 'psi', math: 'psi' },
  inHg: { qty: 'inHg' },
  N·m: { qty: 'N*m', math: 'N m' },
  lbf·ft: { qty: 'lbf*ft', math: 'lbf ft' },
  lbf·in: { qty: 'lbf*in', math: 'lbf in' },
  s: { qty: 's', math: 's' },
  min: { qty: 'min', math: 'minute' },
  h: { qty: 'h', math: 'hour' },
  'km/h': { qty: 'km/h', math: 'km/h' },
  'm/s': { qty: 'm/s', math: 'm/s' },
  mph: { qty: 'mph', math: 'mi/h' },
  'm/s²': { qty: 'm/s^2', math: 'm/s^2' },
  'ft/s²': { qty: 'ft/s^2', math: 'ft/s^2' },
  '°C': { qty: 'tempC', math: 'degC' },
  K: { qty: 'tempK', math: 'K' },
  '°F': { qty: 'tempF', math: 'degF' },
  'kg/m³': { qty: 'kg/m^3', math: 'kg/m^3' },
  'g/cm³': { qty: 'g/cm^3', math: 'g/cm^3' },
  'N/mm': { qty: 'N/mm', math: 'N/mm' },
  'N/m': { qty: 'N/m', math: 'N/m' },
  'lbf/in': { qty: 'lbf/in', math: 'lbf/in' },
  'cm³/m': { qty: 'cm^3/m', math: 'cm^3/m' },
  'cc/ft': { qty: 'cm^3/ft', math: 'cm^3/ft' },
  'cm³/MPa': { qty: 'cm^3/MPa', math: 'cm^3/MPa' },
  'cc/bar': { qty: 'cm^3/bar', math: 'cm^3/bar' },
  'cc/psi': { qty: 'cm^3/psi', math: 'cm^3/psi' },
  '%': { qty: '%' },
  V: { qty: 'V', math: 'V' },
};

function siIn(dimension: keyof typeof siSymbols): { qty: string; math: string } {
  const symbol = siSymbols[dimension].replaceAll('²', '^2').replaceAll('³', '^3');
  return {
    qty: dimension === 'temperature' ? 'tempK' : symbol.replaceAll('·', '*'),
    math: symbol.replaceAll('·', ' '),
  };
}

/** Relative distance; both numbers are far from zero. */
function apart(ours: number, theirs: number): number {
  return Math.abs(ours - theirs) / Math.abs(theirs);
}

describe('factors against independent libraries', () => {
  test('every unit is looked up in at least one other library', () => {
    expect(units.filter((unit) => !elsewhere[unit.symbol]?.qty && !elsewhere[unit.symbol]?.math)).toEqual([]);
    expect(Object.keys(elsewhere).filter((symbol) => !findUnit(symbol))).toEqual([]);
  });

  const inQuantities = units.filter((unit) => elsewhere[unit.symbol]?.qty);
  test.each(inQuantities.map((unit) => [unit.symbol, unit] as const))('%s as in js-quantities', (symbol, unit) => {
    const { qty = '' } = elsewhere[symbol] ?? {};
    const amount = /^\d/.test(qty) ? Qty(qty) : Qty(7, qty);
    const ours = toSi(/^\d/.test(qty) ? 1 : 7, unit);
    // That library prints lbf and psi to six digits; its mercury differs in the seventh.
    expect(apart(ours, amount.to(siIn(unit.dimension).qty).scalar)).toBeLessThan(1e-6);
  });

  const inMath = units.filter((unit) => elsewhere[unit.symbol]?.math);
  test.each(inMath.map((unit) => [unit.symbol, unit] as const))('%s as in mathjs', (symbol, unit) => {
    const theirs = mathUnit(7, elsewhere[symbol]?.math ?? '').toNumber(siIn(unit.dimension).math);
    expect(apart(toSi(7, unit), theirs)).toBeLessThan(1e-9);
  });
});

describe('factors against NIST SP 811 (2008), Appendix B.8', () => {
  // Values as printed there, to seven digits unless exact. Seen in transcriptions of B.8, except those marked.
  test.each([
    ['in', 2.54e-2],
    ['ft', 3.048e-1],
    ['thou', 2.54e-5],
    ['us-fl-oz', 2.957353e-5],
    ['us-pint', 4.731765e-4],
    ['us-qt', 9.463529e-4],
    ['us-gal', 3.785412e-3],
    ['imp-fl-oz', 2.841306e-5],
    ['imp-gal', 4.54609e-3],
    ['lb', 4.535924e-1],
    ['oz', 2.834952e-2],
    ['t', 1e3],
    ['kgf', 9.80665],
    ['lbf', 4.448222],
    ['bar', 1e5],
    ['psi', 6.894757e3],
    ['inHg', 3.386389e3],
    ['kgf/cm²', 9.80665e4],
    ['h', 3.6e3],
    ['in²', 6.4516e-4],
    ['in³', 1.638706e-5], // from memory
    ['lbf·ft', 1.355818], // from memory
    ['lbf·in', 1.129848e-1], // from memory
    ['lbf/in', 1.751268e2], // from memory
    ['mph', 4.4704e-1], // from memory
    ['km/h', 2.777778e-1], // from memory
    ['deg', 1.745329e-2], // from memory
  ])('1 %s', (symbol, printed) => {
    expect(Number(findUnit(symbol)?.factor.toPrecision(7))).toBe(printed);
  });

  test('temperatures: T/K = t/°C + 273.15 and t/°C = (t/°F - 32)/1.8', () => {
    const [celsius, fahrenheit] = [findUnit('°C') ?? plainUnit, findUnit('°F') ?? plainUnit];
    expect(toSi(0, celsius)).toBe(273.15);
    expect(toSi(32, fahrenheit)).toBeCloseTo(273.15, 10);
    expect(toSi(212, fahrenheit)).toBeCloseTo(373.15, 10);
    expect(toSi(-40, fahrenheit)).toBeCloseTo(toSi(-40, celsius), 10);
  });
});

describe('words', () => {
  test('no two units share a spelling, and no refused word is a unit', () => {
    const words = [...units.flatMap((unit) => unit.spellings), ...refusedUnits.map((refused) => refused.word)];
    expect(words.filter((word, index) => words.indexOf(word) !== index)).toEqual([]);
    expect([...unitWords].sort()).toEqual([...words].sort());
  });

  test('every spelling finds its unit, and the symbol is one of them', () => {
    for (const unit of units) {
      expect(unit.spellings).toContain(unit.symbol);
      for (const word of unit.spellings) expect(findUnit(word)).toBe(unit);
    }
  });

  test('longer words come before the words they begin with', () => {
    const precedes = (longer: string, shorter: string) => unitWords.indexOf(longer) < unitWords.indexOf(shorter);
    expect(precedes('mm', 'm') && precedes('inHg', 'in') && precedes('lbf/in', 'lbf') && precedes('cc/bar', 'cc')).toBe(
      true,
    );
    expect(unitWords.every((word, index) => index === 0 || word.length <= (unitWords[index - 1]?.length ?? 0))).toBe(
      true,
    );
  });

  test('every dimension has a unit', () => {
    const covered = new Set(units.map((unit) => unit.dimension));
    expect(dimensions.filter((dimension) => !covered.has(dimension))).toEqual(['temperature-difference']);
  });

  test('every mend offered for a refused word is a unit', () => {
    for (const { instead } of refusedUnits) for (const word of instead) expect(findUnit(word)).toBeDefined();
  });

  test.each([
    ['PSI', 'psi'],
    ['Bar', 'bar'],
    ['KG', 'kg'],
    ['mpa', 'MPa'],
    ['Inches', 'in'],
    ['feet', 'ft'],
  ])('%s is answered with %s', (word, meant) => {
    expect(findUnit(word)).toBeUndefined();
    expect(findRefused(word)?.instead[0]).toBe(meant);
  });

  test('a word that is nothing stays nothing', () => {
    expect(findRefused('furlong')).toBeUndefined();
    expect(findUnit('constructor')).toBeUndefined();
  });

  test('there and back again', () => {
    for (const unit of units) expect(fromSi(toSi(41.5, unit), unit)).toBeCloseTo(41.5, 9);
  });
});
