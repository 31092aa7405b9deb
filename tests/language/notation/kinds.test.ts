/** The grammar and the table of kinds agree, and each fact of each kind can be written. */
import { describe, expect, test } from 'vitest';
import { flareForms } from '../../../language/standards/flare-forms.ts';
import { seatNames } from '../../../language/standards/seats.ts';
import { tubeMaterialNames } from '../../../language/standards/tube-materials.ts';
import {
  fluidGrades,
  fluidProperties,
  type KindRow,
  kindRow,
  kindRows,
  loadProperties,
  type PropertyRow,
  vehicleProperties,
} from '../../../language/system/kinds/index.ts';
import type { Fact } from '../../../language/system/part.ts';
import { parseErrors, readCircuit } from '../../support/read.ts';
import { keywordsOf } from './words.ts';

const sorted = (words: Iterable<string>): readonly string[] => [...words].sort();

test('every kind of the grammar has a row, and every row a keyword', () => {
  expect(sorted(kindRows.map((row) => row.keyword))).toEqual(sorted(keywordsOf('Kind')));
});

test('the variants of the rows are those of the grammar', () => {
  expect(sorted(new Set(kindRows.flatMap((row) => row.variants ?? [])))).toEqual(sorted(keywordsOf('Variant')));
});

test('closed lists of words are the same in grammar and tables', () => {
  expect(sorted(keywordsOf('FluidGrade'))).toEqual(sorted(fluidGrades));
  expect(sorted(keywordsOf('FlareForm'))).toEqual(sorted(flareForms));
  expect(sorted(keywordsOf('Material'))).toEqual(sorted(tubeMaterialNames));
  expect(keywordsOf('FeatureWord')).toEqual(expect.arrayContaining([...seatNames]));
});

test('no kind has two facts of one key', () => {
  for (const { keyword, properties } of kindRows) {
    expect([keyword, ...new Set(properties.map(({ key }) => key))]).toEqual([
      keyword,
      ...properties.map(({ key }) => key),
    ]);
  }
});

/** Each way that a row allows a fact to be written. */
function statements(row: PropertyRow): readonly string[] {
  switch (row.value) {
    case 'measure':
      return [`${row.key} ${row.example}`, `${row.key} ?`, `${row.key} ? assume ${row.example}`];
    case 'word':
      return [...row.words.map((word) => `${row.key} ${word}`), `${row.key} ?`];
    case 'date':
      return [`${row.key} ${row.example}`, `${row.key} ?`];
    case 'text':
      return [`${row.key} ${row.example}`];
  }
}

/** A file in which a part of the kind stands where it belongs, with this said of it. */
function fileWith(row: KindRow, said: string): string {
  const [home] = row.within;
  const variant = row.variants?.[0] ?? '';
  if (home === undefined || home === 'file') return `${row.keyword} it ${variant} {\n  ${said}\n}\n`;
  return fileWith(kindRow(home), `${row.keyword} it {\n  ${said}\n}`);
}

function factOf(text: string, row: KindRow, key: string): Fact | undefined {
  const { planned } = readCircuit(text);
  const part = [...planned.partById.values()].find((each) => each.kind === row.keyword && each.name === 'it');
  return part?.facts.get(key);
}

describe.each(kindRows.map((row) => [row.keyword, row] as const))('the facts of %s', (_keyword, row) => {
  test.each(row.properties.flatMap((property) => statements(property).map((said) => [said, property] as const)))(
    '%s',
    (said, property) => {
      const text = fileWith(row, said);
      expect(parseErrors(text)).toEqual([]);
      const { problems } = readCircuit(text);
      expect(problems).toEqual([]);
      const fact = factOf(text, row, property.key);
      if (property.value === 'measure' || !said.endsWith('?')) expect(fact).toBeDefined();
    },
  );

  test('a fact that it does not have is refused by name', () => {
    const { problems } = readCircuit(fileWith(row, 'colour green'));
    expect(problems.map(({ code }) => code)).toEqual(['unknown-word']);
    expect(problems[0]?.message).toContain(`“colour” is not a fact of ${row.title}`);
  });
});

describe('short forms', () => {
  test.each(kindRows.flatMap((row) => (row.short === undefined ? [] : [[row.keyword, row, row.short] as const])))(
    '%s with its size alone is a sub-part with that one fact',
    (_keyword, row, short) => {
      const [home] = row.within;
      if (home === undefined || home === 'file') throw new Error('A short form stands inside another part.');
      const text = fileWith(kindRow(home), `${row.keyword} ${short.example}`);
      expect(parseErrors(text)).toEqual([]);
      const { planned, problems } = readCircuit(text);
      expect(problems).toEqual([]);
      const part = [...planned.partById.values()].find((each) => each.kind === row.keyword);
      expect([...(part?.facts.keys() ?? [])]).toEqual([short.key]);
    },
  );
});

describe('the facts of the vehicle, of a load case and of the fluid', () => {
  test.each(vehicleProperties.flatMap(statements))('vehicle: %s', (said) => {
    const text = `vehicle it {\n  ${said}\n}\n`;
    expect(parseErrors(text)).toEqual([]);
    expect(readCircuit(text).problems).toEqual([]);
  });
  test.each(loadProperties.flatMap(statements))('load: %s', (said) => {
    const text = `vehicle it {\n  load full {\n    ${said}\n  }\n}\n`;
    expect(parseErrors(text)).toEqual([]);
    expect(readCircuit(text).problems).toEqual([]);
  });
  test.each(fluidProperties.flatMap(statements))('fluid: %s', (said) => {
    const text = `fluid dot-4 {\n  ${said}\n}\n`;
    expect(parseErrors(text)).toEqual([]);
    expect(readCircuit(text).problems).toEqual([]);
  });
});

test('a kind in the wrong place is told where it belongs', () => {
  for (const row of kindRows) {
    const inFile = readCircuit(`${row.keyword} it ${row.variants?.[0] ?? ''} { }`).problems.map(({ code }) => code);
    expect([row.keyword, ...inFile]).toEqual(row.within.includes('file') ? [row.keyword] : [row.keyword, 'misplaced']);
  }
});
