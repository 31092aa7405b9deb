/** Whatever a route says, the sheet answers in words and numbers that are numbers. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../language/figures/index.ts';
import { judge } from '../../language/rules/index.ts';
import { linesSheet } from '../../language/sheets/lines.ts';
import { withUnread } from '../../language/sheets/unread.ts';
import { sheetFormats, writeSheet } from '../../language/sheets/write/index.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

const length = fc.constantFrom(
  '0 mm',
  '-5 mm',
  '?',
  '? assume 3 in',
  'about 2 in',
  '40 mm',
  '3 ft 4 1/2 in',
  '9e300 mm',
  '1e-9 mm',
  '20 mm ± 30 mm',
  '5 .. 9 in',
  '100 km',
);
const angle = fc.constantFrom(
  '90 deg',
  '0 deg',
  '400 deg',
  '-30 deg',
  '180 deg',
  '179.9 deg',
  '360 deg',
  '?',
  'about 45 deg',
  '45 deg ± 60 deg',
  '1e-9 deg',
  '3.2 rad',
);
const radius = fc.constantFrom('', ' radius 16 mm', ' radius -5 mm', ' radius 0 mm', ' radius ?', ' radius 1e200 mm');
const bend = fc.tuple(angle, radius).map(([theta, r]) => `bend ${theta}${r}`);
const step = fc.oneof(
  length.map((l) => `straight ${l}`),
  length.map((l) => `corner ${l}`),
  bend,
  angle.map((a) => `turn ${a}`),
  fc
    .tuple(fc.constantFrom('2', '0', '-1', '?', '1e9'), length)
    .map(([turns, across]) => `coil ${turns} turns diameter ${across}`),
);
const point = fc
  .tuple(
    fc.constantFrom('0', '100', '200', '1e200', '-300'),
    fc.constantFrom('0', '50', '100'),
    fc.constantFrom('0', '1'),
    radius,
  )
  .map(([x, y, z, r]) => `point (${x} mm, ${y} mm, ${z} mm)${r}`);
const route = fc.oneof(fc.array(step, { minLength: 1, maxLength: 7 }), fc.array(point, { minLength: 1, maxLength: 6 }));
const tube = fc.constantFrom(
  '3/16 in wall 0.028 in copper-nickel',
  '?',
  '0 mm',
  '6 mm wall ? steel',
  '-3 mm',
  '1e300 mm wall 1 mm stainless',
);
const rest = fc.constantFrom(
  '',
  'flare double-45',
  'flare bubble\n nut M10x1',
  'flare none',
  'flare ?\n nut ?',
  'sleeve ?',
  'clip every 0 mm',
  'clip every 1e-9 mm',
  'clip at 4 in, ?',
);

const circuits = fc
  .array(fc.tuple(route, tube, rest), { minLength: 1, maxLength: 3 })
  .map((runs) =>
    runs
      .map(
        ([steps, size, facts], index) =>
          `to-fit run r${index} {\n tube ${size}\n route ${steps.join(', ')}\n ${facts}\n}\n`,
      )
      .join(''),
  );

function sheetOf(text: string) {
  const reading = readCircuit(text);
  return linesSheet(reading.planned, figuresOf(reading.planned), { findings: judge(reading, 'planned').findings });
}

describe('for any route, sensible or not', () => {
  it('every format is written, and never shows what is no number', () => {
    fc.assert(
      fc.property(circuits, (text) => {
        const sheet = sheetOf(text);
        for (const format of sheetFormats) {
          expect(writeSheet(sheet, format)).not.toMatch(/NaN|Infinity|undefined|\[object/);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('every run is on the sheet', () => {
    fc.assert(
      fc.property(circuits, (text) => {
        const sheet = sheetOf(text);
        const expected = readCircuit(text).planned.parts.map(({ id }) => id as string);
        expect([...(sheet.list?.rows ?? [])].map(([id]) => id).sort()).toEqual([...expected].sort());
      }),
      { numRuns: 60 },
    );
  });

  it('the same text gives the same bytes', () => {
    fc.assert(
      fc.property(circuits, (text) => {
        expect(writeSheet(sheetOf(text), 'html')).toBe(writeSheet(sheetOf(text), 'html'));
      }),
      { numRuns: 20 },
    );
  });
});

it('a length to cut is never shorter than computed, nor a mark longer', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 90_000 }), fc.constantFrom('in', 'mm'), (tenths, unit) => {
      const text = `to-fit run r { tube 3/16 in  flare double-45  length ${tenths / 100} ${unit} }\n`;
      const data = JSON.parse(writeSheet(sheetOf(text), 'json') ?? '');
      const line = data.data.tubes[0].lines[0];
      const over = line.cutLengthMetres - line.computedCutLengthMetres.value;
      expect(over).toBeGreaterThan(-1e-8);
      expect(over).toBeLessThan((unit === 'in' ? 0.0254 / 32 : 0.001) + 1e-9);
    }),
  );
});

describe('a broken file', () => {
  const text = `stock line { tube 3/16 in  flare double-45  nut 3/8-24 }
to-fit run good of line { length 20 in }
to-fit run bad of line { length 20 psi }
to-fit run worse of line { route straight 2 in, bend
`;

  it('prints what is known and says what is not', () => {
    expect(parseErrors(text)).not.toEqual([]);
    const printed =
      writeSheet(withUnread(sheetOf(text), ['van.circuit:4:45 Here an angle is expected.']), 'text') ?? '';
    expect(printed).toMatch(/^Part of the file could not be read$/m);
    expect(printed).toContain('- van.circuit:4:45 Here an angle is expected.');
    expect(printed).toContain('Cut 20 1/4 in, square');
    expect(printed).toMatch(/^\[ \] bad$[\s\S]*Do not cut yet/m);
  });

  it('is told on every sheet before anything else, and a long list is cut short', () => {
    const sheet = withUnread(
      sheetOf(text),
      Array.from({ length: 30 }, (_, index) => `complaint ${index}`),
    );
    expect(sheet.blocks[0]).toMatchObject({ kind: 'section', title: 'Part of the file could not be read' });
    const printed = writeSheet(sheet, 'text') ?? '';
    expect(printed).toContain('complaint 19');
    expect(printed).not.toContain('complaint 20');
    expect(printed).toContain('and 10 more');
    expect(withUnread(sheet, [])).toBe(sheet);
  });
});
