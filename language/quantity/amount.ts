/** Reads one amount, number and unit or a compound like `4 ft 3 1/2 in`, where a given dimension belongs. */

import { type Dimension, dimensionExamples, dimensionWords, type Si, si } from './dimension.ts';
import { readNumber } from './number.ts';
import type { QuantityProblem } from './problem.ts';
import { findRefused } from './refused-units.ts';
import { findUnit, forDifferences, plainUnit, toSi, type Unit } from './units.ts';

/** How the writer wrote it, so that what follows from it can be shown the same way. */
export interface WrittenUnit {
  readonly unit: Unit;
  /** The spelling used: `cc` stays `cc`. */
  readonly word: string;
  /** The second unit of a compound: `in` in `4 ft 3 in`. */
  readonly minor?: { readonly unit: Unit; readonly word: string };
  /** `decimal` where the writer used a decimal point, as in `0.028 in`; `fraction` otherwise. */
  readonly style: 'fraction' | 'decimal';
}

export interface Amount<D extends Dimension = Dimension> {
  readonly value: Si<D>;
  readonly unit: Unit;
  readonly written: WrittenUnit;
}

export interface Term {
  readonly number: string;
  readonly unit?: string;
}

export interface ReadAmount<D extends Dimension> {
  /** Absent as soon as there is a problem: a doubtful figure is not computed with. */
  readonly amount?: Amount<D>;
  readonly problems: readonly QuantityProblem[];
}

/** Units that may stand together, the larger first. */
const compounds: readonly (readonly [major: string, minor: string])[] = [
  ['ft', 'in'],
  ['lb', 'oz'],
  ['h', 'min'],
  ['min', 's'],
  ['m', 'cm'],
  ['m', 'mm'],
];

/** How a computed value is to be written where no writer's unit is known. */
export function writtenIn(unit: Unit): WrittenUnit {
  return { unit, word: unit.symbol, style: 'fraction' };
}

/** Reads an amount. Never throws; SI comes out, with the writer's unit kept beside it. */
export function readAmount<D extends Dimension>(terms: readonly Term[], expected: D): ReadAmount<D> {
  const [first, second, ...more] = terms;
  if (!first) return { problems: [missingValue(expected)] };
  if (!second) return readSingle(first, expected);
  const grouped = spaceGrouped(terms);
  if (grouped) return { problems: [grouped] };
  if (more.length > 0)
    return { problems: [notCompound(terms, 'at most two units stand together, as in 4 ft 3 1/2 in')] };
  return readCompound(first, second, expected);
}

interface Read {
  readonly value: number;
  readonly written: WrittenUnit;
}

interface ReadTerm {
  readonly read?: Read;
  readonly problems: readonly QuantityProblem[];
}

function readTerm(term: Term, index: number, expected: Dimension): ReadTerm {
  const number = readNumber(term.number);
  const found = unitFor(term, index, expected);
  const problems: QuantityProblem[] = [];
  if (number.problem) {
    const { code, message, fix } = number.problem;
    const mend = fix === undefined ? {} : { fix: { label: `Write ${fix}`, replacement: fix } };
    problems.push({ code, message, ...mend, term: index, at: 'number' });
  }
  if ('code' in found) return { problems: [...problems, found] };
  if (problems.length > 0) return { problems };
  const style = /[.eE]/.test(term.number) ? 'decimal' : 'fraction';
  return { read: { value: number.value, written: { unit: found, word: term.unit ?? '', style } }, problems };
}

function readSingle<D extends Dimension>(term: Term, expected: D): ReadAmount<D> {
  const { read, problems } = readTerm(term, 0, expected);
  if (!read) return { problems };
  const { value, written } = read;
  return { amount: { value: si(expected, toSi(value, written.unit)), unit: written.unit, written }, problems };
}

function readCompound<D extends Dimension>(first: Term, second: Term, expected: D): ReadAmount<D> {
  const { read: major, problems: majorProblems } = readTerm(first, 0, expected);
  const { read: minor, problems: minorProblems } = readTerm(second, 1, expected);
  if (!major || !minor) return { problems: [...majorProblems, ...minorProblems] };
  const { unit } = major.written;
  const small = minor.written.unit;
  const wrong = compoundFault(major, minor);
  if (wrong) return { problems: [notCompound([first, second], wrong)] };
  // A minus in front means the whole: -4 ft 3 in is four feet three inches the other way.
  const sign = /^[-\u2212]/.test(first.number) ? -1 : 1;
  const value = sign * (toSi(Math.abs(major.value), unit) + toSi(minor.value, small));
  const written = { ...major.written, minor: { unit: small, word: minor.written.word }, style: minor.written.style };
  return { amount: { value: si(expected, value), unit, written }, problems: [] };
}

function compoundFault(major: Read, minor: Read): string | undefined {
  const [large, small] = [major.written.unit.symbol, minor.written.unit.symbol];
  if (large === '' || small === '') return 'two numbers stand side by side; leave one out';
  if (!compounds.some(([a, b]) => a === large && b === small)) {
    return `${large} and ${small} do not stand together as one amount; write it in one unit`;
  }
  if (!Number.isInteger(major.value)) return `the number of ${large} must be whole where ${small} follow`;
  const most = Math.round(major.written.unit.factor / minor.written.unit.factor);
  if (minor.value < 0) return 'a minus stands in front of the whole only';
  if (minor.value >= most) return `${minor.value} ${small} is not less than 1 ${large}; carry the rest over`;
  return undefined;
}

function unitFor(term: Term, index: number, expected: Dimension): Unit | QuantityProblem {
  const at = { term: index, at: 'unit' } as const;
  const { number: numberText, unit: word } = term;
  if (word === undefined) {
    if (expected === 'number') return plainUnit;
    const message = `${numberText} has no unit; ${belongs(expected)}.`;
    return { code: 'missing-unit', message, term: index, at: 'term' };
  }
  const unit = findUnit(word);
  if (!unit) return unknownUnit(word, index, expected);
  if (unit.dimension === expected) return unit;
  if (expected === 'temperature-difference' && unit.dimension === 'temperature') return forDifferences(unit);
  if (unit.symbol === 'lb' && expected === 'force') {
    const message = `${numberText} lb is a mass; ${belongs('force')}. Write ${numberText} lbf if the force is meant.`;
    return { code: 'lb-as-force', message, fix: { label: 'Write lbf', replacement: 'lbf' }, ...at };
  }
  const code = expected === 'number' ? 'unexpected-unit' : 'wrong-dimension';
  return { code, message: `${numberText} ${word} is ${dimensionWords[unit.dimension]}; ${belongs(expected)}.`, ...at };
}

function unknownUnit(word: string, index: number, expected: Dimension): QuantityProblem {
  const at = { term: index, at: 'unit' } as const;
  const refused = findRefused(word);
  if (!refused)
    return { code: 'unknown-unit', message: `${word} is not a unit known here; ${belongs(expected)}.`, ...at };
  const { code, instead } = refused;
  const choice = instead.find((other) => findUnit(other)?.dimension === expected) ?? instead[0];
  const fix = { label: `Write ${choice}`, replacement: choice };
  if (code === 'ambiguous-volume') {
    const message = `${word} differs between the US and Britain: say ${instead.join(' or ')}.`;
    return { code, message, fix, ...at };
  }
  const why = code === 'lb-as-force' ? 'takes a mass for a force' : 'is not how the unit is written';
  return { code, message: `${word} ${why}: write ${choice}.`, fix, ...at };
}

function spaceGrouped(terms: readonly Term[]): QuantityProblem | undefined {
  const last = terms.at(-1);
  const [head, ...rest] = terms;
  const groups =
    head && /^[-\u2212]?\d{1,3}$/.test(head.number) && rest.every((term) => /^\d{3}(?:\.\d+)?$/.test(term.number));
  if (!last || !groups || terms.slice(0, -1).some((term) => term.unit !== undefined)) return undefined;
  const replacement = `${terms.map((term) => term.number).join('')}${last.unit === undefined ? '' : ` ${last.unit}`}`;
  const message = `Spaces do not group thousands: write ${replacement}.`;
  return { code: 'grouped-number', message, fix: { label: `Write ${replacement}`, replacement } };
}

function notCompound(terms: readonly Term[], why: string): QuantityProblem {
  const text = terms.map((term) => (term.unit === undefined ? term.number : `${term.number} ${term.unit}`)).join(' ');
  return { code: 'not-compound', message: `${text} is not one amount: ${why}.` };
}

function missingValue(expected: Dimension): QuantityProblem {
  return { code: 'missing-value', message: `A value is missing; ${belongs(expected)}, or ? if it is not known.` };
}

function belongs(expected: Dimension): string {
  return `${dimensionWords[expected]} belongs here, for instance ${dimensionExamples[expected]}`;
}
