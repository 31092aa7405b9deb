/** What a writer may say about a quantity, and what cannot be said together. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Dimension, readStated, type Si } from '../../language/quantity/index.ts';
import { partsOf } from './statement.ts';

const inch = 0.0254;
const psi = 6894.757293168361;

function read<D extends Dimension>(text: string, expected: D) {
  return readStated(partsOf(text), expected);
}

describe('statements', () => {
  test('? alone is unknown and no problem', () => {
    expect(read('?', 'length')).toEqual({ stated: { kind: 'unknown' }, problems: [] });
  });

  test('? assume 1 in is an assumption', () => {
    expect(read('? assume 1 in', 'length').stated).toMatchObject({
      kind: 'assumed',
      assumption: { kind: 'exact', value: inch },
    });
  });

  test('an assumption may have limits or be rough', () => {
    expect(read('? assume about 1 in', 'length').stated).toMatchObject({ assumption: { kind: 'about' } });
    expect(read('? assume 1 in ± 1/8 in', 'length').stated).toMatchObject({ assumption: { kind: 'toleranced' } });
    expect(read('? assume 60 .. 120 psi', 'pressure').stated).toMatchObject({ assumption: { kind: 'range' } });
  });

  test('about 2 in claims no width', () => {
    expect(read('about 2 in', 'length').stated).toMatchObject({ kind: 'about', value: 2 * inch });
  });

  test.each(['52 in ± 1/2 in', '52 in +/- 1/2 in', '52 ± 1/2 in', '52 in ± 0.5 in'])('%s is a hard limit', (text) => {
    const { stated, problems } = read(text, 'length');
    expect(problems).toEqual([]);
    expect(stated?.kind === 'toleranced' && [stated.low, stated.value, stated.high]).toEqual([
      expect.closeTo(51.5 * inch, 12),
      expect.closeTo(52 * inch, 12),
      expect.closeTo(52.5 * inch, 12),
    ]);
  });

  test('60 .. 120 psi is a range, and the first end takes the unit of the second', () => {
    const { stated } = read('60 .. 120 psi', 'pressure');
    expect(stated).toMatchObject({ kind: 'range', low: 60 * psi, high: 120 * psi, written: { word: 'psi' } });
    expect(read('60 psi .. 120 psi', 'pressure').stated).toEqual(stated);
  });

  test('units mix within one statement', () => {
    expect(read('4 bar .. 120 psi', 'pressure').stated).toMatchObject({ low: 4e5, high: 120 * psi });
    expect(read('52 in ± 5 mm', 'length').stated).toMatchObject({ toleranceWritten: { word: 'mm' } });
  });

  test('the tolerance of a temperature is a difference', () => {
    const { stated } = read('20 °C ± 9 °F', 'temperature');
    expect(stated?.kind === 'toleranced' && [stated.low, stated.high]).toEqual([
      expect.closeTo(288.15, 9),
      expect.closeTo(298.15, 9),
    ]);
  });

  test('ranges of temperature hold their offsets', () => {
    expect(read('-40 .. 120 °C', 'temperature').stated).toMatchObject({ kind: 'range', low: 233.14999999999998 });
  });
});

describe('what is refused', () => {
  test.each([
    ['52 in ± 0 in', 'length', 'tolerance-not-positive', 'toleranceTerms'],
    ['52 in ± -1 in', 'length', 'tolerance-not-positive', 'toleranceTerms'],
    ['120 .. 60 psi', 'pressure', 'range-order', undefined],
    ['about 52 in ± 1 in', 'length', 'not-together', undefined],
    ['about 60 .. 120 psi', 'pressure', 'not-together', undefined],
    ['60 .. 120 psi ± 5 psi', 'pressure', 'not-together', undefined],
    ['52 in ± 1/2', 'length', 'missing-unit', 'toleranceTerms'],
    ['60 psi .. 120', 'pressure', 'missing-unit', 'toTerms'],
    ['52 in ± 2 psi', 'length', 'wrong-dimension', 'toleranceTerms'],
    ['52 in ± 2 %', 'length', 'wrong-dimension', 'toleranceTerms'],
    ['', 'length', 'missing-value', 'terms'],
    ['about', 'length', 'missing-value', 'terms'],
    ['? assume', 'length', 'missing-value', 'terms'],
  ] as const)('%s', (text, dimension, code, part) => {
    const { stated, problems } = read(text, dimension);
    expect(stated).toBeUndefined();
    expect(problems.map((problem) => [problem.code, problem.part])).toEqual([[code, part]]);
  });

  test('a wrong unit without one of its own in front is complained of where it stands too', () => {
    const { problems } = read('60 .. 120 mm', 'pressure');
    expect(problems.map((problem) => problem.part)).toContain('toTerms');
    expect(problems).toHaveLength(1);
  });

  test('a range the wrong way round comes with the right one', () => {
    expect(read('120 .. 60 psi', 'pressure').problems[0]?.fix?.replacement).toBe('60 psi .. 120 psi');
    expect(read('60 psi .. 120 psi', 'pressure').problems).toEqual([]);
  });
});

test('limits always stand in order, whatever is written', () => {
  const numbers = fc.oneof(
    fc.integer({ min: -200, max: 200 }).map(String),
    fc.constantFrom('1/2', '3 1/8', '0.028', '½'),
  );
  const word = fc.constantFrom(' in', ' mm', ' ft', '');
  const joint = fc.constantFrom(' ± ', ' .. ');
  fc.assert(
    fc.property(numbers, word, joint, numbers, word, (first, firstUnit, between, second, secondUnit) => {
      const { stated, problems } = read(`${first}${firstUnit}${between}${second}${secondUnit}`, 'length');
      expect(stated === undefined).toBe(problems.length > 0);
      if (stated?.kind === 'range') expect(inOrder(stated.low, stated.high)).toBe(true);
      if (stated?.kind === 'toleranced') expect(inOrder(stated.low, stated.value, stated.high)).toBe(true);
    }),
  );
});

function inOrder(...values: readonly Si<'length'>[]): boolean {
  return values.every((value, index) => value >= (values[index - 1] ?? value));
}
