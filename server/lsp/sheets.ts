/** The sheets of each document, made when they are asked for and kept for as long as nothing that is on them changed. */
import type { LangiumDocument } from 'langium';
import {
  measureItems,
  type Sheet,
  type System,
  sheetBody,
  textProblems,
  withUnread,
  writeSheet,
} from '../../language/index.ts';
import { sheetRows } from '../command/sheet-rows.ts';
import type { SheetAnswer, SheetName, SheetParams } from '../protocol.ts';
import { viewsOf } from './picture-answer.ts';
import { locationOf } from './positions.ts';
import type { ServerSharedServices } from './services.ts';

export class Sheets {
  private readonly shared: ServerSharedServices;
  private readonly made = new WeakMap<System, Map<SheetName, Sheet>>();

  constructor(shared: ServerSharedServices) {
    this.shared = shared;
  }

  /** Undefined for a sheet that there is not. */
  of(document: LangiumDocument, { sheet: name, circuit }: Pick<SheetParams, 'sheet' | 'circuit'>): Sheet | undefined {
    const { Readings, Judgements } = this.shared.workspace;
    const reading = Readings.readingOf(document);
    const system = reading[circuit];
    const kept = this.made.get(system) ?? new Map<SheetName, Sheet>();
    this.made.set(system, kept);
    const sheet =
      kept.get(name) ??
      sheetRows
        .find((row) => row.name === name)
        ?.make({
          reading,
          system,
          figures: Judgements.figuresOf(system),
          findings: Judgements.of(reading, circuit).findings,
          choice: { which: 'to-make', stock: undefined },
        });
    if (sheet !== undefined) kept.set(name, sheet);
    return sheet;
  }

  /** How many rows of a sheet are still open, which for a list to buy from is all that has not arrived. */
  openRows(document: LangiumDocument, asked: Pick<SheetParams, 'sheet' | 'circuit'>): number {
    const reading = this.shared.workspace.Readings.readingOf(document);
    // Which figures wait for a measure is on its sheet, but takes all figures to tell.
    if (asked.sheet === 'measure') return measureItems(reading, reading[asked.circuit]).length;
    const list = this.of(document, asked)?.list;
    const arrived = list?.columns.indexOf('arrived') ?? -1;
    return list?.rows.filter((row) => arrived < 0 || row[arrived] === '').length ?? 0;
  }

  answer(document: LangiumDocument, params: SheetParams): SheetAnswer {
    const refusal = this.shared.workspace.LangiumDocumentFactory.refusal(document);
    if (refusal !== undefined) return { kind: 'none', problem: refusal };
    if (params.circuit !== 'planned' && params.circuit !== 'found')
      return { kind: 'none', problem: 'A circuit is planned or found.' };
    const bare = this.of(document, params);
    if (bare === undefined) return { kind: 'none', problem: `There is no sheet called ${params.sheet}.` };
    const sheet = withUnread(bare, this.unread(document));
    const text = params.format === 'body' ? sheetBody(sheet) : writeSheet(sheet, params.format);
    if (text === undefined) return { kind: 'none', problem: `“${sheet.title}” is no list, so it has no CSV.` };
    return {
      kind: 'made',
      text,
      title: sheet.title,
      views: viewsOf(this.shared.workspace.Readings.readingOf(document)),
    };
  }

  /** What could not be read, each with its place. */
  private unread(document: LangiumDocument): readonly string[] {
    const { problems } = this.shared.workspace.Readings.readingOf(document);
    return [...textProblems(document), ...problems].map(({ origin, message }) => {
      const place = locationOf(origin, this.shared);
      if (place === undefined) return message;
      const file = place.uri === document.uri.toString() ? '' : `${place.uri.slice(place.uri.lastIndexOf('/') + 1)}, `;
      return `${file}line ${place.range.start.line + 1}: ${message}`;
    });
  }
}
