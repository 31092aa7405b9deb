/** The tables of the language reference, written from the tables that the program uses. */
import { saySource } from '../../../language/figures/explain.ts';
import { findUnit, units } from '../../../language/quantity/index.ts';
import { refusedUnits } from '../../../language/quantity/refused-units.ts';
import { fluids } from '../../../language/standards/fluids.ts';
import { seatNames, seats } from '../../../language/standards/seats.ts';
import { threads } from '../../../language/standards/thread-table.ts';
import {
  fluidProperties,
  type KindRow,
  kindRow,
  kindRows,
  loadProperties,
  type PropertyRow,
  vehicleProperties,
} from '../../../language/system/kinds/index.ts';
import { readingDimensions } from '../../../language/system/read/read-record.ts';

type Cells = readonly string[];

function table(head: Cells, rows: readonly Cells[]): string {
  const line = (cells: Cells): string => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** Things that share a key, in the order in which each key first comes. */
function grouped<T>(things: readonly T[], keyOf: (thing: T) => string): readonly (readonly T[])[] {
  const groups = new Map<string, T[]>();
  for (const thing of things) groups.set(keyOf(thing), [...(groups.get(keyOf(thing)) ?? []), thing]);
  return [...groups.values()];
}

const code = (word: string): string => `\`${word}\``;
const codes = (words: readonly string[]): string => words.map(code).join(', ');
const spoken = (word: string): string => word.replaceAll('-', ' ');

const unitTable = (): string => {
  const dimensions = [...new Set(units.map(({ dimension }) => dimension))];
  return table(
    ['Quantity', 'Units'],
    dimensions.map((dimension) => [
      spoken(dimension),
      units
        .filter((unit) => unit.dimension === dimension)
        .map(({ spellings: [first = '', ...others] }) =>
          others.length > 0 ? `${code(first)} (${codes(others)})` : code(first),
        )
        .join(', '),
    ]),
  );
};

const refusedTable = (): string =>
  table(
    ['Not', 'But'],
    grouped(refusedUnits, ({ instead }) => instead.join(' ')).map((group) => [
      codes(group.map(({ word }) => word)),
      (group[0]?.instead ?? []).map((word) => code(findUnit(word)?.symbol ?? word)).join(' or '),
    ]),
  );

function takes(row: PropertyRow): string {
  switch (row.value) {
    case 'measure':
      return row.dimension === 'number' ? 'a number' : spoken(row.dimension);
    case 'word':
      return row.words.map(code).join(', ');
    case 'date':
      return 'a date';
    case 'text':
      return 'a text in quotes';
  }
}

const example = (row: PropertyRow): string =>
  code(row.value === 'word' ? `${row.key} ${row.words[0]}` : `${row.key} ${row.example}`);

const factRows = (rows: readonly PropertyRow[]): readonly Cells[] =>
  rows.map((row) => [code(row.key), takes(row), row.meaning, example(row)]);

const vehicleTable = (): string =>
  [
    table(['Of the vehicle', 'Takes', 'Means', 'For instance'], factRows(vehicleProperties)),
    table(['Of a load', 'Takes', 'Means', 'For instance'], factRows(loadProperties)),
    table(['Of the fluid', 'Takes', 'Means', 'For instance'], factRows(fluidProperties)),
  ].join('\n\n');

const homesOf = ({ within }: KindRow): string =>
  within.map((home) => (home === 'file' ? 'by itself' : `in ${kindRow(home).title}`)).join(', ');

function portsOf({ ports, symbol }: KindRow): string {
  if (symbol === 'line') return '`from` and `to`';
  if (ports.most === 0) return 'none';
  const count = ports.least === ports.most ? `${ports.least}` : `${ports.least} to ${ports.most}`;
  return ports.named ? `${count}, among them ${codes(ports.named)}` : count;
}

const kindTable = (): string =>
  table(
    ['Kind', 'What it is', 'Stands', 'Ports', 'Facts'],
    kindRows.map((row) => [
      [code(row.keyword), ...(row.variants ?? []).map((variant) => `${code(variant)}`)].join(' '),
      row.about,
      homesOf(row),
      portsOf(row),
      codes(row.properties.map(({ key }) => key)) || 'none',
    ]),
  );

/** Facts of one key may take other words or mean something else in another kind: one line for each that differs. */
const factTable = (): string => {
  const uses = kindRows.flatMap((kind) => kind.properties.map((row) => ({ row, kind: kind.keyword })));
  const groups = grouped(uses, ({ row }) => JSON.stringify(row));
  const rows = groups.flatMap((group) => {
    const [first] = group;
    return first ? [{ row: first.row, kinds: group.map(({ kind }) => kind) }] : [];
  });
  rows.sort((a, b) => (a.row.key < b.row.key ? -1 : a.row.key > b.row.key ? 1 : 0));
  return table(
    ['Fact', 'Takes', 'Means', 'For instance', 'Of'],
    rows.map(({ row, kinds }) => [code(row.key), takes(row), row.meaning, example(row), kinds.map(code).join(', ')]),
  );
};

const seatTable = (): string =>
  table(
    ['Seat', 'Seals', 'Source'],
    seatNames.map((name) => [code(name), seats[name].seals, saySource(seats[name].source)]),
  );

const threadTable = (): string =>
  table(
    ['Thread', 'Also written', 'Diameter and pitch', 'Source'],
    threads.map(({ name, spellings, majorDiameter, pitch, taper, source }) => {
      const millimetres = (metres: number): string => `${Number((metres * 1000).toFixed(3))} mm`;
      const size = `${millimetres(majorDiameter)}, ${millimetres(pitch)}${taper === 'tapered' ? ', tapered' : ''}`;
      return [code(name), codes(spellings), size, saySource(source)];
    }),
  );

const readingTable = (): string =>
  table(
    ['Reading', 'Takes'],
    Object.entries(readingDimensions).map(([word, dimension]) => [code(word), spoken(dimension)]),
  );

const fluidTable = (): string =>
  table(
    ['Fluid', 'Base', 'Least boiling point, dry and wet', 'Colour', 'Source'],
    Object.values(fluids).map(({ name, base, boiling, colour, source }) => {
      const celsius = (kelvin: number): string => `${Math.round(kelvin - 273.15)} °C`;
      const points = boiling ? `${celsius(boiling.dry)}, ${celsius(boiling.wet)}` : 'not set by the standard';
      return [code(name), base, points, colour, saySource(source)];
    }),
  );

/** Every generated stretch of the page, by the name in its marker. */
export const referenceTables: Readonly<Record<string, () => string>> = {
  units: unitTable,
  refused: refusedTable,
  vehicle: vehicleTable,
  readings: readingTable,
  kinds: kindTable,
  facts: factTable,
  seats: seatTable,
  threads: threadTable,
  fluids: fluidTable,
};
