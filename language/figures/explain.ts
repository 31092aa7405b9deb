/** Says a figure in plain words: how much, how it came about, on whose word, what it waits for. */
import { notKnown } from '../quantity/index.ts';
import type { Source } from '../standards/source.ts';
import type { Origin } from '../system/origin.ts';
import type { Figure, Need } from './figure.ts';
import { writeResult } from './write-result.ts';

/** One line for hover, command and sheets; `origin` is where in the file it can be looked up. */
export interface ExplainedLine {
  readonly kind: 'figure' | 'formula' | 'input' | 'waits-for' | 'left-out' | 'source' | 'note';
  readonly text: string;
  readonly origin?: Origin;
}

/** More names than this are counted, not read. */
const mostNames = 12;

/** The figure in one line: "cut length 1379 mm", "fluid in it: not known; it waits for wall of tube main-to-tee". */
export function sayFigure(figure: Figure): string {
  const { title, result } = figure;
  if (result.kind === 'known' && writeResult(figure) !== notKnown) return `${title} ${writeResult(figure)}`;
  const needs = result.kind === 'unknown' ? result.waitsFor : [];
  return `${title}: not known${needs.length > 0 ? `; it waits for ${listed(needs)}` : ''}`;
}

/** The whole account of a figure, the figure itself first. */
export function explainFigure(figure: Figure): readonly ExplainedLine[] {
  const { result } = figure;
  const needs = result.kind === 'unknown' ? result.waitsFor : result.leftOut;
  const kind = result.kind === 'unknown' ? 'waits-for' : 'left-out';
  const lead = kind === 'waits-for' ? 'Waits for' : 'Without';
  return [
    { kind: 'figure', text: sayFigure(figure) },
    { kind: 'formula', text: `= ${figure.formula}` },
    ...figure.inputs.map(({ name, text, origin, source }): ExplainedLine => {
      const from = source === undefined ? '' : ` (${saySource(source)})`;
      return { kind: 'input', text: `${name}: ${text}${from}`, ...(origin ? { origin } : {}) };
    }),
    ...needs
      .slice(0, mostNames)
      .map(({ name, origin }): ExplainedLine => ({ kind, text: `${lead} ${name}`, ...(origin ? { origin } : {}) })),
    ...(needs.length > mostNames
      ? [{ kind, text: `${lead} ${needs.length - mostNames} more that are not known` } as const]
      : []),
    { kind: 'source', text: saySource(figure.source) },
    ...figure.notes.map((text): ExplainedLine => ({ kind: 'note', text })),
  ];
}

/** "common practice: …", "from memory: …"; a published text speaks for itself. */
export function saySource({ kind, text }: Source): string {
  switch (kind) {
    case 'published':
      return text;
    case 'from-memory':
      return `from memory: ${text}`;
    case 'common-practice':
      return `common practice: ${text}`;
  }
}

function listed(needs: readonly Need[]): string {
  const names = needs.slice(0, mostNames).map(({ name }) => name);
  const more = needs.length - names.length;
  return more > 0 ? `${names.join(', ')} and ${more} more` : names.join(', ');
}
