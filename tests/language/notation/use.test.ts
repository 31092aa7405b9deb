/** `use` takes in another file's stock, and parts by name; never its records, accepts and vehicle. */
import { describe, expect, test } from 'vitest';
import type { File } from '../../../language/grammar/generated/ast.ts';
import { createLinewrightServices } from '../../../language/services.ts';
import { readFile } from '../../../language/system/read/read-file.ts';
import type { UseFailure } from '../../../language/system/read/uses.ts';
import { readCircuit } from '../../support/read.ts';

const stock = `
vehicle shelf { fixed bench }
fluid dot-5
stock line { tube 3/16 in wall 0.028 in steel  nut 3/8-24  flare double-45 }
tee spare-tee { ports a, b, c: 3/8-24 inverted-flare  2026-01-02 found "in a tin" }
plug spare-plug { port thread: 3/8-24 male inverted-flare }
accept dead-end on spare-tee 2026-01-02 because "on the shelf"
`;

test('all stock, and of the parts only those that are named', () => {
  const { planned, problems, uses } = readCircuit(
    'use spare-tee from "stock.circuit"\nrun a of line { from spare-tee.a }',
    {
      'stock.circuit': stock,
    },
  );
  expect(problems).toEqual([]);
  expect(planned.parts.map(({ name }) => name)).toEqual(['spare-tee', 'a']);
  expect(planned.joints.map(({ b }) => b)).toEqual(['spare-tee.a']);
  expect(uses).toHaveLength(1);
});

test('no records, accepts, vehicle and fluid', () => {
  const { planned } = readCircuit('use spare-tee from "stock.circuit"', { 'stock.circuit': stock });
  expect(planned).toMatchObject({ vehicle: undefined, fluids: [], accepts: [] });
  expect(planned.parts[0]?.records).toEqual([]);
});

test('several parts by name', () => {
  const { planned } = readCircuit('use spare-tee, spare-plug from "./stock.circuit"', { 'stock.circuit': stock });
  expect(planned.parts.map(({ name }) => name)).toEqual(['spare-tee', 'spare-plug']);
});

test('a used part can be mirrored', () => {
  const { planned, problems } = readCircuit('use spare-tee from "stock.circuit"\nmirror spare-tee as other', {
    'stock.circuit': stock,
  });
  expect(problems).toEqual([]);
  expect(planned.parts.map(({ name }) => name)).toEqual(['spare-tee', 'other']);
});

test('stock of stock: what a used file uses is taken in too', () => {
  const { planned, problems } = readCircuit('use "hoses.circuit"\nrun a of line', {
    'hoses.circuit': 'use "stock.circuit"\nstock short-hose hose { length 10 in }',
    'stock.circuit': stock,
  });
  expect(problems).toEqual([]);
  expect(planned.parts[0]?.tube?.material).toBe('steel');
});

test('its own stock goes before that of others', () => {
  const { planned } = readCircuit('use "stock.circuit"\nstock line { tube 1/4 in copper-nickel }\nrun a of line', {
    'stock.circuit': stock,
  });
  expect(planned.parts[0]?.tube?.material).toBe('copper-nickel');
});

test('files that use each other are read once each', () => {
  const { planned, problems } = readCircuit('use "a.circuit"\nrun x of line', {
    'a.circuit': 'use "b.circuit"\nstock line { tube 3/16 in steel }',
    'b.circuit': 'use "a.circuit"\nuse "test.circuit"\nstock other { tube 1/4 in }',
    'test.circuit': 'use "a.circuit"',
  });
  expect(problems).toEqual([]);
  expect(planned.parts[0]?.tube?.material).toBe('steel');
});

test('a part that the used file does not have is answered with what is near', () => {
  const { problems } = readCircuit('use spare-te from "stock.circuit"', { 'stock.circuit': stock });
  expect(problems).toMatchObject([{ code: 'unknown-name', mends: [{ title: 'Write spare-tee' }] }]);
});

describe('a file that cannot be had is said at its path, and the rest of the file lives', () => {
  const failures: readonly [UseFailure, RegExp][] = [
    ['missing', /no file/],
    ['outside', /outside the open folder/],
    ['directory', /is a folder/],
    ['not-relative', /not a relative path/],
    ['itself', /does not use itself/],
    ['unreadable', /cannot be read/],
  ];
  test.each(failures)('%s', (failure, words) => {
    const { language } = createLinewrightServices();
    const text = 'use "other.circuit"\ntee t { ports a, b, c: 3/8-24 inverted-flare }\n';
    const file = language.parser.LangiumParser.parse<File>(text).value;
    const { problems, planned } = readFile(file, 'file:///test.circuit', { find: () => ({ failure }) });
    expect(problems).toMatchObject([{ code: 'use-failed', message: expect.stringMatching(words) }]);
    const [{ origin } = { origin: { start: 0, end: 0 } }] = problems;
    expect(text.slice(origin.start, origin.end)).toBe('"other.circuit"');
    expect(planned.parts.map(({ name }) => name)).toEqual(['t']);
  });
});
