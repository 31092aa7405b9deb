/** The sheet by which lines are made, read as its user reads it. Order of work: common practice of the trade. */
import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../language/figures/index.ts';
import { judge } from '../../language/rules/index.ts';
import { type LinesOptions, linesSheet } from '../../language/sheets/lines.ts';
import type { Block, Sheet } from '../../language/sheets/sheet.ts';
import { writeSheet } from '../../language/sheets/write/index.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

const parts = `master main tandem {
  primary { port front: 3/8-24 inverted-flare }
  secondary { port rear: 3/8-24 inverted-flare }
}
tee front { ports in, left, right: 3/8-24 inverted-flare }
tee rear { ports in, left, right: 3/8-24 inverted-flare }
stock line {
  tube 3/16 in wall 0.028 in copper-nickel
  nut 3/8-24
  flare double-45
  bend-radius 1 in
}
`;
const feed = (statements: string, mark = 'to-fit ') =>
  `${mark}run feed of line {\n  from main.primary.front\n  to front.in\n  ${statements}\n}\n`;

function sheetOf(text: string, options: Partial<LinesOptions> = {}): Sheet {
  expect(parseErrors(text)).toEqual([]);
  const reading = readCircuit(text);
  const { findings } = judge(reading, 'planned');
  return linesSheet(reading.planned, figuresOf(reading.planned), { findings, ...options });
}

const printed = (sheet: Sheet): string => writeSheet(sheet, 'text') ?? '';

function stepsIn(blocks: readonly Block[]): readonly string[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'section') return stepsIn(block.blocks);
    return block.kind === 'steps' ? block.items.map(({ text, details }) => [text, ...(details ?? [])].join(' ')) : [];
  });
}
const orderOf = (statements: string): readonly string[] => stepsIn(sheetOf(parts + feed(statements)).blocks);

describe('what is to be made', () => {
  const standing = (records: string, mark = '') => {
    const text = printed(sheetOf(parts + feed(`length 20 in\n${records}`, mark)));
    return /^\[ \] feed$/m.test(text) ? 'to make' : (/^feed .* (kept|done .*)$/m.exec(text)?.[1] ?? 'missing');
  };

  it('is what is marked to be fitted or recorded to be replaced, until it is done', () => {
    expect(standing('', 'to-fit ')).toBe('to make');
    expect(standing('')).toBe('kept');
    expect(standing('2026-03-01 found "rusted"')).toBe('kept');
    expect(standing('2026-03-01 replace')).toBe('to make');
    expect(standing('2026-03-01 replace\n2026-04-01 done replace')).toBe('done 2026-04-01');
    expect(standing('2026-04-01 done replace\n2026-03-01 replace')).toBe('done 2026-04-01');
    expect(standing('2026-03-01 replace\n2026-04-01 done clean')).toBe('to make');
    expect(standing('2026-03-01 fit\n2026-04-01 done', 'to-fit ')).toBe('done 2026-04-01');
    expect(standing('2026-03-01 keep', 'to-fit ')).toBe('kept');
  });

  it('is all of them where all are asked for', () => {
    expect(printed(sheetOf(parts + feed('length 20 in', ''), { which: 'all' }))).toMatch(/^\[ \] feed$/m);
  });

  it('is said to be nothing where it is nothing', () => {
    expect(printed(sheetOf(parts))).toContain('The file has no runs of tube.');
    expect(printed(sheetOf(parts + feed('length 20 in', '')))).toContain('No line is to be made');
  });
});

describe('the length to cut', () => {
  const cut = (statements: string, stock = parts) =>
    /^cut to +(.*)$/m.exec(printed(sheetOf(stock + feed(statements))))?.[1];

  it('is rounded up to the next thirty-second of an inch, with both flares in it', () => {
    // 20 in and twice 3 mm (0.11811 in): 20.236 in, next mark 20 1/4 in.
    expect(cut('length 20 in')).toBe('20 1/4 in (worked out 20.236 in)');
  });

  it('is rounded up to the next millimetre for one who writes millimetres', () => {
    expect(cut('length 500 mm')).toBe('506 mm (worked out 506 mm)');
    expect(cut('length 500.2 mm')).toBe('507 mm (worked out 506.2 mm)');
  });

  it('is taken at the long limit, since tube that is short is scrap', () => {
    expect(cut('length 500 mm ± 4 mm')).toBe('510 mm (worked out 506 mm, at the long limit)');
    expect(orderOf('length 500 mm ± 4 mm')[0]).toContain('Try it in place before flare B and trim it there.');
  });

  it('is not called sure where it is assumed or about', () => {
    expect(cut('length ? assume 500 mm')).toBe('506 mm (worked out 506 mm, assumed)');
    expect(orderOf('length ? assume 500 mm')[0]).toBe(
      'Measure first: the length is assumed. If it is right, cut 506 mm.',
    );
    expect(orderOf('length about 500 mm')[0]).toContain('only about right');
  });

  it('is not given where it is not known, and what it waits for is named', () => {
    expect(cut('length ?')).toBe('not known');
    expect(orderOf('length ?')[0]).toMatch(/^Do not cut yet: the length is not known\. It waits for .*feed/);
    expect(printed(sheetOf(parts + feed('length ?')))).toContain(
      'Not in this plan, since the length is not known: feed.',
    );
  });
});

describe('the order of work', () => {
  const at = (steps: readonly string[], pattern: RegExp) => steps.findIndex((step) => pattern.test(step));
  const bentTo = (last: string) => `route straight 4 in, bend 90 deg, straight ${last}`;

  it.each([
    ['a straight line', 'length 20 in'],
    ['a bent line with room behind its last bend', bentTo('4 in')],
    ['a bent line without', bentTo('1/2 in')],
  ])('of %s has both nuts on before the second flare', (_, statements) => {
    const steps = orderOf(statements);
    const [nutA, flareA, nutB, flareB] = [
      /Slide on .* toward end A/,
      /Form .* on end A/,
      /Slide on .* toward end B/,
      /Form .* on end B/,
    ].map((pattern) => {
      const step = at(steps, pattern);
      expect(step).toBeGreaterThanOrEqual(0);
      return step + (steps[step] ?? '').search(pattern) / 1000;
    });
    expect([nutA, flareA, nutB, flareB]).toEqual([nutA, flareA, nutB, flareB].sort((a, b) => Number(a) - Number(b)));
  });

  it('bends before the second flare where a bar finds room behind the last bend', () => {
    const steps = orderOf(bentTo('4 in'));
    expect(at(steps, /Mark and make the bend/)).toBeLessThan(at(steps, /on end B/));
  });

  it('flares first and bends then where it does not, and says why', () => {
    const steps = orderOf(bentTo('1/2 in'));
    expect(at(steps, /Mark and make the bend/)).toBeGreaterThan(at(steps, /on end B/));
    expect(steps.join(' ')).toContain('Only 1/2 in of straight tube stays behind the last bend');
  });

  it('warns where a bar may not hold, and where the room is not known', () => {
    expect(orderOf(bentTo('1 1/4 in')).join(' ')).toContain(
      'If yours cannot hold it, put nut B on and flare end B before you bend.',
    );
    expect(orderOf(bentTo('?')).join(' ')).toContain('is not known; with less than 1 1/2 in');
  });

  it('slides the guard on before the second nut', () => {
    const steps = orderOf('length 20 in\n sleeve 6 in');
    expect(steps.join(' ')).toMatch(
      /Slide on the guard, 6 in of it\. Slide on the 3\/8-24 nut, its thread toward end B\./,
    );
  });

  it('names a female nut with its sleeve for a 37° flare', () => {
    const text = `tee a { ports in, out: 7/16-20 male 37-degree }
to-fit run feed {
  tube 1/4 in wall 0.035 in stainless
  nut 7/16-20
  flare single-37
  from a.in
  to a.out
  length 300 mm
}
`;
    const steps = stepsIn(sheetOf(text).blocks).join(' ');
    expect(steps).toContain(
      'Slide on the 7/16-20 female nut, its thread toward end A, then its sleeve. Form a 37° single flare on end A.',
    );
    expect(printed(sheetOf(text))).toContain('For nuts of this size no torque is known here');
  });

  it('says so where nut or flare are not stated', () => {
    const steps = stepsIn(sheetOf('to-fit run feed { tube 3/16 in length 20 in }\n').blocks).join(' ');
    expect(steps).toContain('Its thread is not stated');
    expect(steps).toContain('the form is not stated');
  });
});

describe('the bends', () => {
  const route = 'route straight 3 in, bend 90 deg, straight 4 in, turn 60 deg, bend 45 deg, straight 5 in';

  it('are marked from the face of end A, with turns as seen along the tube', () => {
    const text = printed(sheetOf(parts + feed(route)));
    // Second start: 3 in + π/2 in + 4 in = 8.571 in, to the nearest thirty-second 8 9/16 in.
    expect(text).toMatch(/1 +3 in +3 in +– +90° +1 in +4 9\/16 in/);
    expect(text).toMatch(/2 +4 in +8 9\/16 in +60° clockwise +45° +1 in +9 11\/32 in/);
    expect(text).toMatch(/end B +5 in +14 11\/32 in/);
  });

  it('of the other side turn the other way', () => {
    const text = printed(
      sheetOf(`${parts}${feed(route)}to-fit mirror feed as other { from main.secondary.rear to rear.in }\n`),
    );
    expect(text.match(/60° (anti)?clockwise/g)).toEqual(['60° clockwise', '60° anticlockwise']);
  });
});

describe('what a line must not be made without', () => {
  it('an error at its ends stands first, and in the cutting plan', () => {
    const text = printed(sheetOf(parts + feed('nut M10x1\nlength 20 in')));
    expect(text).toMatch(/^- Do not make it yet: The nut of feed is M10x1/m);
    expect(text).toMatch(/feed +20 1\/4 in, but not yet: see the line/);
  });

  it('a route that cannot be bent is said once', () => {
    const text = printed(
      sheetOf(parts + feed('route corner 3 in, bend 90 deg, corner 1 in, bend 90 deg, corner 3 in')),
    );
    expect(text.match(/they overlap/g)).toHaveLength(1);
    expect(text).toContain('Do not cut yet');
  });
});

describe('tube of one kind', () => {
  const two = `${parts}${feed('length 30 in')}to-fit run second of line { from main.secondary.rear to rear.in length 20 in }
to-fit run steel of line { from front.left to rear.left tube 3/16 in wall 0.028 in steel length 10 in }
`;

  it('is cut together, with a piece for test flares', () => {
    const text = printed(sheetOf(two));
    const [, copperNickel = '', steel = ''] = text.split(/^Cut from /m);
    expect(copperNickel).toMatch(
      /1 +feed +30 1\/4 in\n.* 1 +second +20 1\/4 in\n.* 1 +piece for test flares +about 4 in/,
    );
    expect(steel).toMatch(
      /^3\/16 in × 0\.028 in double-wall steel[\s\S]* 1 +steel +10 1\/4 in\n.* 1 +piece for test flares/,
    );
  });

  it('is counted in lengths of the stock that is bought, and what is left is said', () => {
    const stock = 0.0254 * 36;
    const text = printed(sheetOf(two, { stock: stock as LinesOptions['stock'] }));
    expect(text).toContain('2 × 3 ft of this tube is needed');
    expect(text).toContain('No plan does with fewer.');
    expect(text).toMatch(/The longest piece left over is .* too short to make feed again if it is spoilt\./);
    expect(printed(sheetOf(two))).toContain('enough to make any of these lines again');
  });

  it('is not promised for a line longer than a coil', () => {
    const text = printed(sheetOf(parts + feed('length 30 ft')));
    expect(text).toMatch(/feed takes 360 1\/4 in, more than 25 ft/);
  });
});

describe('for machines', () => {
  const sheet = sheetOf(parts + feed('length 500 mm'));

  it('lengths are in metres', () => {
    expect(JSON.parse(writeSheet(sheet, 'json') ?? '')).toMatchObject({
      sheet: 'lines',
      data: {
        stockLengthMetres: 7.62,
        tubes: [
          {
            lines: [{ line: 'feed', certainty: 'sure', computedCutLengthMetres: { value: expect.closeTo(0.506, 9) } }],
          },
        ],
      },
    });
  });

  it('each line is a row', () => {
    const rows = (writeSheet(sheet, 'csv') ?? '').trimEnd().split('\r\n');
    expect(rows).toHaveLength(2);
    expect(rows[1]).toMatch(
      /^feed,main\.primary\.front,front\.in,.*,506,506,sure,3\/8-24,double-45,3\/8-24,double-45,$/,
    );
  });
});

it('cautions stand on it', () => {
  const { cautions } = sheetOf(parts);
  for (const word of ['maker’s manual', 'eye protection', 'asbestos', 'test flare', 'inspected']) {
    expect(cautions.join(' ')).toContain(word);
  }
});
