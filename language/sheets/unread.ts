/** Says on a sheet what of the file could not be read, so that nobody takes the rest for the whole. */
import type { Block, Sheet } from './sheet.ts';

/** More of them than this are counted, not read. */
const mostLines = 20;

/** The sheet with the list in front; `complaints` say each what is wrong and where. Unchanged where there are none. */
export function withUnread(sheet: Sheet, complaints: readonly string[]): Sheet {
  if (complaints.length === 0) return sheet;
  const more = complaints.length - mostLines;
  const items = [
    ...complaints.slice(0, mostLines).map((text) => ({ text })),
    ...(more > 0 ? [{ text: `and ${more} more` }] : []),
  ];
  const block: Block = {
    kind: 'section',
    title: 'Part of the file could not be read',
    blocks: [
      {
        kind: 'paragraph',
        text: 'Only what could be read is on this sheet; parts, lengths and findings may be missing.',
      },
      { kind: 'list', items },
    ],
  };
  return { ...sheet, blocks: [block, ...sheet.blocks] };
}
