/** How wide a text comes out, since the layout must reserve room before anybody renders it. */

/**
 * Advance widths in thousandths of the font size for U+0020 to U+007E: the Helvetica metrics, which Arial and Liberation
 * Sans share. Source: Adobe core font metrics for Helvetica and Helvetica-Bold, from memory; each number was compared
 * with the `hmtx` table of Liberation Sans as Debian packages it.
 */
const regular = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
  556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
  260, 334, 584,
];
const bold = [
  278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611,
  556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389,
  280, 389, 584,
];

export interface Font {
  readonly size: number;
  readonly weight: 'regular' | 'bold';
}

/** Room for fonts that run wider than Helvetica, as the editor's own font may. */
const allowance = 1.08;

/** Width of `text` in pixels, with an allowance for wider fonts; combining marks take none, wide scripts a full square. */
export function textWidth(text: string, font: Font): number {
  const table = font.weight === 'bold' ? bold : regular;
  let thousandths = 0;
  for (const character of text) thousandths += advance(character, table);
  return (thousandths / 1000) * font.size * allowance;
}

function advance(character: string, table: readonly number[]): number {
  const code = character.codePointAt(0) ?? 0;
  if (/\p{Mark}/u.test(character) || code === 0x200d || code === 0xfe0f) return 0;
  if (code >= 0x1100 && /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u.test(character))
    return 1000;
  if (/\p{Extended_Pictographic}/u.test(character)) return 1250;
  return table[code - 0x20] ?? (/\p{Lu}/u.test(character) ? 722 : 600);
}

/** `text` cut to `width` pixels, with an ellipsis where something was left out. */
export function fitText(text: string, font: Font, width: number): string {
  if (textWidth(text, font) <= width) return text;
  const kept: string[] = [];
  let room = width - textWidth('…', font);
  for (const character of text) {
    room -= textWidth(character, font);
    if (room < 0) break;
    kept.push(character);
  }
  return `${kept.join('').trimEnd()}…`;
}
