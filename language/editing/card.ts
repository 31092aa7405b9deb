/** What is told about the word under a pointer: a heading and lines, in plain words, for an editor to lay out. */

export interface CardLine {
  /** `detail` belongs to the figure above it; `finding` is something to be seen to. */
  readonly kind: 'text' | 'fact' | 'figure' | 'detail' | 'finding' | 'record';
  readonly text: string;
}

export interface Card {
  readonly title: string;
  readonly lines: readonly CardLine[];
}

export const text = (of: string): CardLine => ({ kind: 'text', text: of });
export const fact = (of: string): CardLine => ({ kind: 'fact', text: of });

/** Begins a sentence; names keep their letters. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
