/** The sheets that the command can print, by the word that asks for each. */

import {
  type Figures,
  type FileReading,
  type Finding,
  linesSheet,
  measureSheet,
  partsSheet,
  type Sheet,
  type Si,
  type System,
} from '../../language/index.ts';

export interface SheetAsk {
  readonly reading: FileReading;
  readonly system: System;
  readonly figures: Figures;
  readonly findings: readonly Finding[];
  readonly choice: SheetChoice;
}

/** What the command line says of the lines sheet. */
export interface SheetChoice {
  readonly which: 'to-make' | 'all';
  readonly stock: Si<'length'> | undefined;
}

export interface SheetRow {
  readonly name: string;
  readonly summary: string;
  make(ask: SheetAsk): Sheet;
}

export const sheetRows: readonly [SheetRow, ...SheetRow[]] = [
  {
    name: 'lines',
    summary: 'every line to make: what to cut, nuts and flares in the order of work, bends and marks',
    make: ({ system, figures, findings, choice: { which, stock } }) =>
      linesSheet(system, figures, { findings, which, ...(stock === undefined ? {} : { stock }) }),
  },
  {
    name: 'parts',
    summary: 'what to buy, counted and grouped, with the parts that need it',
    make: ({ reading, system, figures, findings }) => partsSheet(reading, system, figures, { findings }),
  },
  {
    name: 'measure',
    summary: 'what is not known yet, place by place, with how to measure it',
    make: ({ reading, system, figures, findings }) => measureSheet(reading, system, figures, { findings }),
  },
];
