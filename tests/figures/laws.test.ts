import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explainFigure, type Figure, type Figures, figuresOf, writeResult } from '../../language/figures/index.ts';
import { readCircuit } from '../support/read.ts';
import { estimate, figuresIn, lacks, value } from './ask.ts';
import { smallCar } from './small-car.ts';

const runs = { numRuns: 60 };
const keyOf = ({ subject, id }: Figure): string => `${subject} ${id}`;

/** What a reader sees of each figure, whatever the order. */
function shownBy(figures: Figures): Readonly<Record<string, unknown>> {
  const entries = figures.all.map((figure) => {
    const { result } = figure;
    const needs = (result.kind === 'known' ? result.leftOut : result.waitsFor).map(({ name }) => name);
    return [keyOf(figure), { text: writeResult(figure), needs: [...needs].sort() }] as const;
  });
  return Object.fromEntries([...entries].sort(([a], [b]) => (a < b ? -1 : 1)));
}

const allText = (figures: Figures): string =>
  figures.all.flatMap((figure) => explainFigure(figure).map(({ text }) => text)).join('\n');

describe('figures', () => {
  it('do not depend on the order of the declarations', () => {
    const inOrder = shownBy(figuresIn(smallCar.join('\n')));
    const shuffled = fc.shuffledSubarray([...smallCar], { minLength: smallCar.length });
    fc.assert(
      fc.property(shuffled, (declarations) => {
        expect(shownBy(figuresIn(declarations.join('\n')))).toEqual(inOrder);
      }),
      runs,
    );
  });

  it('are told alike twice', () => {
    const text = smallCar.join('\n');
    expect(allText(figuresIn(text))).toBe(allText(figuresIn(text)));
  });

  it('grow with the size of everything: lengths by k, areas by k², volumes by k³', () => {
    const car = (k: number): string => {
      const mm = (size: number) => `${(size * k).toFixed(9)} mm`;
      return `
        master main single { bore ${mm(20)} stroke ${mm(30)} port out: M10x1 bubble }
        run straight-one { tube ${mm(4.75)} wall ${mm(0.7)} length ${mm(800)} from main.out }
        run bent { tube ${mm(6)} wall ${mm(1)} bend-radius ${mm(18)} route straight ${mm(200)}, bend 90 deg, straight ${mm(90)}, coil 2 turns diameter ${mm(40)} }
        run cornered { tube ${mm(6)} wall ${mm(1)} route corner ${mm(200)}, bend 60 deg radius ${mm(25)}, corner ${mm(300)} }
        run pointed { tube ${mm(6)} wall ${mm(1)} bend-radius ${mm(25)} route point (${mm(0)}, ${mm(0)}, ${mm(0)}), point (${mm(300)}, ${mm(0)}, ${mm(50)}), point (${mm(300)}, ${mm(400)}, ${mm(0)}) }
        hose flexible { bore ${mm(3.2)} length ${mm(300)} }
        drum-brake drum { cylinder { bore ${mm(20)} second-bore ${mm(16)} cup-gap ${mm(14)} port feed: M10x1 bubble } }
        disc-brake disc { caliper { bore ${mm(54)} pistons 2 port feed: M10x1 bubble } }
      `;
    };
    const powers: Readonly<Record<string, number>> = { length: 1, area: 2, volume: 3 };
    const base = figuresIn(car(1));
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (k) => {
        const grown = figuresIn(car(k));
        const compared = base.all.filter(
          ({ id, result }) => result.kind === 'known' && id !== 'run.cut-length' && !id.endsWith('-per-mm'),
        );
        expect(compared).toHaveLength(18);
        for (const { subject, id, result } of compared) {
          const factor = k ** (powers[result.dimension] ?? Number.NaN);
          expect(value(grown, subject, id) / (value(base, subject, id) * factor), `${subject} ${id}`).toBeCloseTo(1, 6);
        }
      }),
      runs,
    );
  });

  it('hold within their limits, whatever within its limits the measured thing turns out to be', () => {
    const size = (least: number, most: number) =>
      fc.record({
        value: fc.double({ min: least, max: most, noNaN: true }),
        slack: fc.double({ min: 0.001, max: 0.04, noNaN: true }),
        truth: fc.double({ min: -1, max: 1, noNaN: true }),
      });
    type Size = { readonly value: number; readonly slack: number; readonly truth: number };
    const stated = ({ value: middle, slack }: Size) => `${middle.toFixed(9)} mm ± ${(slack * middle).toFixed(9)} mm`;
    const real = ({ value: middle, slack, truth }: Size) => `${(middle * (1 + slack * truth)).toFixed(9)} mm`;
    const car = (sizes: Readonly<Record<string, Size>>, write: (each: Size) => string): string => {
      const at = (name: string): string => {
        const found = sizes[name];
        if (found === undefined) throw new Error(`no size ${name}`);
        return write(found);
      };
      return `
        master main single { bore ${at('bore')} stroke ${at('stroke')} port out: M10x1 bubble }
        run bent { tube ${at('tube')} wall ${at('wall')} flare none bend-radius ${at('radius')} route corner ${at('first')}, bend 90 deg, corner ${at('second')}, bend 50 deg, straight ${at('third')} from main.out }
        hose flexible { bore ${at('wide')} length ${at('long')} }
        drum-brake drum { cylinder { bore ${at('bore')} second-bore ${at('wide')} cup-gap ${at('gap')} port feed: M10x1 bubble } }
        disc-brake disc { caliper { bore ${at('bore')} pistons 2 port feed: M10x1 bubble } }
      `;
    };
    const sizes = fc.record({
      bore: size(15, 40),
      stroke: size(10, 40),
      tube: size(4.5, 8),
      wall: size(0.6, 1),
      radius: size(12, 25),
      first: size(60, 400),
      second: size(60, 400),
      third: size(60, 400),
      wide: size(3, 30),
      long: size(200, 500),
      gap: size(8, 20),
    });
    fc.assert(
      fc.property(sizes, (all) => {
        const doubtful = figuresIn(car(all, stated));
        const true_ = figuresIn(car(all, real));
        const known = doubtful.all.filter(({ result }) => result.kind === 'known');
        expect(known.length).toBeGreaterThanOrEqual(13);
        for (const { subject, id } of known) {
          const { low, value: middle, high } = estimate(doubtful, subject, id);
          const actual = value(true_, subject, id);
          const rounding = 1e-6 * high;
          expect(low, `${subject} ${id}`).toBeLessThanOrEqual(middle);
          expect(high, `${subject} ${id}`).toBeGreaterThanOrEqual(middle);
          expect(actual, `${subject} ${id}`).toBeGreaterThanOrEqual(low - rounding);
          expect(actual, `${subject} ${id}`).toBeLessThanOrEqual(high + rounding);
        }
      }),
      runs,
    );
  });

  // Each fact of the small car that a figure rests on, put back to a question mark.
  it.each([
    ['wall 0.028 in', 'wall ?', 'wall of tube to-front', ['to-front run.volume', 'main.primary circuit.volume']],
    [
      'bore 7/8 in',
      'bore ?',
      'bore of main',
      ['main.primary chamber.area', 'main.primary chamber.volume', 'main.secondary circuit.volume'],
    ],
    [
      'stroke 16 mm',
      'stroke ?',
      'stroke of main primary',
      ['main.primary chamber.volume', 'main.primary circuit.volume'],
    ],
    ['capacity 60 mL', 'capacity ?', 'capacity of pot rear', ['pot reservoir.volume', 'system system.volume']],
    [
      'length 400 mm ± 5 mm',
      'length ?',
      'length of to-front',
      [
        'to-front run.centreline-length',
        'to-front run.cut-length',
        'to-front run.volume',
        'main.primary circuit.volume',
        'system system.volume',
      ],
    ],
    [
      'bend-radius 16 mm',
      'bend-radius ?',
      'bend-radius of to-front-left',
      [
        'to-front-left run.centreline-length',
        'to-front-left run.cut-length',
        'to-front-left run.volume',
        'main.primary circuit.volume',
      ],
    ],
    ['flare double-45', 'flare ?', 'flare at the from end of to-rear', ['to-rear run.cut-length']],
    ['bore 1/8 in', 'bore ?', 'bore of to-rear-left', ['to-rear-left hose.volume', 'main.secondary circuit.volume']],
    ['volume 0.4 mL', 'volume ?', 'volume of front-tee', ['front-tee junction.volume', 'main.primary circuit.volume']],
    ['pistons 1', 'pistons ?', 'pistons of front-left grip', ['front-left.grip caliper.area']],
    [
      'cup-gap 14 mm',
      'cup-gap ?',
      'cup-gap of rear-left cylinder',
      ['rear-left.cylinder cylinder.volume', 'main.secondary circuit.volume'],
    ],
    [
      'ends double',
      'ends ?',
      'ends of rear-left cylinder',
      ['rear-left.cylinder cylinder.total-area', 'rear-left.cylinder cylinder.displacement-per-mm'],
    ],
  ] as const)('%s as %s is waited for as “%s”', (fact, unknown, need, figures) => {
    const text = smallCar.join('\n');
    expect(text).toContain(fact);
    const asked = figuresIn(text.replace(fact, unknown));
    const waiting = asked.all.filter(({ subject, id }) => lacks(asked, subject, id).includes(need)).map(keyOf);
    expect(waiting).toEqual(expect.arrayContaining([...figures]));
    // And of what waits, nothing claims to be whole.
    const whole = asked.all.filter((figure) => waiting.includes(keyOf(figure)) && /^[\d.]/.test(writeResult(figure)));
    expect(whole).toEqual([]);
    // What waits for nothing new is as it was.
    const before = figuresIn(text);
    const untouched = before.all.filter(({ subject, id }) => {
      const [then, now] = [lacks(before, subject, id), lacks(asked, subject, id)];
      return then.join() === now.join();
    });
    expect(untouched.length).toBeGreaterThan(10);
    for (const each of untouched) {
      const after = asked.find(each.subject, each.id);
      expect(after && writeResult(after), keyOf(each)).toBe(writeResult(each));
    }
  });

  it('never show a number that is none, whatever the file says', () => {
    const amount = fc.oneof(
      fc.constantFrom(
        '?',
        '0 mm',
        '-5 mm',
        '1e300 mm',
        '1e-300 mm',
        '1e155 m',
        '5 mm ± 10 mm',
        'about 0 mm',
        '1 .. 300 mm',
        '? assume 1e308 mm',
        '1e-12 thou',
      ),
      fc.double({ min: -1e3, max: 1e6, noNaN: true }).map((number) => `${number.toFixed(3)} mm`),
    );
    const angle = fc.constantFrom('90 deg', '?', '0 deg', '180 deg', '-90 deg', '1e300 deg', '45 deg ± 60 deg');
    const count = fc.constantFrom('1', '2', '0', '-1', '1.5', '1e300', '?');
    const facts = fc.record({ amounts: fc.array(amount, { minLength: 12, maxLength: 12 }), angle, count });
    fc.assert(
      fc.property(facts, ({ amounts, angle: turned, count: number }) => {
        const [a, b, c, d, e, f, g, h, i, j, k, l] = amounts;
        const reading = readCircuit(`
          master main single { bore ${a} stroke ${b} cut-off ${c} port out: M10x1 bubble }
          run bent { tube ${d} wall ${e} flare double-45 bend-radius ${f} length ${g} route straight ${h}, bend ${turned}, corner ${i}, coil ${number} turns diameter ${j} from main.out }
          run pointed { tube ${d} wall ${e} flare bubble route point (${f}, ${g}, ${h}), point (${i}, ${j}, ${k}) radius ${l}, point (${a}, ${b}, ${c}) }
          run plain { tube ${j} wall ${k} length ${l} flare single-37 }
          hose flexible { bore ${k} length ${l} }
          drum-brake drum { cylinder { bore ${a} second-bore ${b} cup-gap ${c} ends double port feed: M10x1 bubble } }
          disc-brake disc { caliper { bore ${d} second-bore ${e} pistons ${number} port feed: M10x1 bubble } }
        `);
        for (const system of [reading.found, reading.planned]) {
          const figures = figuresOf(system);
          expect(allText(figures)).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
          for (const { result } of figures.all) {
            if (result.kind === 'unknown') expect(result.waitsFor.length).toBeGreaterThan(0);
            else expect(result.estimate.value).toBeGreaterThanOrEqual(0);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  it('of a text broken anywhere are still told', () => {
    const text = smallCar.join('\n');
    fc.assert(
      fc.property(fc.nat({ max: text.length }), (end) => {
        const { found, planned } = readCircuit(text.slice(0, end));
        for (const system of [found, planned]) expect(allText(figuresOf(system))).not.toMatch(/NaN|Infinity|undefined/);
      }),
      runs,
    );
  });
});
