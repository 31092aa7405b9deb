import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../language/figures/index.ts';
import { judge } from '../../language/rules/index.ts';
import { partsSheet } from '../../language/sheets/index.ts';
import type { Data, Sheet } from '../../language/sheets/sheet.ts';
import { sheetFormats, writeSheet } from '../../language/sheets/write/index.ts';
import type { State } from '../../language/system/presence.ts';
import type { FileReading } from '../../language/system/system.ts';
import { examples, readExample } from '../examples/examples.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

const sheetOf = (reading: FileReading, state: State = 'planned'): Sheet =>
  partsSheet(reading, reading[state], figuresOf(reading[state]));

/** The list of a text that has to be faultless: group, how many, what, needed by, number, bought, arrived, put right first, measure first. */
function list(text: string, state: State = 'planned'): readonly (readonly string[])[] {
  const complaints = [...parseErrors(text), ...readCircuit(text).problems.map(({ message }) => message)];
  if (complaints.length > 0) throw new Error(complaints.join('\n'));
  return sheetOf(readCircuit(text), state).list?.rows ?? [];
}

/** Group, how many and what. */
const bought = (text: string) => list(text).map((row) => row.slice(0, 3));
const inGroup = (text: string, group: string) =>
  list(text)
    .filter(([of]) => of === group)
    .map((row) => row.slice(1, 4));

const seat = '3/8-24 inverted-flare';
const stock = 'stock line { tube 3/16 in wall 0.028 in copper-nickel  nut 3/8-24  flare double-45 }\n';
const master = (records = '', mark = '') =>
  `${mark} master main single {\n  bore 3/4 in\n  port out: ${seat}\n  ${records}\n}\n`;
const brake = (cylinder: string) =>
  `drum-brake left { cylinder { bore 7/8 in  ends double  cup-gap 9/16 in  port feed: ${seat}  bleeder {}  ${cylinder} } }\n`;
const run = (records: string, mark = '') =>
  `${mark} run front of line {\n  from main.out\n  to left.cylinder.feed\n  length 600 mm\n  ${records}\n}\n`;

describe('what is bought', () => {
  it('is nothing where nothing is planned, and what is kept or done is left out', () => {
    expect(bought(stock + master() + brake('') + run(''))).toEqual([]);
    expect(
      bought(
        stock + master('2026-03-01 keep') + brake('2026-03-01 done replace') + run('2026-03-04 done fit', 'to-fit'),
      ),
    ).toEqual([]);
  });

  it('of a line are tube with spare, two nuts and clips', () => {
    const rows = bought(`fluid dot-4\n${stock}${master()}${brake('')}${run('clip every 150 mm', 'to-fit')}`);
    expect(rows.slice(0, 3)).toEqual([
      // 600 mm, 3 mm for each flare, 1 mm for the cut; 100 mm and 1 mm for test flares; a tenth more: 0.78 m, sold by 0.1 m.
      ['tube', '0.8 m', '3/16 in × 0.028 in 90/10 copper-nickel'],
      ['nuts', '2', 'tube nut, 3/8-24, for 3/16 in tube'],
      ['clips', '3', 'clip for 3/16 in tube'],
    ]);
  });

  it('of a line to be replaced is the same as of one to be fitted', () => {
    const [fit, replace] = [run('', 'to-fit'), run('2026-03-01 replace')].map((text) =>
      bought(stock + master() + brake('') + text),
    );
    expect(fit).toEqual(replace);
  });

  it('counts nuts by thread, length and gender, and a sleeve for each 37° flare', () => {
    const text = `master main single { port out: 3/8-24 37-degree }
to-fit run front {
  tube 3/16 in wall 0.028 in stainless
  from main.out { nut 3/8-24 flare single-37 }
  to left.cylinder.feed { nut M10x1 long flare bubble }
  length 600 mm
}
drum-brake left { cylinder { port feed: M10x1 bubble  bleeder {} } }
`;
    expect(inGroup(text, 'nuts')).toEqual([
      ['1', 'female tube nut, 3/8-24, for 3/16 in tube', 'front'],
      ['1', 'sleeve for a 37° flare on 3/16 in tube', 'front'],
      ['1', 'tube nut, M10x1, for 3/16 in tube, long', 'front'],
    ]);
  });

  it('asks for an oversize nut by that name: it is sound and does not come with the tube', () => {
    const text = (thread: string) => `master main single { port out: ${thread} inverted-flare }
to-fit run front { tube 3/16 in wall 0.028 in steel  nut ${thread}  flare double-45  from main.out  length 600 mm }
`;
    const nuts = (thread: string) =>
      sheetOf(readCircuit(text(thread)))
        .list?.rows.filter(([group]) => group === 'nuts')
        .map((row) => row[2]);
    expect(nuts('9/16-18')).toEqual(['oversize tube nut, 9/16-18, for 3/16 in tube']);
    expect(nuts('3/8-24')).toEqual(['tube nut, 3/8-24, for 3/16 in tube']);
  });

  it('tells the nuts of bubble and double flares apart where a thread comes with both', () => {
    const nutsOf = (nut: string, flare: string, port: string) =>
      writeSheet(
        sheetOf(
          readCircuit(`master main single { port out: ${port} }
to-fit run front { tube 4.75 mm wall 0.7 mm steel  nut ${nut}  flare ${flare}  from main.out  length 600 mm }
`),
        ),
        'text',
      );
    expect(nutsOf('M10x1', 'bubble', 'M10x1 bubble')).toContain('plain lead ahead of its thread');
    expect(nutsOf('3/8-24', 'double-45', seat)).not.toContain('plain lead');
    expect(nutsOf('3/8-24', 'double-45', seat)).toContain('before its hexagon meets the port');
  });

  it('asks for what is not known before it is ordered', () => {
    const text = `master main single { port out: ? }
to-fit run front { tube 3/16 in  nut ?  flare ?  from main.out  to left.cylinder.feed }
drum-brake left { cylinder { bore ?  port feed: ${seat}  bleeder {}  2026-03-01 replace } }
`;
    const rows = list(text);
    expect(rows.find(([group]) => group === 'tube')?.at(-1)).toBe(
      'length of front; tube wall of front; tube material of front',
    );
    expect(rows.find(([group]) => group === 'tube')?.[1]).toBe('not known');
    expect(rows.find(([, , what]) => what?.startsWith('wheel cylinder'))?.at(-1)).toBe('bore of left cylinder');
    expect(rows.find(([group]) => group === 'nuts')?.slice(1, 3)).toEqual([
      '2',
      'tube nut, thread not known, for 3/16 in tube',
    ]);
    expect(rows.find(([group]) => group === 'nuts')?.at(-1)).toBe(
      'thread of the port at end A of front; thread of the port at end B of front',
    );
  });

  it('is held back where it does not fit what it meets, and only there', () => {
    const text = `${stock}master main single { port out: M10x1 bubble }
${brake('')}${run('', 'to-fit')}`;
    const reading = readCircuit(text);
    const { findings } = judge(reading, 'planned');
    const held = partsSheet(reading, reading.planned, figuresOf(reading.planned), { findings });
    const nuts = held.list?.rows.filter(([group]) => group === 'nuts').map((row) => [row[1], row[3], row[7]]);
    expect(nuts).toEqual([
      ['1', 'front', 'the joint at main.out'],
      ['1', 'front', ''],
    ]);
    expect(writeSheet(held, 'text')).toContain('Put right first: the joint at main.out');
    // Without the error nothing is held back.
    const fitting = readCircuit(stock + master() + brake('') + run('', 'to-fit'));
    const free = partsSheet(fitting, fitting.planned, figuresOf(fitting.planned), {
      findings: judge(fitting, 'planned').findings,
    });
    expect(writeSheet(free, 'text')).not.toContain('Put right first');
  });

  it('holds back a hose with an end that does not fit, unless it is bought already', () => {
    const held = (records: string) => {
      const reading = readCircuit(`tee split { ports in, out: ${seat} }
to-fit hose front {
  length 300 mm
  from split.out: M10x1 male inverted-flare swivel
  to split.in: 3/8-24 male inverted-flare swivel
  ${records}
}
`);
      const { findings } = judge(reading, 'planned');
      const { list } = partsSheet(reading, reading.planned, figuresOf(reading.planned), { findings });
      return list?.rows.filter(([group]) => group === 'hoses').map((row) => row[7]);
    };
    expect(held('')).toEqual(['the joint at front.from']);
    expect(held('2026-03-05 fit bought 2026-03-09')).toEqual(['']);
  });

  it('is an assembly once, with all that is in it', () => {
    const text = `to-fit master main tandem {
  bore 7/8 in
  primary { port a: ${seat} plugged }
  secondary { port b: ${seat} plugged }
  reservoir { capacity 0.2 L }
  2026-03-05 fit number "TM 875" bought 2026-03-09 arrived 2026-03-14
}
`;
    expect(list(text).filter(([group]) => group !== 'fluid')).toEqual([
      [
        'hydraulic parts',
        '1',
        'tandem master cylinder, bore 7/8 in, 2 × 3/8-24 female inverted-flare seat',
        'main',
        'TM 875',
        '2026-03-09',
        '2026-03-14',
        '',
        '',
      ],
    ]);
  });

  it('is ticked when it has arrived, and not when it is only bought', () => {
    const ticks = (records: string) =>
      writeSheet(sheetOf(readCircuit(`hose front { length 300 mm  ${records} }`)), 'text')?.match(/^\[[ x]\]/gm);
    expect(ticks('2026-03-01 replace bought 2026-03-02')).toEqual(['[ ]']);
    expect(ticks('2026-03-01 replace bought 2026-03-02 arrived 2026-03-06')).toEqual(['[x]']);
  });

  it('of a wheel brake are its pieces, like ones together', () => {
    const side = (name: string) =>
      `drum-brake ${name} { linings { width 2 in  2026-03-01 replace }  drum { diameter 10 in  2026-03-01 replace } }\n`;
    expect(inGroup(side('left') + side('right'), 'brake and other parts')).toEqual([
      ['2', 'brake linings, width 2 in', 'left.linings right.linings'],
      ['2', 'drum, diameter 10 in', 'left.drum right.drum'],
    ]);
  });

  it('for a part to be resealed is a kit and no part', () => {
    expect(
      bought(stock + master() + brake('2026-03-01 reseal') + run('')).filter(([group]) => group !== 'fluid'),
    ).toEqual([['seal kits', '1', 'seal kit for wheel cylinder, bore 7/8 in, double-ended']]);
  });
});

describe('washers', () => {
  const banjo = (records: string) => `hose front {
  length 300 mm
  from: M10x1 female bubble fixed
  to bolt.eye: banjo 10 mm
  ${records}
}
banjo-bolt bolt { port shank: M10x1 male washer  port eye: banjo }
screw bolt.shank into right.caliper.feed
disc-brake right { caliper { bore 48 mm  port feed: M10x1 washer  bleeder {} } }
`;
  it('are two for a banjo that is opened, and none for one that is not', () => {
    expect(inGroup(banjo('2026-03-01 replace'), 'washers and rings')).toEqual([
      ['2', 'copper washer for M10x1 (hole 10 mm)', 'bolt'],
    ]);
    expect(inGroup(banjo(''), 'washers and rings')).toEqual([]);
  });

  it('are three for two eyes on one bolt', () => {
    const text = `hose front { length 300 mm  to bolt.lower: banjo 10 mm  2026-03-01 replace }
banjo-bolt bolt { port shank: M10x1 male washer  ports lower, upper: banjo }
`;
    expect(inGroup(text, 'washers and rings')[0]?.[0]).toBe('3');
  });

  it('and a bolt are bought for an eye that is stated straight on a port', () => {
    const text = `hose front { length 300 mm  to right.caliper.feed: banjo 10 mm  2026-03-01 replace }
disc-brake right { caliper { bore 48 mm  port feed: M10x1 washer  bleeder {} } }
`;
    expect(inGroup(text, 'washers and rings')).toEqual([['2', 'copper washer for M10x1 (hole 10 mm)', 'front']]);
    expect(inGroup(text, 'unions, tees, adapters, plugs')).toEqual([['1', 'banjo bolt, M10x1 (hole 10 mm)', 'front']]);
  });

  it('go under a hose end with a flat face, one each', () => {
    const text = `hose front { length 300 mm  to left.cylinder.feed: 3/8-24 male washer fixed  2026-03-01 replace }
drum-brake left { cylinder { port feed: 3/8-24 washer  bleeder {} } }
`;
    expect(inGroup(text, 'washers and rings')).toEqual([['1', 'copper washer for 3/8-24 (hole 3/8 in)', 'front']]);
  });
});

describe('fluid', () => {
  it('is three times what the system holds, in bottles as sold', () => {
    const text = `fluid dot-4
master main single {
  bore 20 mm
  stroke 30 mm
  port out: ${seat} plugged
  reservoir { capacity 0.2 L  feeds main }
  2026-03-01 replace
}
`;
    const rows = inGroup(text, 'fluid');
    // 200 mL and π/4 × 20² × 30 mm³ = 9.425 mL, three times, rounded up to 10 mL
    expect(rows).toEqual([['630 mL', 'DOT 4 brake fluid, in sealed bottles', 'system']]);
    expect(writeSheet(sheetOf(readCircuit(text)), 'text')).toContain('As sold: 1 × 1 L bottle, or 2 × US pint');
  });

  it('of another grade is bought for the circuit that has it', () => {
    const text = `fluid dot-4
master main single { bore 20 mm  stroke 30 mm  port out: ${seat} plugged  2026-03-01 replace }
master clutch single {
  bore 20 mm
  stroke 10 mm
  port out: ${seat} plugged
  reservoir { fluid mineral  capacity 0.1 L  feeds clutch }
}
`;
    // 100 mL and π/4 × 20² × 10 mm³ = 3.142 mL, three times, rounded up to 10 mL
    expect(inGroup(text, 'fluid')[1]).toEqual([
      '310 mL',
      'mineral oil as the vehicle’s maker names it, in sealed bottles',
      'clutch.reservoir',
    ]);
  });

  it('is not bought where no joint is opened', () => {
    expect(inGroup('fluid dot-4\ndrum-brake left { linings { 2026-03-01 replace } }\n', 'fluid')).toEqual([]);
  });

  it('is bought where a line is only taken off', () => {
    const text = `fluid dot-4\n${master()}to-remove run old { from main.out  tube 3/16 in  nut 3/8-24  flare double-45 }\n`;
    expect(inGroup(text, 'fluid')).toHaveLength(1);
  });
});

describe('the parts list of the orchard van', () => {
  const example = examples.find(({ name }) => name === 'orchard-van/orchard-van.circuit');
  if (example === undefined) throw new Error('The example is not there.');
  const sheet = sheetOf(readExample(example));
  const rows = sheet.list?.rows ?? [];

  it('has two nuts for every line that is made', () => {
    const lines = rows.filter(([group]) => group === 'tube').flatMap((row) => (row[3] ?? '').split(' '));
    const nuts = rows.filter(([group]) => group === 'nuts').reduce((sum, row) => sum + Number(row[1]), 0);
    expect(nuts).toBe(2 * lines.length);
    expect(lines.length).toBeGreaterThan(4);
  });

  it('leaves out what stays and names what has arrived', () => {
    const needed = rows.flatMap((row) => (row[3] ?? '').split(' '));
    expect(needed).not.toContain('tee-to-cross');
    expect(rows.filter((row) => row[6] !== '').map((row) => row[3])).toEqual(['main']);
  });

  it('has nothing left when the work is done', () => {
    const done = examples.find(({ name }) => name === 'orchard-van-finished/orchard-van.circuit');
    expect(done && sheetOf(readExample(done)).list?.rows).toEqual([]);
  });
});

describe('any parts list', () => {
  it('is the same for the same text', () => {
    for (const example of examples) {
      const [once, again] = [sheetOf(readExample(example)), sheetOf(readExample(example))];
      for (const format of sheetFormats) expect(writeSheet(once, format)).toBe(writeSheet(again, format));
    }
  });

  it('of a broken file shows what is known, and no number that is none', () => {
    fc.assert(
      fc.property(fc.constantFrom(...examples), fc.double({ min: 0, max: 1, noNaN: true }), (example, share) => {
        const reading = readExample(example, example.text.slice(0, Math.round(example.text.length * share)));
        for (const state of ['found', 'planned'] as const) {
          const sheet = sheetOf(reading, state);
          const text = writeSheet(sheet, 'text') ?? '';
          expect(text).toContain('Brakes can kill');
          expect(text).not.toMatch(/NaN|Infinity|undefined|\[object/);
          for (const number of numbersIn(sheet.data)) expect(Number.isFinite(number)).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });
});

function numbersIn(data: Data): readonly number[] {
  if (typeof data === 'number') return [data];
  if (data === null || typeof data !== 'object') return [];
  return Object.values(data).flatMap(numbersIn);
}
