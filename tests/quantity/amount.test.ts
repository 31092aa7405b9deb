/** One amount where a dimension belongs: what is read, and what is refused in which words. */
import { describe, expect, test } from 'vitest';
import {
  dimensionExamples,
  dimensions,
  dimensionWords,
  readAmount,
  readStated,
  units,
} from '../../language/quantity/index.ts';
import { partsOf, termsOf } from './statement.ts';

describe('amounts as a mechanic writes them', () => {
  test.each([
    ['3/16 in', 'length', 0.0047625],
    ['1 1/8 in', 'length', 0.028575],
    ['1-1/8 in', 'length', 0.028575],
    ['4 ft 3 1/2 in', 'length', 1.3081],
    ['-4 ft 3 1/2 in', 'length', -1.3081],
    ['−0 ft 6 in', 'length', -0.1524],
    ['4.75 mm', 'length', 0.00475],
    ['0.4 L', 'volume', 4e-4],
    ['250 cc', 'volume', 2.5e-4],
    ['1 1/2 us-pint', 'volume', 7.097647095e-4],
    ['90 lbf', 'force', 400.33994537],
    ['1200 psi', 'pressure', 8273708.7518],
    ['90°', 'angle', Math.PI / 2],
    ['20 °C', 'temperature', 293.15],
    ['20 °C', 'temperature-difference', 20],
    ['36 degF', 'temperature-difference', 20],
    ['0.38', 'number', 0.38],
    ['40 %', 'number', 0.4],
    ['2 min 30 s', 'time', 150],
    ['10 lb 4 oz', 'mass', 4.6493217925],
  ] as const)('%s', (text, dimension, value) => {
    const { amount, problems } = readAmount(termsOf(text), dimension);
    expect(problems).toEqual([]);
    expect(amount?.value).toBeCloseTo(value, Math.max(2, 9 - Math.round(Math.log10(Math.abs(value)))));
  });

  test('the spelling is kept', () => {
    expect(readAmount(termsOf('250 cc'), 'volume').amount?.written).toMatchObject({
      word: 'cc',
      unit: { symbol: 'mL' },
    });
    expect(readAmount(termsOf('4 ft 3 in'), 'length').amount?.written).toMatchObject({
      word: 'ft',
      minor: { word: 'in' },
    });
    expect(readAmount(termsOf('0.028 in'), 'length').amount?.written.style).toBe('decimal');
  });
});

describe('the examples in messages', () => {
  test.each(dimensions)('for %s can be written as they stand', (dimension) => {
    const { stated, problems } = readStated(partsOf(dimensionExamples[dimension]), dimension);
    expect(problems).toEqual([]);
    expect(stated?.kind).toBe('exact');
  });
});

describe('a unit of another dimension is refused, naming both', () => {
  const pairs = units.flatMap((unit) =>
    dimensions
      .filter((expected) => expected !== unit.dimension)
      .filter((expected) => !(expected === 'temperature-difference' && unit.dimension === 'temperature'))
      .map((expected) => ({ unit, expected })),
  );

  test('every unit in the place of every other dimension', () => {
    expect(pairs.length).toBeGreaterThan(1000);
    for (const { unit, expected } of pairs) {
      const { amount, problems } = readAmount([{ number: '5', unit: unit.symbol }], expected);
      expect(amount).toBeUndefined();
      expect(problems).toHaveLength(1);
      expect(problems[0]?.message).toContain(dimensionWords[unit.dimension]);
      expect(problems[0]?.message).toContain(dimensionWords[expected]);
      expect(problems[0]).toMatchObject({ term: 0, at: 'unit' });
    }
  });

  test('in these words', () => {
    expect(readAmount(termsOf('5 mm'), 'pressure').problems).toEqual([
      {
        code: 'wrong-dimension',
        message: '5 mm is a length; a pressure belongs here, for instance 1200 psi.',
        term: 0,
        at: 'unit',
      },
    ]);
  });
});

describe('what is not guessed at', () => {
  test.each([
    ['1200', 'pressure', 'missing-unit', undefined],
    ['90 lb', 'force', 'lb-as-force', 'lbf'],
    ['90 lbs', 'force', 'unknown-unit', 'lbf'],
    ['700 lbs', 'mass', 'unknown-unit', 'lb'],
    ['15 ft-lb', 'torque', 'lb-as-force', 'lbf.ft'],
    ['1 pint', 'volume', 'ambiguous-volume', 'us-pint'],
    ['1 gal', 'volume', 'ambiguous-volume', 'us-gal'],
    ['1 qt', 'volume', 'ambiguous-volume', 'us-qt'],
    ['8 fl-oz', 'volume', 'ambiguous-volume', 'us-fl-oz'],
    ['52 inches', 'length', 'unknown-unit', 'in'],
    ['80 PSI', 'pressure', 'unknown-unit', 'psi'],
    ['5 furlong', 'length', 'unknown-unit', undefined],
    ['1,200 psi', 'pressure', 'grouped-number', '1200'],
    ['3,5 mm', 'length', 'decimal-comma', '3.5'],
    ['3/0 in', 'length', 'zero-denominator', undefined],
    ['5 mm', 'number', 'unexpected-unit', undefined],
    ['1 200 psi', 'pressure', 'grouped-number', '1200 psi'],
    ['1 200 000 Pa', 'pressure', 'grouped-number', '1200000 Pa'],
    ['4 mm 3 in', 'length', 'not-compound', undefined],
    ['3 in 4 ft', 'length', 'not-compound', undefined],
    ['4 1/2 ft 3 in', 'length', 'not-compound', undefined],
    ['3 ft 14 in', 'length', 'not-compound', undefined],
    ['4 ft -3 in', 'length', 'not-compound', undefined],
    ['1 ft 2 in 3 thou', 'length', 'not-compound', undefined],
    ['2 3', 'number', 'not-compound', undefined],
    ['', 'length', 'missing-value', undefined],
  ] as const)('%s as %s', (text, dimension, code, replacement) => {
    const { amount, problems } = readAmount(termsOf(text), dimension);
    expect(amount).toBeUndefined();
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]?.fix?.replacement).toBe(replacement);
  });

  test('pints are asked for by country', () => {
    expect(readAmount(termsOf('1 pint'), 'volume').problems[0]?.message).toContain('say us-pint or imp-pint');
  });

  test('number and unit are both complained of when both are wrong', () => {
    const { problems } = readAmount(termsOf('3,5 mm'), 'pressure');
    expect(problems.map((problem) => problem.code)).toEqual(['decimal-comma', 'wrong-dimension']);
  });

  test('a mend, put in the place it points to, mends', () => {
    expect(readAmount(termsOf('90 lbf'), 'force').problems).toEqual([]);
    expect(readAmount(termsOf('1200 psi'), 'pressure').problems).toEqual([]);
    expect(readAmount(termsOf('15 lbf.ft'), 'torque').problems).toEqual([]);
  });
});
