/** What can be printed for the bench. */

export { cutWords } from './cut-words.ts';
export { type LinesOptions, linesSheet } from './lines.ts';
export { type MeasureOptions, measureSheet } from './measure.ts';
export { measureItems } from './measure-items.ts';
export { partsSheet } from './parts.ts';
export type { Data, Sheet } from './sheet.ts';
export { withUnread } from './unread.ts';
export { sheetBody } from './write/html.ts';
export { type SheetFormat, writeSheet } from './write/index.ts';
