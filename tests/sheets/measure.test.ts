import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../language/figures/index.ts';
import { measureSheet } from '../../language/sheets/index.ts';
import { howToMeasure, measureHows, otherHows } from '../../language/sheets/measure-how.ts';
import type { Sheet } from '../../language/sheets/sheet.ts';
import { writeSheet } from '../../language/sheets/write/index.ts';
import {
  fluidProperties,
  kindRows,
  loadProperties,
  type PropertyRow,
  vehicleProperties,
} from '../../language/system/kinds/index.ts';
import type { State } from '../../language/system/presence.ts';
import { readingDimensions } from '../../language/system/read/read-record.ts';
import type { FileReading } from '../../language/system/system.ts';
import { examples, readExample } from '../examples/examples.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

const sheetOf = (reading: FileReading, state: State = 'planned'): Sheet =>
  measureSheet(reading, reading[state], figuresOf(reading[state]));

/** Where, what, and as the file says it. */
function asked(text: string, state: State = 'planned'): readonly (readonly string[])[] {
  const complaints = [...parseErrors(text), ...readCircuit(text).problems.map(({ message }) => message)];
  if (complaints.length > 0) throw new Error(complaints.join('\n'));
  return (sheetOf(readCircuit(text), state).list?.rows ?? []).map((row) => row.slice(0, 3));
}

describe('how to measure', () => {
  const rows = new Map<string, PropertyRow>(
    [...kindRows.flatMap(({ properties }) => properties), ...vehicleProperties, ...loadProperties, ...fluidProperties]
      .filter(({ value }) => value !== 'text')
      .map((row) => [row.key, row]),
  );

  it.each([...rows.keys()])('%s is said', (key) => {
    expect(measureHows[key]?.tool).toMatch(/\S/);
    expect(measureHows[key]?.how).toMatch(/^[A-Z].*[.;)]$/s);
  });

  it('nothing is said of facts that are not there', () => {
    expect(Object.keys(measureHows).filter((key) => !rows.has(key))).toEqual([]);
  });

  it.each(Object.keys(readingDimensions))('the reading %s is said', (key) => {
    expect(howToMeasure(key, undefined)).toBeDefined();
  });

  it.each(Object.keys(otherHows))('%s is said in a sentence', (key) => {
    expect(otherHows[key]?.how).toMatch(/^[A-Z3].*\.$/s);
  });

  it.each([
    ['from end nut thread', 'thread'],
    ['feed thread', 'thread'],
    ['to end flare', 'flare'],
    ['bend radius, step 2 of the route', 'bend radius'],
    ['route point x, step 1 of the route', 'x'],
    ['eye banjo', 'banjo'],
  ])('“%s” is found by its end', (fact, ending) => {
    expect(howToMeasure(fact, 'run')).toBe(otherHows[ending]);
  });

  it('a bore is read with the pistons out, not by the casting mark, and a hose’s by its printing', () => {
    expect(howToMeasure('bore', 'cylinder')?.how).toContain('Never by the casting mark alone');
    expect(howToMeasure('bore', 'hose')?.how).toContain('Read it on the hose');
  });
});

describe('the measuring list', () => {
  it('has what is not known, assumed or about, each as the file says it', () => {
    const text = `drum-brake rear-left {
  shoe-clearance about 0.3 mm
  drum { diameter 10 in  max-diameter ? }
  cylinder { bore ? assume 7/8 in  port feed: ? inverted-flare  bleeder {} }
}
`;
    expect(asked(text)).toEqual([
      ['Rear left', 'max-diameter of rear-left drum', '?'],
      ['Rear left', 'bore of rear-left cylinder', '? assume 7/8 in'],
      ['Rear left', 'feed thread of rear-left cylinder', '?'],
      ['Rear left', 'shoe-clearance of rear-left', 'about 0.3 mm'],
    ]);
  });

  it('is sorted by where one stands: corner, place, lines, the vehicle', () => {
    const text = `vehicle van {
  wheelbase ?
  fixed frame
  sprung rear-axle on frame travel ?
  load empty { front ?  rear about 500 kg }
}
fluid dot-4 { filled ? }
pedal stop on frame { ratio ? }
run joining { tube ? wall ?  length ? }
drum-brake front-right { linings { thickness ? } }
`;
    expect(asked(text).map(([where, what]) => [where, what])).toEqual([
      ['The vehicle', 'wheelbase of van'],
      ['The vehicle', 'travel of rear-axle'],
      ['The vehicle', 'front of load empty'],
      ['The fluid', 'filled (the fluid)'],
      ['On frame', 'ratio of stop'],
      ['Lines', 'tube of joining'],
      ['Lines', 'tube wall of joining'],
      ['Lines', 'length of joining'],
      ['Front right', 'thickness of front-right linings'],
      ['The vehicle', 'rear of load empty'],
    ]);
  });

  it('names the step of a route', () => {
    const text = `run line {
  tube 3/16 in
  route straight 100 mm, bend ? radius 20 mm, straight ? assume 300 mm, turn 90 deg, bend 90 deg radius ?, straight about 50 mm
}
`;
    expect(asked(text).map(([, what, said]) => [what, said])).toEqual([
      ['bend, step 2 of the route of line', '?'],
      ['straight, step 3 of the route of line', '? assume 300 mm'],
      ['bend radius, step 5 of the route of line', '?'],
      ['straight, step 6 of the route of line', 'about 50 mm'],
    ]);
  });

  it('leaves what goes to the circuit as found, and what comes to the planned one', () => {
    const text = `to-remove master old single { bore ?  port out: 3/8-24 inverted-flare plugged }
to-fit master new single { bore ?  port out: 3/8-24 inverted-flare plugged }
`;
    expect(asked(text).map(([, what]) => what)).toEqual(['bore of new']);
    expect(asked(text, 'found').map(([, what]) => what)).toEqual(['bore of old']);
  });

  it('asks of each side what its mirror leaves open', () => {
    expect(
      asked('drum-brake front-left { linings { thickness ? } }\nmirror front-left as front-right\n').map(
        ([where]) => where,
      ),
    ).toEqual(['Front left', 'Front right']);
  });

  it('has the questions of the rules', () => {
    const text =
      'run line { tube 8 mm  nut M12x1  flare bubble  from left.cylinder.feed }\ndrum-brake left { cylinder { port feed: M12x1 bubble  bleeder {} } }\n';
    const reading = readCircuit(text);
    const { planned } = reading;
    const question = {
      code: 'wheel-unknown',
      severity: 'question',
      message: 'Which wheel is left at?',
      origin: planned.parts[0]?.origin ?? { uri: '', start: 0, end: 0 },
      subject: 'left',
    } as const;
    const given = measureSheet(reading, planned, figuresOf(planned), {
      findings: [question, { ...question, severity: 'warning', message: 'A warning is not a question.' }],
    });
    const words = writeSheet(given, 'text') ?? '';
    expect(words).toContain('[ ] Which wheel is left at?');
    expect(words).not.toContain('A warning');
    // Asked by itself, it has the questions that the rules find: such nuts are listed for other tube.
    expect(writeSheet(sheetOf(reading), 'text')).toMatch(/\[ \] line is 8 mm tube .*\n.*Answer: _+/);
  });

  it('says which figures wait', () => {
    const text = 'drum-brake rear-left { cylinder { bore ?  ends single  port feed: 3/8-24 inverted-flare } }\n';
    expect(writeSheet(sheetOf(readCircuit(text)), 'text')).toContain('Needed for: area of a piston');
  });

  it('has what has to be known before parts are ordered, where the file does not ask for it', () => {
    const text =
      'parking-brake hand { cable { 2026-03-01 replace } }\ndrum-brake front-left { cylinder { bore ?  port feed: 3/8-24 inverted-flare  2026-03-01 replace } }\n';
    const words = writeSheet(sheetOf(readCircuit(text)), 'text') ?? '';
    expect(words).toMatch(/Before parts are ordered\n-+\n\[ \] length of hand cable\n/);
    expect(words.match(/bore of front-left cylinder/g)).toHaveLength(1);
  });

  it('says so where nothing is left to measure', () => {
    expect(writeSheet(sheetOf(readCircuit('pedal stop { ratio 6 }\n')), 'text')).toContain(
      'Nothing is left to measure',
    );
  });

  it('of any part of any example has what the file asks and no number that is none', () => {
    fc.assert(
      fc.property(fc.constantFrom(...examples), fc.double({ min: 0, max: 1, noNaN: true }), (example, share) => {
        const reading = readExample(example, example.text.slice(0, Math.round(example.text.length * share)));
        for (const state of ['found', 'planned'] as const) {
          const text = writeSheet(sheetOf(reading, state), 'text') ?? '';
          expect(text).toContain('Brakes can kill');
          expect(text).not.toMatch(/NaN|Infinity|undefined|\[object/);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('has every “?” of the orchard van, of one state or the other', () => {
    const example = examples.find(({ name }) => name === 'orchard-van/orchard-van.circuit');
    if (example === undefined) throw new Error('The example is not there.');
    const reading = readExample(example);
    const all = (['found', 'planned'] as const).flatMap((state) => sheetOf(reading, state).list?.rows ?? []);
    const what = new Set(all.map((row) => row[1]));
    for (const { part, fact } of reading.toMeasure) {
      expect(what.has(part === 'the fluid' ? `${fact} (${part})` : `${fact} of ${part}`)).toBe(true);
    }
  });
});
