/** The ways to print a sheet, by the word that asks for each. */
import type { Sheet } from '../sheet.ts';
import { sheetAsCsv } from './csv.ts';
import { sheetAsHtml } from './html.ts';
import { sheetAsJson } from './json.ts';
import { sheetAsMarkdown } from './markdown.ts';
import { sheetAsText } from './text.ts';

export const sheetFormats = ['text', 'markdown', 'html', 'json', 'csv'] as const;
export type SheetFormat = (typeof sheetFormats)[number];

/** The sheet in a format; undefined where the format does not suit it (CSV of a sheet that is no list). */
export function writeSheet(sheet: Sheet, format: SheetFormat): string | undefined {
  switch (format) {
    case 'text':
      return sheetAsText(sheet);
    case 'markdown':
      return sheetAsMarkdown(sheet);
    case 'html':
      return sheetAsHtml(sheet);
    case 'json':
      return sheetAsJson(sheet);
    case 'csv':
      return sheetAsCsv(sheet);
  }
}
