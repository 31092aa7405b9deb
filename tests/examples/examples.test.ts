/** Every example says what its lesson says: the findings it is meant to have and no others, its figures, its pictures. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { figuresOf, sayFigure } from '../../language/figures/index.ts';
import { judge } from '../../language/rules/index.ts';
import { pictureOf } from '../../language/schematic/picture-of.ts';
import { place } from '../../language/schematic/place.ts';
import { svgOf } from '../../language/schematic/svg.ts';
import type { State } from '../../language/system/presence.ts';
import type { System } from '../../language/system/system.ts';
import { inlineEngine } from '../../server/layout/inline.ts';
import { parseErrors } from '../support/read.ts';
import { expectCommitted } from './committed.ts';
import { type Example, examples, examplesFolder, readExample } from './examples.ts';

const states = ['found', 'planned'] as const;
const engine = inlineEngine();
afterAll(() => engine.dispose());

const named = (name: string): Example => {
  const example = examples.find((each) => each.name === name);
  if (example === undefined) throw new Error(`There is no example ${name}.`);
  return example;
};

/** Whether anything in it is still to be fitted or removed. */
const isMarked = ({ text }: Example): boolean => /^\s*to-(fit|remove) /m.test(text);

const findingsOf = (example: Example, state: State) => judge(readExample(example), state).findings;

/** One line each in the committed file; two of one name would hide one another. */
function table<T>(
  things: readonly T[],
  line: (thing: T) => readonly [string, string],
): Readonly<Record<string, string>> {
  const lines = things.map(line);
  expect(new Set(lines.map(([name]) => name)).size).toBe(lines.length);
  return Object.fromEntries(lines);
}

describe('the findings that each lesson is about', () => {
  const lessons: readonly [string, State, readonly string[]][] = [
    ['orchard-van/orchard-van.circuit', 'found', ['warning single-point-of-failure on circuit']],
    [
      'orchard-van/orchard-van.circuit',
      'planned',
      ['error thread-mismatch on front-feed.from', 'warning bend-tight on rear-feed'],
    ],
    ['orchard-van-finished/orchard-van.circuit', 'planned', []],
    ['coupe-disc-drum/coupe.circuit', 'planned', []],
    ['diagonal-split/hatchback.circuit', 'planned', []],
    ['hydraulic-clutch/clutch.circuit', 'planned', []],
    ['workshop-stock/stock.circuit', 'planned', []],
  ];
  test.each(lessons)('%s as %s', (name, state, expected) => {
    expect(
      findingsOf(named(name), state).map(({ severity, code, subject }) => `${severity} ${code} on ${subject}`),
    ).toEqual(expected);
  });

  test('every example is among them', () => {
    expect(new Set(lessons.map(([name]) => name))).toEqual(new Set(examples.map(({ name }) => name)));
  });

  test('where nothing is marked, the circuit is the same as found and as planned', () => {
    for (const example of examples.filter((each) => !isMarked(each))) {
      const { found, planned } = readExample(example);
      expect(found.parts).toEqual(planned.parts);
      expect(findingsOf(example, 'found')).toEqual(findingsOf(example, 'planned'));
    }
  });
});

describe('mistakes that the examples teach are found when they are made', () => {
  const breaks: readonly [string, string, string, string, string][] = [
    [
      'the rear line not joined to its valve',
      'orchard-van-finished/orchard-van.circuit',
      'from rear-residual.out',
      '',
      'unfed-wheel',
    ],
    [
      'a front line with the nut of the shelf',
      'orchard-van-finished/orchard-van.circuit',
      'front { nut M10x1 flare bubble }',
      'front',
      'thread-mismatch',
    ],
    [
      'one path through the warning valve',
      'coupe-disc-drum/coupe.circuit',
      'path rear-in, rear-out',
      'path rear-in, rear-out, front-in',
      'two-chambers',
    ],
    ['a caliper without a bleeder', 'coupe-disc-drum/coupe.circuit', 'bleeder { height 372 mm }', '', 'no-bleeder'],
    [
      'a second fluid poured in',
      'hydraulic-clutch/clutch.circuit',
      'fluid dot-4',
      'fluid dot-4\nfluid dot-5',
      'mixed-fluid',
    ],
    [
      'rigid tube to the wheel',
      'diagonal-split/hatchback.circuit',
      'to front-left-hose.from',
      'to front-left.caliper',
      'rigid-over-sprung',
    ],
  ];
  test.each(breaks)('%s', (_what, name, from, to, code) => {
    const example = named(name);
    expect(example.text.split(from).length).toBeGreaterThan(1);
    const { findings } = judge(readExample(example, example.text.replace(from, to)), 'planned');
    expect(findings.map((finding) => finding.code)).toContain(code);
  });
});

describe('the circuits reach what they are meant to', () => {
  const wheelsOf = ({ circuits }: System) =>
    circuits.map(({ label, reaches }) => [
      label,
      ...reaches
        .map(({ part }) => part.replace(/\..*/, ''))
        .filter((part, index, all) => /^(front|rear)-(left|right)$/.test(part) && all.indexOf(part) === index)
        .sort(),
    ]);
  test.each([
    [
      'orchard-van/orchard-van.circuit',
      'found',
      [['old-master', 'front-left', 'front-right', 'rear-left', 'rear-right']],
    ],
    [
      'orchard-van/orchard-van.circuit',
      'planned',
      [
        ['main primary', 'rear-left', 'rear-right'],
        ['main secondary', 'front-left', 'front-right'],
      ],
    ],
    [
      'coupe-disc-drum/coupe.circuit',
      'planned',
      [
        ['main primary', 'front-left', 'front-right'],
        ['main secondary', 'rear-left', 'rear-right'],
      ],
    ],
    [
      'diagonal-split/hatchback.circuit',
      'planned',
      [
        ['main primary', 'front-left', 'rear-right'],
        ['main secondary', 'front-right', 'rear-left'],
      ],
    ],
    ['hydraulic-clutch/clutch.circuit', 'planned', [['clutch-master']]],
  ] as const)('%s as %s', (name, state, expected) => {
    expect(wheelsOf(readExample(named(name))[state])).toEqual(expected);
  });
});

describe('what the examples show between them', () => {
  const everything = examples.map(({ text }) => text).join('\n');
  test.each([
    ['straights and bends', /\bstraight\b/],
    ['corners', /\bcorner\b/],
    ['points', /\bpoint \(/],
    ['only a length', /\n {2}length \d/],
    ['a coil', /\bcoil\b/],
    ['heights and points of ports', / at \(/],
    ['a banjo bolt', /banjo-bolt/],
    ['a bulkhead union', /bulkhead/],
    ['a switch screwed into a tee', /screw stop-switch into switch-tee/],
    ['records, readings and accepts', /accept .* because/],
  ])('%s', (_what, pattern) => {
    expect(everything).toMatch(pattern);
  });

  test('the van is a circuit of about sixty parts', () => {
    const { partById } = readExample(named('orchard-van/orchard-van.circuit')).planned;
    expect(partById.size).toBeGreaterThanOrEqual(55);
    expect(partById.size).toBeLessThanOrEqual(65);
  });
});

describe.each(examples.map((example) => [example.name, example] as const))('%s', (name, example) => {
  const { problems, toMeasure, ...systems } = readExample(example);

  test('parses and reads without a problem', () => {
    expect(parseErrors(example.text)).toEqual([]);
    expect(problems).toEqual([]);
  });

  test('has a page that says what it teaches, with its caution', () => {
    expect(readdirSync(join(examplesFolder, example.folder))).toContain('README.md');
  });

  test('its findings and figures are those committed', () => {
    const of = (state: State) => {
      const { findings, silenced } = judge(readExample(example), state);
      return {
        findings: table(findings, ({ severity, code, subject, message }) => [
          `${severity} ${code} ${subject}`,
          message,
        ]),
        accepted: table(silenced, ({ finding, accept }) => [`${finding.code} ${finding.subject}`, accept.reason]),
        figures: table(figuresOf(systems[state]).all, (figure) => [
          `${figure.subject} ${figure.id}`,
          sayFigure(figure),
        ]),
      };
    };
    const asked = table(toMeasure, ({ part, fact, assumed }) => [
      `${part}: ${fact}`,
      assumed ? 'assumed' : 'not known',
    ]);
    const text = `${JSON.stringify({ toMeasure: asked, found: of('found'), planned: of('planned') }, null, 2)}\n`;
    expectCommitted(join(import.meta.dirname, 'expected', `${example.folder}.json`), text);
  });

  const marked = isMarked(example);
  // Stock alone makes no circuit to draw.
  const drawn = systems.planned.parts.length === 0 ? [] : marked ? states : (['planned'] as const);
  test.each(drawn)('its picture as %s is the one committed', async (state) => {
    const system = systems[state];
    const { findings } = judge(readExample(example), state);
    const placed = await place(pictureOf(system, { findings, figures: figuresOf(system) }), engine);
    if (placed.kind !== 'placed') throw new Error('The layout engine gave no picture.');
    const file = name.replace(/\.circuit$/, marked ? `.${state}.svg` : '.svg');
    expectCommitted(join(examplesFolder, file), svgOf(placed.placed, { theme: 'light' }));
  });
});
