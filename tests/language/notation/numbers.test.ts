/** Numbers as a mechanic writes them, through the parser to the value that is computed with. */
import { describe, expect, test } from 'vitest';
import { units } from '../../../language/quantity/index.ts';
import type { Fact } from '../../../language/system/part.ts';
import { parseErrors, readCircuit } from '../../support/read.ts';

const inch = 0.0254;
const foot = 0.3048;

/** What a clutch slave says of itself; its facts have lengths, areas and volumes. */
function slaveWith(said: string): {
  fact: Fact | undefined;
  messages: readonly string[];
  toMeasure: readonly string[];
} {
  const text = `clutch-slave slave {\n  ${said}\n}\n`;
  const { planned, problems, toMeasure } = readCircuit(text);
  const key = said.split(/\s/)[0] ?? '';
  return {
    fact: planned.parts[0]?.facts.get(key),
    messages: [...parseErrors(text), ...problems.map(({ message }) => message)],
    toMeasure: toMeasure.map(({ fact, assumed }) => `${fact}${assumed ? ' (assumed)' : ''}`),
  };
}

function stated(said: string): unknown {
  const { fact, messages } = slaveWith(said);
  expect(messages).toEqual([]);
  return fact?.kind === 'measure' ? fact.stated : undefined;
}

describe('one number', () => {
  test.each([
    ['7/8 in', (7 / 8) * inch],
    ['7⁄8 in', (7 / 8) * inch],
    ['⅞ in', (7 / 8) * inch],
    ['1 1/8 in', 1.125 * inch],
    ['1-1/8 in', 1.125 * inch],
    ['1 ⅛ in', 1.125 * inch],
    ['1⅛ in', 1.125 * inch],
    ['10/8 in', 1.25 * inch],
    ['0.875 in', 0.875 * inch],
    ['22.2 mm', 0.0222],
    ['22.2mm', 0.0222],
    ['22.2   mm', 0.0222],
    ['2.2e1 mm', 0.022],
    ['2.2E+1 mm', 0.022],
    ['22000 µm', 0.022],
    ['22000 um', 0.022],
    ['875 thou', 0.875 * inch],
    ['1 ft', foot],
    ['4 ft 3 1/2 in', 4 * foot + 3.5 * inch],
    ['4 ft 3-1/2 in', 4 * foot + 3.5 * inch],
    ['4 ft 3½ in', 4 * foot + 3.5 * inch],
    ['1 m 20 cm', 1.2],
  ])('bore %s', (text, metres) => {
    expect(stated(`bore ${text}`)).toMatchObject({ kind: 'exact', value: expect.closeTo(metres, 12) });
  });

  test.each([
    ['height -40 mm', -0.04],
    ['height −40 mm', -0.04],
    ['height -1 1/2 in', -1.5 * inch],
  ])('below the datum: %s', (text, metres) => {
    expect(stated(text)).toMatchObject({ value: expect.closeTo(metres, 12) });
  });
});

describe('how sure it is', () => {
  test('limits either way, with ± or +/-', () => {
    const low = expect.closeTo(51.5 * inch, 12);
    const high = expect.closeTo(52.5 * inch, 12);
    expect(stated('bore 52 in ± 1/2 in')).toMatchObject({ kind: 'toleranced', low, high });
    expect(stated('bore 52 in +/- 1/2 in')).toMatchObject({ kind: 'toleranced', low, high });
    expect(stated('bore 52 in ± 12.7 mm')).toMatchObject({ kind: 'toleranced', low, high });
    expect(stated('bore 52 ± 1/2 in')).toMatchObject({ kind: 'toleranced', low, high });
  });
  test('about', () => {
    expect(stated('bore about 2 in')).toMatchObject({ kind: 'about', value: expect.closeTo(2 * inch, 12) });
  });
  test('a range, the unit once or twice', () => {
    const ends = { kind: 'range', low: expect.closeTo(0.02, 12), high: expect.closeTo(0.03, 12) };
    expect(stated('bore 20 mm .. 30 mm')).toMatchObject(ends);
    expect(stated('bore 20 .. 30 mm')).toMatchObject(ends);
    expect(stated('bore 20..30 mm')).toMatchObject(ends);
  });
  test('not known, and assumed: both stay on the measuring list', () => {
    expect(slaveWith('bore ?')).toMatchObject({ messages: [], toMeasure: ['bore'] });
    expect(stated('bore ?')).toEqual({ kind: 'unknown' });
    expect(slaveWith('bore ? assume 1 in')).toMatchObject({ messages: [], toMeasure: ['bore (assumed)'] });
    expect(stated('bore ? assume 1 in')).toMatchObject({ kind: 'assumed', assumption: { kind: 'exact' } });
    expect(stated('bore ? assume about 1 in')).toMatchObject({ kind: 'assumed', assumption: { kind: 'about' } });
    expect(stated('bore ? assume 1 in ± 1/16 in')).toMatchObject({ assumption: { kind: 'toleranced' } });
  });
});

describe('several facts on a line, each with its unit', () => {
  test('a number takes the unit behind it and never the next word', () => {
    const { planned, problems } = readCircuit('pedal foot { ratio 6.2 travel 190 mm free-play 6 mm }');
    expect(problems).toEqual([]);
    expect([...(planned.parts[0]?.facts.keys() ?? [])]).toEqual(['ratio', 'travel', 'free-play']);
  });
  test('a unit stands on the line of its number: a name on the next line is a name', () => {
    const text = 'pedal foot {\n  ratio 6.2\n}\ntee in {\n  ports in, m, h: 3/8-24 inverted-flare\n}\n';
    expect(parseErrors(text)).toEqual([]);
    const { planned, problems } = readCircuit(text);
    expect(problems).toEqual([]);
    expect(planned.parts.map(({ name }) => name)).toEqual(['foot', 'in']);
  });
});

describe('every unit, behind a number, is read as that unit', () => {
  test.each(units.flatMap((unit) => unit.spellings.map((spelling) => [spelling, unit] as const)))(
    '%s',
    (word, unit) => {
      const { fact, messages } = slaveWith(`bore 3 ${word}`);
      if (unit.dimension === 'length') {
        expect(messages).toEqual([]);
        expect(fact).toMatchObject({ stated: { value: expect.closeTo(3 * unit.factor, 12) } });
      } else {
        // A bore is a length: the finding names what was written and what belongs there.
        expect(fact).toBeUndefined();
        expect(messages).toHaveLength(1);
        expect(messages[0]).toMatch(/^bore: /);
        expect(messages[0]).toContain('length');
      }
    },
  );
});

describe('what is refused, each with what to write instead', () => {
  test.each([
    ['bore 22', /unit/],
    ['bore 1,200 mm', /1200/],
    ['bore 22,2 mm', /22\.2/],
    ['bore 1 200 mm', /group thousands: write 1200 mm/],
    ['bore 3 pints', /us-pint or imp-pint/],
    ['volume 1 pint', /us-pint|imp-pint/],
    ['bore 2 inches', /in\b/],
    ['bore 2 MM', /mm/],
    ['bore 7/0 in', /divides by zero/],
    ['bore 30 .. 20 mm', /20 mm \.\. 30 mm/],
    ['bore about 2 in ± 1/8 in', /about/],
    ['bore 2 in ± 0 in', /tolerance/],
    ['bore 200 psi', /pressure.*length|length.*pressure/],
    ['bore 3 in 4 ft', /not one amount/],
  ])('%s', (said, why) => {
    const { fact, messages } = slaveWith(said);
    expect(messages.length).toBeGreaterThan(0);
    expect(messages.join(' ')).toMatch(why);
    expect(fact).toBeUndefined();
  });

  test('lb is a mass: as a force it is refused with lbf in its place', () => {
    const { problems } = readCircuit('pedal foot { push 90 lb }');
    expect(problems.map(({ message }) => message).join()).toContain('lbf');
    expect(problems[0]?.mends?.[0]?.edits[0]?.text).toContain('lbf');
  });
});
