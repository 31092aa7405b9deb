/** How quantities are written back: the writer's unit, tape-measure fractions, limits that always hold. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  defaultUnitFor,
  dimensions,
  type Estimate,
  estimateOf,
  exactly,
  findUnit,
  plainUnit,
  readStated,
  scaleEstimate,
  si,
  sumEstimates,
  type Unit,
  units,
  type WrittenUnit,
  writeEstimate,
  writeLowerLimit,
  writeQuantity,
  writeStated,
  writtenIn,
} from '../../language/quantity/index.ts';
import { partsOf } from './statement.ts';

const inch = 0.0254;

function named(symbol: string): Unit {
  const unit = findUnit(symbol);
  if (!unit) throw new Error(`no unit ${symbol}`);
  return unit;
}

function statedOf<D extends Dimension>(text: string, dimension: D) {
  const { stated, problems } = readStated(partsOf(text), dimension);
  if (!stated) throw new Error(problems.map((problem) => problem.message).join(' '));
  return stated;
}

/** The estimate of a text, written in its own manner. */
function echoed(text: string, dimension: Dimension): string {
  const stated = statedOf(text, dimension);
  const estimate = estimateOf(stated);
  return estimate ? writeEstimate(estimate, { like: writtenOf(text, dimension) }) : '';
}

function writtenOf(text: string, dimension: Dimension): WrittenUnit {
  const stated = statedOf(text, dimension);
  if (stated.kind === 'unknown') throw new Error('an unknown has no unit');
  return stated.kind === 'assumed' ? stated.assumption.written : stated.written;
}

describe('one value', () => {
  test.each([
    [1.372, 'mm', '1372 mm'],
    [0.1372, 'mm', '137.2 mm'],
    [0.00475, 'mm', '4.75 mm'],
    [12.3456, 'mm', '12346 mm'],
    [9.99996, 'm', '10 m'],
    [-0.00475, 'mm', '-4.75 mm'],
    [0, 'mm', '0 mm'],
    [-0, 'mm', '0 mm'],
    [1e-13, 'm', '0.0000000000001 m'],
    [1e-30, 'm', '0 m'],
    [-2.5e-307, 'ft', '0 in'],
    [1e250, 'm', 'not known'],
    [1.5e20, 'm', '150000000000000000000 m'],
    [54.03125 * inch, 'in', '54 1/32 in'],
    [54.0304 * inch, 'in', '54 1/32 in'],
    [54.99 * inch, 'in', '55 in'],
    [54.25 * inch, 'in', '54 1/4 in'],
    [-1.5 * inch, 'in', '-1 1/2 in'],
    [0.5 * inch, 'in', '1/2 in'],
    [0.028 * inch, 'in', '0.028 in'],
    [0.001 * inch, 'in', '0.001 in'],
    [0, 'in', '0 in'],
    [4.5 * 12 * inch, 'ft', '4 ft 6 in'],
    [(4 * 12 + 6.03125) * inch, 'ft', '4 ft 6 1/32 in'],
    [(4 * 12 + 11.99) * inch, 'ft', '5 ft'],
    [6 * inch, 'ft', '6 in'],
    [-4.5 * 12 * inch, 'ft', '-4 ft 6 in'],
    [Number.NaN, 'mm', 'not known'],
    [Number.POSITIVE_INFINITY, 'in', 'not known'],
    [Number.NEGATIVE_INFINITY, 'ft', 'not known'],
    [Number.MAX_VALUE, 'mm', 'not known'],
  ])('%d m in %s', (value, unit, text) => {
    expect(writeQuantity(si('length', value), { unit: named(unit) })).toBe(text);
  });

  test('of other dimensions', () => {
    expect(writeQuantity(si('pressure', 8273708.7518), { unit: named('psi') })).toBe('1200 psi');
    expect(writeQuantity(si('volume', 1.2566371e-5), { unit: named('mL') })).toBe('12.57 mL');
    expect(writeQuantity(si('temperature', 293.15), { unit: named('°C') })).toBe('20 °C');
    expect(writeQuantity(si('number', 0.38), { unit: plainUnit })).toBe('0.38');
    expect(writeQuantity(si('number', 0.4), { unit: named('%') })).toBe('40 %');
  });

  test('to a precision that is asked for', () => {
    const length = si('length', 54.3 * inch);
    const unit = named('in');
    expect(writeQuantity(length, { unit, precision: { fraction: 16 } })).toBe('54 5/16 in');
    expect(writeQuantity(length, { unit, precision: { decimals: 2 } })).toBe('54.3 in');
    expect(writeQuantity(length, { unit, precision: { significant: 2 } })).toBe('54 in');
  });
});

describe('an estimate', () => {
  test.each([
    ['52 in', 'length', '52 in'],
    ['about 52 in', 'length', 'about 52 in'],
    ['52 in ± 1/2 in', 'length', '52 in ± 1/2 in'],
    ['4 ft 4 in ± 1/2 in', 'length', '4 ft 4 in ± 1/2 in'],
    ['0.028 in ± 0.003 in', 'length', '0.028 in ± 0.003 in'],
    ['1372 mm ± 13 mm', 'length', '1372 mm ± 13 mm'],
    ['60 .. 120 psi', 'pressure', '90 psi ± 30 psi'],
    ['250 cc', 'volume', '250 cc'],
    ['? assume 1 in', 'length', '1 in (assumed)'],
    ['? assume about 1 in', 'length', 'about 1 in (assumed)'],
    ['20 °C ± 5 °C', 'temperature', '20 °C ± 5 °C'],
    ['0.38', 'number', '0.38'],
    ['1 1/2 ft', 'length', '1 ft 6 in'],
    ['1.5 ft', 'length', '1.5 ft'],
  ] as const)('of %s', (text, dimension, written) => {
    expect(echoed(text, dimension)).toBe(written);
  });

  test('something rough claims no width even where limits came in', () => {
    const run = sumEstimates('length', [
      { ...exactly(si('length', 1)), low: si('length', 0.9), high: si('length', 1.1) },
      { ...exactly(si('length', 1)), about: true },
    ]);
    expect(writeEstimate(run, { like: writtenIn(named('mm')) })).toBe('about 2000 mm');
  });

  test('limits that lie unevenly are both written', () => {
    const estimate = { ...exactly(si('pressure', 61e5)), low: si('pressure', 55e5), high: si('pressure', 70e5) };
    expect(writeEstimate(estimate, { like: writtenIn(named('bar')) })).toBe('61 bar (55 .. 70 bar)');
  });

  test('a computed length keeps the manner of the one it follows', () => {
    const wall = scaleEstimate(exactly(si('length', 0.028 * inch)), 2);
    expect(writeEstimate(wall, { like: writtenOf('0.028 in', 'length') })).toBe('0.056 in');
    const run = scaleEstimate(exactly(si('length', 52 * inch)), 1.013);
    expect(writeEstimate(run, { like: writtenOf('52 in', 'length') })).toBe('52 11/16 in');
    expect(writeEstimate(run, { like: writtenOf('4 ft 4 in', 'length') })).toBe('4 ft 4 11/16 in');
    expect(writeEstimate(run, { like: writtenOf('1300 mm', 'length') })).toBe('1338 mm');
  });

  test('what did not come out is not known', () => {
    const none = scaleEstimate(exactly(si('length', 1)), Number.NaN);
    expect(writeEstimate(none, { like: writtenIn(named('in')) })).toBe('not known');
  });
});

describe('tape-measure fractions', () => {
  const tape = fc.double({ min: 5 / 16, max: 400, noNaN: true });

  function readBack(text: string, dimension: Dimension): number {
    const estimate = estimateOf(statedOf(text, dimension));
    return estimate ? estimate.value : Number.NaN;
  }

  test('from 5/16 in up, the nearest 1/32, reduced, never 0/32 and never 32/32', () => {
    fc.assert(
      fc.property(tape, (inches) => {
        const text = writeQuantity(si('length', inches * inch), { unit: named('in') });
        const back = readBack(text, 'length') / inch;
        expect(Math.abs(back - inches)).toBeLessThanOrEqual(1 / 64 + 1e-9);
        expect(Math.abs(back * 32 - Math.round(back * 32))).toBeLessThan(1e-6);
        const [, above, below] = /(\d+)\/(\d+)/.exec(text) ?? [];
        if (above === undefined || below === undefined) return;
        expect([2, 4, 8, 16, 32]).toContain(Number(below));
        expect(Number(above) % 2).toBe(1);
        expect(Number(above)).toBeLessThan(Number(below));
      }),
    );
  });

  test('below that, never more than a twentieth off and never nothing for something', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 5 / 16, noNaN: true }), (inches) => {
        const text = writeQuantity(si('length', inches * inch), { unit: named('in') });
        expect(Math.abs(readBack(text, 'length') / inch - inches)).toBeLessThanOrEqual(0.05 * inches + 1e-12);
      }),
    );
  });

  test('feet carry: inches after feet are always fewer than twelve', () => {
    fc.assert(
      fc.property(tape, (inches) => {
        const text = writeQuantity(si('length', inches * inch), { unit: named('ft') });
        const after = / ft (?:(\d+)(?: |$))?/.exec(text)?.[1];
        if (after !== undefined) expect(Number(after)).toBeLessThan(12);
        expect(Math.abs(readBack(text, 'length') / inch - inches)).toBeLessThanOrEqual(1 / 64 + 1e-9);
      }),
    );
  });

  test('a mirror image reads the same but for the minus', () => {
    fc.assert(
      fc.property(tape, fc.constantFrom('in', 'ft', 'mm'), (inches, symbol) => {
        const unit = named(symbol);
        const text = writeQuantity(si('length', inches * inch), { unit });
        expect(writeQuantity(si('length', -inches * inch), { unit })).toBe(`-${text}`);
      }),
    );
  });
});

describe('limits as written', () => {
  test('always hold what they stand for', () => {
    const size = fc.double({ min: 0.01, max: 3, noNaN: true });
    const share = fc.double({ min: 1e-6, max: 0.3, noNaN: true });
    const like = fc
      .constantFrom('52 in', '0.5 in', '4 ft 3 in', '52 mm', '1 m')
      .map((text) => writtenOf(text, 'length'));
    fc.assert(
      fc.property(size, share, fc.option(share, { freq: 1 }), like, (value, below, otherwise, manner) => {
        const above = otherwise ?? below;
        const estimate: Estimate<'length'> = {
          value: si('length', value),
          low: si('length', value * (1 - below)),
          high: si('length', value * (1 + above)),
          about: false,
          assumed: false,
        };
        const text = writeEstimate(estimate, { like: manner });
        const limits = /\((.*)\)/.exec(text)?.[1] ?? text;
        const back = estimateOf(statedOf(limits, 'length'));
        const noise = 1e-6 * 0.0254;
        expect(back && back.low <= estimate.low + noise).toBe(true);
        expect(back && back.high >= estimate.high - noise).toBe(true);
      }),
    );
  });
});

describe('what was said, written back', () => {
  test.each([
    ['?', 'length'],
    ['? assume 1 in', 'length'],
    ['? assume about 1 in', 'length'],
    ['about 2 in', 'length'],
    ['52 in ± 1/2 in', 'length'],
    ['52 in ± 5 mm', 'length'],
    ['3/64 in', 'length'],
    ['4 ft 3 1/2 in', 'length'],
    ['-4 ft 3 1/2 in', 'length'],
    ['4 ft 3.5 in', 'length'],
    ['2 min 30 s', 'time'],
    ['10 lb 4 oz', 'mass'],
    ['0.028 in', 'length'],
    ['11.06 in', 'length'],
    ['60 .. 120 psi', 'pressure'],
    ['6 in .. 1 ft 2 in', 'length'],
    ['-40 .. 120 °C', 'temperature'],
    ['20 °C ± 9 °F', 'temperature'],
    ['1372.123456 mm', 'length'],
    ['250 cc', 'volume'],
    ['0.38', 'number'],
    ['40 %', 'number'],
  ] as const)('%s', (text, dimension) => {
    const written = writeStated(statedOf(text, dimension));
    expect(written).toBe(text);
  });

  test('means the same when it is read again, in every unit', () => {
    const number = fc.oneof(
      fc.integer({ min: 1, max: 5000 }).map(String),
      fc.tuple(fc.nat(60), fc.constantFrom('1/2', '3/4', '5/8', '7/16', '31/32', '5/64')).map((pair) => pair.join(' ')),
      fc.double({ min: 0.001, max: 9999, noNaN: true }).map((value) => value.toFixed(3)),
    );
    const unit = fc.constantFrom(...units);
    const manner = fc.constantFrom('', 'about ', '? assume ');
    fc.assert(
      fc.property(number, unit, manner, fc.boolean(), (digits, { symbol, dimension }, prefix, toleranced) => {
        const limits = toleranced && prefix !== 'about ' ? ` ± 1/4 ${symbol}` : '';
        const stated = statedOf(`${prefix}${digits} ${symbol}${limits}`, dimension);
        const again = statedOf(writeStated(stated), dimension);
        expect(again.kind).toBe(stated.kind);
        const [before, after] = [estimateOf(stated), estimateOf(again)];
        for (const end of ['value', 'low', 'high'] as const) {
          const [was, is] = [before?.[end] ?? Number.NaN, after?.[end] ?? Number.NaN];
          expect(Math.abs(is - was)).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(was), Math.abs(before?.value ?? 0)));
        }
      }),
      { numRuns: 500 },
    );
  });
});

test('every dimension has a unit to fall back on, of its own dimension', () => {
  for (const dimension of dimensions) {
    for (const family of ['metric', 'inch'] as const)
      expect(defaultUnitFor(dimension, family).dimension).toBe(dimension);
  }
});

test('a lower limit is rounded down, so that "at least" holds', () => {
  const inches = findUnit('in');
  if (inches === undefined) throw new Error('inches are a unit');
  // 24.284 mm is 30.6 thirty-seconds.
  expect(writeLowerLimit(si('length', 0.024284), { like: writtenIn(inches) })).toBe('15/16 in');
  expect(writeLowerLimit(si('length', 0.0254), { like: writtenIn(inches) })).toBe('1 in');
  const finest = { significant: 4 } as const;
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e3, noNaN: true }), (length) => {
      const text = writeLowerLimit(si('length', length), {
        like: writtenIn(defaultUnitFor('length', 'metric')),
        precision: finest,
      });
      expect(Number(text.replace(' mm', '')) / 1000).toBeLessThanOrEqual(length * (1 + 1e-6));
    }),
  );
});

test('nothing that is written ever holds NaN, Infinity or a minus before nothing', () => {
  const any = fc.double();
  fc.assert(
    fc.property(any, any, any, fc.constantFrom(...units), (a, b, c, unit) => {
      const [low = 0, value = 0, high = 0] = [a, b, c]
        .toSorted((x, y) => x - y)
        .map((each) => si(unit.dimension, each));
      const estimate = {
        value: si(unit.dimension, value),
        low: si(unit.dimension, low),
        high: si(unit.dimension, high),
        about: false,
        assumed: false,
      };
      const texts = [writeQuantity(estimate.value, { unit }), writeEstimate(estimate, { like: writtenIn(unit) })];
      for (const text of texts) expect(text).not.toMatch(/NaN|Infinity|undefined|-0(?![.\d])|(?<!\d)0\/|\/1 /);
    }),
    { numRuns: 3000 },
  );
});
