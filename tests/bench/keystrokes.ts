/** Single keys typed into one word of a file; what the server says of that word tells which key it has seen. */

export interface Edit {
  readonly range: {
    readonly start: { readonly line: number; readonly character: number };
    readonly end: { readonly line: number; readonly character: number };
  };
  readonly text: string;
}

export interface Keystrokes {
  /** The text before the first key, the word already in it. */
  readonly text: string;
  /** The word as it stands after the last key. */
  readonly mark: string;
  /** The edit of one character that changes the word. */
  next(): Edit;
}

const letters = 'abcdefghijklmnopqrstuvwxyz';
const word = 'zqxv';

/** Puts a fact that no part has into the body of the first part that `anchor` ends the opening line of. */
export function keystrokesIn(text: string, anchor: string): Keystrokes {
  const at = text.indexOf(anchor);
  if (at < 0) throw new Error(`the file has no “${anchor}”`);
  const behind = at + anchor.length;
  const before = text.slice(0, behind);
  const opened = before.split('\n');
  const line = opened.length;
  const character = 2 + word.length;
  const typed = { count: 0 };
  const letter = (): string => letters[typed.count % letters.length] ?? 'a';
  return {
    text: `${before}\n  ${word}${letter()} 3 mm${text.slice(behind)}`,
    get mark() {
      return `${word}${letter()}`;
    },
    next: () => {
      typed.count += 1;
      return { range: { start: { line, character }, end: { line, character: character + 1 } }, text: letter() };
    },
  };
}
