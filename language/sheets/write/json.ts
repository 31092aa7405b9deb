/** Sheet → JSON for other programs: SI values with their units in the names, and the version of the shape. */
import type { Sheet } from '../sheet.ts';

const sheetSchema = 'linewright/sheet/1';

export function sheetAsJson(sheet: Sheet): string {
  const { id, title, subtitle, cautions, data } = sheet;
  return `${JSON.stringify({ schema: sheetSchema, sheet: id, title, subtitle, cautions, data }, undefined, 2)}\n`;
}
