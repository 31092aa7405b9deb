/**
 * Lays a circuit text out anew: indentation, spaces and empty lines, never a word. It works on tokens, so it works beside
 * errors too; whatever cannot be read stays exactly as it is.
 */
import type { Lexer } from 'langium';
import { type Gap, gapBetween, type Item, type LayoutState } from './format-gaps.ts';

export interface FormatEdit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface FormatOptions {
  /** Only what lies within; the whole text without it. */
  readonly within?: { readonly start: number; readonly end: number };
}

/** The edits that lay the text out; none where a change of spaces would change what is read. */
export function formatEdits(text: string, lexer: Lexer, options: FormatOptions = {}): readonly FormatEdit[] {
  const items = itemsOf(text, lexer);
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const state: LayoutState = { depth: 0, brackets: 0, opensOnLine: false };
  const edits: FormatEdit[] = [];
  for (let index = 0; index <= items.length; index++) {
    const [before, next] = [items[index - 1], items[index]];
    const gap: Gap = { before, next, text: text.slice(before?.end ?? 0, next?.start ?? text.length) };
    const wanted = gapBetween(gap, state, newline);
    const start = before?.end ?? 0;
    const isWithin =
      options.within === undefined || (start >= options.within.start && start + gap.text.length <= options.within.end);
    if (wanted !== gap.text && isWithin && /^\s*$/.test(gap.text))
      edits.push({ start, end: start + gap.text.length, text: wanted });
  }
  return readsTheSame(text, applied(text, edits), lexer) ? edits : [];
}

/** The text with the edits done; they are in order and do not overlap. */
function applied(text: string, edits: readonly FormatEdit[]): string {
  let result = '';
  let at = 0;
  for (const { start, end, text: replacement } of edits) {
    result += text.slice(at, start) + replacement;
    at = end;
  }
  return result + text.slice(at);
}

/** Words and comments in the order of the text; stretches that cannot be read count as words. */
function itemsOf(text: string, lexer: Lexer): readonly Item[] {
  const { tokens, hidden, errors } = lexer.tokenize(text, { mode: 'partial' });
  const words = [...tokens, ...hidden].map((token): Item => {
    const end = token.startOffset + token.image.length;
    return { start: token.startOffset, end, image: token.image, type: token.tokenType.name };
  });
  const unread = errors.map(({ offset, length }): Item => {
    return { start: offset, end: offset + length, image: text.slice(offset, offset + length), type: 'unread' };
  });
  return [...words, ...unread].sort((a, b) => a.start - b.start);
}

function readsTheSame(before: string, after: string, lexer: Lexer): boolean {
  const wordsIn = (text: string): readonly string[] =>
    itemsOf(text, lexer).map(({ image, type }) => `${type} ${image}`);
  const [old, fresh] = [wordsIn(before), wordsIn(after)];
  return old.length === fresh.length && old.every((word, index) => word === fresh[index]);
}
