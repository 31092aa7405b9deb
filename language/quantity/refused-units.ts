/** Unit words that people write and that we will not guess at: what is wrong with each and what to write instead. */

import { findUnit, units } from './units.ts';

export interface RefusedUnit {
  readonly word: string;
  readonly code: 'ambiguous-volume' | 'lb-as-force' | 'unknown-unit';
  /** What to write instead, the likeliest first. */
  readonly instead: readonly [string, ...string[]];
}

type Row = readonly [words: string, ...instead: [string, ...string[]]];

function rows(code: RefusedUnit['code'], ...table: readonly Row[]): readonly RefusedUnit[] {
  return table.flatMap(([words, ...instead]) => words.split(' ').map((word) => ({ word, code, instead })));
}

/** Words that are known to be refused. */
export const refusedUnits: readonly RefusedUnit[] = [
  ...rows(
    'ambiguous-volume',
    ['pint pints pt', 'us-pint', 'imp-pint'],
    ['quart quarts qt', 'us-qt', 'imp-qt'],
    ['gal gallon gallons', 'us-gal', 'imp-gal'],
    ['fl-oz floz', 'us-fl-oz', 'imp-fl-oz'],
  ),
  ...rows(
    'lb-as-force',
    ['lb.ft lb·ft lb-ft lbft ft.lb ft·lb ft-lb ftlb ft-lbs', 'lbf.ft'],
    ['lb.in lb·in lb-in in.lb in·lb in-lb in-lbs', 'lbf.in'],
    ['lb/in', 'lbf/in'],
    ['lb/in² lb/in2', 'psi'],
    ['kg/cm² kg/cm2', 'kgf/cm²'],
  ),
  ...rows(
    'unknown-unit',
    ['inch inches', 'in'],
    ['foot feet', 'ft'],
    ['lbs pound pounds', 'lb', 'lbf'],
    ['ounce ounces', 'oz'],
    ['litre litres liter liters', 'L'],
    ['degree degrees', 'deg'],
    ['kph', 'km/h'],
    ['percent', '%'],
    ['psig', 'psi'],
    ['mil mils', 'thou'],
    ['volt volts', 'V'],
  ),
];

const byWord: ReadonlyMap<string, RefusedUnit> = new Map(refusedUnits.map((refused) => [refused.word, refused]));

/** What is known about a word that is no unit: refused by name, or a unit in the wrong case; else nothing. */
export function findRefused(word: string): RefusedUnit | undefined {
  const known = byWord.get(word) ?? byWord.get(word.toLowerCase());
  if (known) return known;
  if (findUnit(word)) return undefined;
  const folded = word.toLowerCase();
  const alike = units.filter((unit) => unit.spellings.some((spelling) => spelling.toLowerCase() === folded));
  const [only] = alike;
  return only && alike.length === 1 ? { word, code: 'unknown-unit', instead: [only.symbol] } : undefined;
}

/** Every word that may stand where a unit stands, refused ones too, longest first: what the lexer looks for. */
export const unitWords: readonly string[] = [
  ...units.flatMap((unit) => unit.spellings),
  ...refusedUnits.map((refused) => refused.word),
].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
