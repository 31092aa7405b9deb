/** Computing with limits: what always holds, and closed forms against which it is checked. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  circleArea,
  combineEstimates,
  cylinderVolume,
  type Dimension,
  differenceOf,
  type Estimate,
  estimateOf,
  exactly,
  isKnown,
  mapEstimate,
  readStated,
  scaleEstimate,
  si,
  sumEstimates,
} from '../../language/quantity/index.ts';
import { partsOf } from './statement.ts';

function estimated<D extends Dimension>(text: string, dimension: D): Estimate<D> {
  const { stated } = readStated(partsOf(text), dimension);
  const estimate = stated && estimateOf(stated);
  if (!estimate) throw new Error(`${text} gives no estimate`);
  return estimate;
}

const lengths: fc.Arbitrary<Estimate<'length'>> = fc
  .record({
    ends: fc.tuple(metres(), metres(), metres()),
    about: fc.boolean(),
    assumed: fc.boolean(),
  })
  .map(({ ends, about, assumed }) => {
    const [low = 0, value = 0, high = 0] = ends.toSorted((a, b) => a - b).map((each) => si('length', each));
    return { low: si('length', low), value: si('length', value), high: si('length', high), about, assumed };
  });

function metres() {
  return fc.double({ min: -1e3, max: 1e3, noNaN: true });
}

function ordered({ low, value, high }: Estimate): boolean {
  return low <= value && value <= high;
}

/** A point of the estimate, by its share of the way from low to high. */
function within({ low, high }: Estimate, share: number): number {
  return Math.min(high, Math.max(low, low + (high - low) * share));
}

describe('what is said, as an estimate', () => {
  test('an unknown gives none', () => {
    expect(estimateOf({ kind: 'unknown' })).toBeUndefined();
  });

  test('exact, toleranced, about, range and assumed', () => {
    const inch = 0.0254;
    expect(estimated('52 in', 'length')).toEqual(exactly(si('length', 52 * inch)));
    const toleranced = estimated('52 in ± 1/2 in', 'length');
    expect([toleranced.low / inch, toleranced.high / inch]).toEqual([expect.closeTo(51.5), expect.closeTo(52.5)]);
    expect(estimated('about 2 in', 'length')).toMatchObject({ about: true, assumed: false });
    expect(estimated('? assume 1 in', 'length')).toMatchObject({ about: false, assumed: true, value: inch });
    expect(estimated('? assume about 1 in', 'length')).toMatchObject({ about: true, assumed: true });
    expect(estimated('4 .. 8 bar', 'pressure')).toMatchObject({ value: 6e5, low: 4e5, high: 8e5, about: false });
  });
});

describe('laws', () => {
  test('limits stay in order through every operation', () => {
    fc.assert(
      fc.property(lengths, lengths, fc.double({ min: -50, max: 50, noNaN: true }), (a, b, factor) => {
        expect(ordered(sumEstimates('length', [a, b]))).toBe(true);
        expect(ordered(differenceOf(a, b))).toBe(true);
        expect(ordered(scaleEstimate(a, factor))).toBe(true);
        expect(ordered(mapEstimate('length', (x) => -(x ** 3), a))).toBe(true);
        expect(ordered(combineEstimates('area', (x, y) => x * y, a, b))).toBe(true);
      }),
    );
  });

  test('whatever the true values are within their limits, the result is within its own', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(lengths, lengths, share, share, (a, b, s, t) => {
        const [x, y] = [within(a, s), within(b, t)];
        const holds = (e: Estimate, truth: number) => {
          const noise = 1e-9 * Math.max(1, Math.abs(truth));
          return e.low - noise <= truth && truth <= e.high + noise;
        };
        expect(holds(sumEstimates('length', [a, b]), x + y)).toBe(true);
        expect(holds(differenceOf(a, b), x - y)).toBe(true);
        expect(holds(scaleEstimate(a, -2.5), -2.5 * x)).toBe(true);
        expect(holds(mapEstimate('number', Math.atan, a), Math.atan(x))).toBe(true);
        expect(
          holds(
            combineEstimates('area', (p, q) => p * q, a, b),
            x * y,
          ),
        ).toBe(true);
      }),
    );
  });

  test('about and assumed are caught from any input and from nothing else', () => {
    fc.assert(
      fc.property(fc.array(lengths, { maxLength: 4 }), (inputs) => {
        const marks = {
          about: inputs.some((each) => each.about),
          assumed: inputs.some((each) => each.assumed),
        };
        expect(sumEstimates('length', inputs)).toMatchObject(marks);
        expect(combineEstimates('length', (...all: number[]) => Math.max(0, ...all), ...inputs)).toMatchObject(marks);
      }),
    );
  });

  test('the order of a sum of two does not matter, and subtracting undoes adding a sure thing', () => {
    fc.assert(
      fc.property(lengths, lengths, (a, b) => {
        expect(sumEstimates('length', [a, b])).toEqual(sumEstimates('length', [b, a]));
        const sure = exactly(b.value);
        const back = differenceOf(sumEstimates('length', [a, sure]), sure);
        expect(back.low).toBeCloseTo(a.low, 6);
        expect(back.high).toBeCloseTo(a.high, 6);
      }),
    );
  });
});

describe('closed forms', () => {
  test('nothing sums to nothing', () => {
    expect(sumEstimates('volume', [])).toEqual(exactly(si('volume', 0)));
  });

  test('tolerances of a sum add up', () => {
    const total = sumEstimates('length', [estimated('40 mm ± 1 mm', 'length'), estimated('60 mm ± 2 mm', 'length')]);
    expect([total.low, total.value, total.high].map((each) => each * 1000)).toEqual([
      expect.closeTo(97),
      expect.closeTo(100),
      expect.closeTo(103),
    ]);
  });

  test('a thing less itself keeps its width: the two count as independent', () => {
    const run = estimated('52 in ± 1/2 in', 'length');
    expect(differenceOf(run, run)).toMatchObject({
      value: 0,
      low: expect.closeTo(-0.0254),
      high: expect.closeTo(0.0254),
    });
  });

  test('fluid in a tube: π d² l / 4 at both ends of bore and length', () => {
    // 1 m of 4 mm bore holds 4π cm³.
    const bore = estimated('4 mm ± 0.1 mm', 'length');
    const length = estimated('1 m ± 10 mm', 'length');
    const volume = combineEstimates('volume', (d, l) => cylinderVolume(circleArea(d), l), bore, length);
    expect(volume.value * 1e6).toBeCloseTo(4 * Math.PI, 9);
    expect(volume.low * 1e6).toBeCloseTo(((Math.PI * 3.9 ** 2) / 4) * 0.99, 9);
    expect(volume.high * 1e6).toBeCloseTo(((Math.PI * 4.1 ** 2) / 4) * 1.01, 9);
  });

  test('a falling function swaps the limits', () => {
    const half = mapEstimate('number', (x) => 1 / x, estimated('1.6 .. 2.4', 'number'));
    expect([half.low, half.value, half.high]).toEqual([expect.closeTo(1 / 2.4), 0.5, expect.closeTo(1 / 1.6)]);
  });
});

describe('where no number comes out', () => {
  test.each([
    ['a division by zero', mapEstimate('pressure', (area) => 100 / area, exactly(si('area', 0)))],
    ['the root of something negative', mapEstimate('length', Math.sqrt, exactly(si('area', -1)))],
    [
      'a limit that is infinite',
      mapEstimate('number', (x) => 1 / x, { ...exactly(si('number', 1)), low: si('number', 0) }),
    ],
    ['an overflow', scaleEstimate(exactly(si('length', 1e300)), 1e300)],
    ['a factor that is none', scaleEstimate(exactly(si('length', 1)), Number.NaN)],
  ])('%s: nothing is known, and no comparison holds', (_, estimate) => {
    expect(isKnown(estimate)).toBe(false);
    expect(estimate.high > 0 || estimate.low < 0 || estimate.value === 0).toBe(false);
  });

  test('and what is computed from it is not known either', () => {
    const none = scaleEstimate(exactly(si('length', 1)), Number.NaN);
    expect(isKnown(sumEstimates('length', [none, exactly(si('length', 1))]))).toBe(false);
  });

  test('more than twelve estimates at once is our own mistake', () => {
    const many = Array.from({ length: 13 }, () => exactly(si('length', 1)));
    expect(() => combineEstimates('number', (...all: number[]) => all.length, ...many)).toThrow(RangeError);
  });
});
