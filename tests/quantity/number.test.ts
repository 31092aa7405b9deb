/** Numbers in every form that the notation gives. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberPattern, readNumber } from '../../language/quantity/index.ts';

const atStart = new RegExp(numberPattern.source, 'y');

/** What a lexer takes from the beginning of a text. */
function taken(text: string): string | undefined {
  atStart.lastIndex = 0;
  return atStart.exec(text)?.[0];
}

describe('forms', () => {
  test.each([
    ['3/16', 3 / 16],
    ['1 1/8', 1.125],
    ['1-1/8', 1.125],
    ['1  1/8', 1.125],
    ['1\t1/8', 1.125],
    ['1\u00a01/8', 1.125],
    ['3⁄16', 3 / 16],
    ['1 3⁄16', 1 + 3 / 16],
    ['½', 0.5],
    ['¼', 0.25],
    ['¾', 0.75],
    ['⅛', 0.125],
    ['⅜', 0.375],
    ['⅝', 0.625],
    ['⅞', 0.875],
    ['⅓', 1 / 3],
    ['⅔', 2 / 3],
    ['⅕', 0.2],
    ['⅖', 0.4],
    ['⅗', 0.6],
    ['⅘', 0.8],
    ['⅙', 1 / 6],
    ['⅚', 5 / 6],
    ['⅐', 1 / 7],
    ['⅑', 1 / 9],
    ['⅒', 0.1],
    ['1½', 1.5],
    ['1 ½', 1.5],
    ['1-½', 1.5],
    ['12¾', 12.75],
    ['9/8', 1.125],
    ['0', 0],
    ['-0', 0],
    ['52', 52],
    ['0.028', 0.028],
    ['.028', 0.028],
    ['1961', 1961],
    ['1e3', 1000],
    ['1.5E-3', 0.0015],
    ['2e+2', 200],
    ['-5', -5],
    ['−5', -5],
    ['-1 1/8', -1.125],
    ['−1½', -1.5],
    ['-3/16', -3 / 16],
    ['0 1/2', 0.5],
  ])('%s', (text, value) => {
    expect(readNumber(text)).toEqual({ value });
    expect(taken(`${text} in`)).toBe(text);
    expect(taken(`${text},`)).toBe(text);
  });

  test('any decimal that can be printed is read as itself', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(readNumber(String(value)).value).toBe(value + 0);
      }),
    );
  });

  test('any mixed number, however its parts are joined', () => {
    const joints = fc.constantFrom(' ', '-', '  ');
    const slashes = fc.constantFrom('/', '⁄');
    fc.assert(
      fc.property(
        fc.nat(500),
        fc.integer({ min: 2, max: 128 }),
        fc.nat(127),
        joints,
        slashes,
        (whole, below, n, joint, slash) => {
          const above = n % below;
          const text = `${whole}${joint}${above}${slash}${below}`;
          expect(readNumber(text)).toEqual({ value: whole + above / below });
          expect(taken(`${text} in`)).toBe(text);
        },
      ),
    );
  });
});

describe('forms that are told off by name', () => {
  test.each([
    ['1,200', 'grouped-number', 1200, '1200'],
    ['-1,200', 'grouped-number', -1200, '-1200'],
    ['1,200,000', 'grouped-number', 1200000, '1200000'],
    ['1,200.5', 'grouped-number', 1200.5, '1200.5'],
    ['3,5', 'decimal-comma', 3.5, '3.5'],
    ['0,028', 'decimal-comma', 0.028, '0.028'],
    ['12,75', 'decimal-comma', 12.75, '12.75'],
    ['1 9/8', 'odd-fraction', 2.125, '2 1/8'],
    ['1 8/8', 'odd-fraction', 2, '2'],
  ])('%s', (text, code, value, fix) => {
    expect(readNumber(text)).toMatchObject({ value, problem: { code, fix } });
    expect(readNumber(text).problem?.message).toContain(fix.replace('-', ''));
    expect(readNumber(fix)).toEqual({ value });
    expect(taken(`${text} psi`)).toBe(text);
  });

  test.each([
    ['3/0', 'zero-denominator'],
    ['1 1/0', 'zero-denominator'],
    ['1e999', 'too-large'],
    ['1,2,3', 'not-a-number'],
    ['', 'not-a-number'],
    ['abc', 'not-a-number'],
    ['1 2', 'not-a-number'],
    ['1\n1/8', 'not-a-number'],
    ['0x10', 'not-a-number'],
    ['3/8-24', 'not-a-number'],
    ['2026-03-02', 'not-a-number'],
  ])('%s has no value', (text, code) => {
    const { value, problem } = readNumber(text);
    expect(value).toBeNaN();
    expect(problem?.code).toBe(code);
  });

  test('1,200 says both things it could mean', () => {
    expect(readNumber('1,200').problem?.message).toContain('1.200');
  });

  test('no text makes it throw, and a number without a problem is finite', () => {
    const texts = fc.oneof(fc.string(), fc.stringMatching(/^[-−]?[\d ,./⁄½¾eE+-]{0,12}$/));
    fc.assert(
      fc.property(texts, (text) => {
        const { value, problem } = readNumber(text);
        expect(Number.isFinite(value) || problem !== undefined).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('what the lexer must not swallow', () => {
  test.each([
    ['3/8-24', 'a thread'],
    ['1-1/8-12', 'a thread of more than an inch'],
    ['2026-03-02', 'a date'],
  ])('%s, %s', (text) => {
    expect(taken(text)).not.toBe(text);
    expect(taken(text)).not.toContain('/');
  });

  test('a thread after a number keeps its own digits', () => {
    expect(taken('2 3/8-24')).toBe('2');
  });

  test('the end of a range is not part of its beginning', () => {
    expect(taken('60..120 psi')).toBe('60');
    expect(taken('60 .. 120 psi')).toBe('60');
  });

  test('a line ends a number', () => {
    expect(taken('1\n1/8 in')).toBe('1');
  });

  test('compounds are several numbers', () => {
    expect(taken('4 ft 3 1/2 in')).toBe('4');
    expect(taken('3 1/2 in')).toBe('3 1/2');
  });
});
