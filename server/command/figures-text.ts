/** Prints figures for people: a table of what comes out, and under each how it came about. */

import {
  type Figure,
  type Input,
  type Need,
  type Part,
  type State,
  saySource,
  stateWords,
  writeResult,
} from '../../language/index.ts';
import { measuringLines } from './check-text.ts';
import { type CircuitFile, titleOf, where } from './circuit-file.ts';
import { plain } from './plain.ts';
import { aligned, filled, widthOf } from './table.ts';
import type { Paint } from './terminal.ts';
import { caution } from './words.ts';

export interface FiguresReport {
  readonly circuit: CircuitFile;
  readonly state: State;
  readonly figures: readonly Figure[];
}

export function figuresText({ circuit, state, figures }: FiguresReport, paint: Paint): string {
  const notes = footnotes((count) => `(${letterOf(count)})`);
  const sources = footnotes((count) => `[${count + 1}]`);
  const writing: FigureWriting = { widths: widthsOf(figures), notes, sources, paint };
  const sections = bySubject(figures).map(({ subject, of }) => [
    headingOf(subject, circuit, state, paint),
    ...of.flatMap((figure) => figureLines(figure, writing)),
    '',
  ]);
  const nothing = figures.length === 0 ? ['There is nothing in it that a figure could be worked out for.', ''] : [];
  const lines = [
    paint('strong', `${plain(titleOf(circuit))}, figures ${stateWords[state]}`),
    paint('quiet', plain(circuit.file)),
    '',
    ...nothing,
    ...sections.flat(),
    ...noteLines('Notes', notes.all(), paint),
    ...noteLines('Sources', sources.all(), paint),
    ...measuringLines(circuit, paint),
    paint('quiet', caution),
  ];
  return `${lines.join('\n')}\n`;
}

interface Section {
  readonly subject: string;
  readonly of: readonly Figure[];
}

function bySubject(figures: readonly Figure[]): readonly Section[] {
  const sections = new Map<string, Figure[]>();
  for (const figure of figures) {
    const section = sections.get(figure.subject);
    if (section) section.push(figure);
    else sections.set(figure.subject, [figure]);
  }
  return [...sections].map(([subject, of]) => ({ subject, of }));
}

function headingOf(subject: string, { reading, placeOf }: CircuitFile, state: State, paint: Paint): string {
  const parts: ReadonlyMap<string, Part> = reading[state].partById;
  const part = parts.get(subject);
  if (part === undefined) return paint('strong', subject === 'system' ? 'the whole system' : plain(subject));
  return `${paint('strong', plain(`${part.kind} ${part.label}`))}  ${paint('quiet', where(placeOf(part.nameOrigin)))}`;
}

interface FigureWriting {
  readonly widths: Widths;
  readonly notes: Footnotes;
  readonly sources: Footnotes;
  readonly paint: Paint;
}

/** Shared by all sections, so that the eye runs down one column. */
interface Widths {
  readonly title: number;
}

function widthsOf(figures: readonly Figure[]): Widths {
  return { title: figures.reduce((width, { title }) => Math.max(width, widthOf(title)), 0) };
}

function figureLines(figure: Figure, { widths, notes, sources, paint }: FigureWriting): readonly string[] {
  const marks = [sources.mark(saySource(figure.source)), ...figure.notes.map((note) => notes.mark(note))].join(' ');
  const value = writeResult(figure);
  const shown = figure.result.kind === 'unknown' ? paint('question', value) : value;
  const account = [
    `= ${figure.formula} ${marks}`,
    ...figure.inputs.map((input) => inputText(input, sources)),
    ...needTexts(figure),
  ];
  return [
    `  ${filled(plain(figure.title), widths.title)}  ${shown}`,
    ...account.map((text) => `      ${paint('quiet', plain(text))}`),
  ];
}

function inputText({ name, text, source }: Input, sources: Footnotes): string {
  return `${name}: ${text}${source === undefined ? '' : ` ${sources.mark(saySource(source))}`}`;
}

function needTexts({ result }: Figure): readonly string[] {
  const say = (lead: string, needs: readonly Need[]): readonly string[] =>
    needs.length === 0 ? [] : [`${lead} ${needs.map(({ name }) => name).join(', ')}`];
  return result.kind === 'unknown' ? say('waits for', result.waitsFor) : say('without', result.leftOut);
}

interface Footnotes {
  /** The mark of this text, the same one each time. */
  mark(text: string): string;
  all(): readonly (readonly [mark: string, text: string])[];
}

function footnotes(markOf: (count: number) => string): Footnotes {
  const marks = new Map<string, string>();
  return {
    mark: (text) => {
      const mark = marks.get(text) ?? markOf(marks.size);
      marks.set(text, mark);
      return mark;
    },
    all: () => [...marks].map(([text, mark]) => [mark, text] as const),
  };
}

/** a … z, then aa, ab …: as columns are lettered. */
function letterOf(count: number): string {
  const letter = String.fromCharCode(97 + (count % 26));
  return count < 26 ? letter : letterOf(Math.floor(count / 26) - 1) + letter;
}

function noteLines(title: string, notes: readonly (readonly [string, string])[], paint: Paint): readonly string[] {
  if (notes.length === 0) return [];
  const rows = notes.map(([mark, text]) => [mark, plain(text)]);
  return [paint('strong', title), ...aligned(rows, { indent: '  ', gap: ' ' }), ''];
}
