/** Sheet → CSV after RFC 4180, safe to open in a spreadsheet. */
import type { Sheet } from '../sheet.ts';

/** The sheet's list, head line first, lines ended by CR LF; undefined for a sheet that is no list. */
export function sheetAsCsv(sheet: Sheet): string | undefined {
  if (sheet.list === undefined) return undefined;
  return [sheet.list.columns, ...sheet.list.rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

/** A spreadsheet runs a field that begins like a formula; a leading apostrophe keeps it text. */
function field(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) && !/^-?\d/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}
