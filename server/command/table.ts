/** Lines up columns of text. */

const letters = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** Letters as a reader counts them: a letter with its accent is one. */
export function widthOf(text: string): number {
  return [...letters.segment(text)].length;
}

/** The text with spaces behind it up to that width. */
export function filled(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - widthOf(text)));
}

export interface Columns {
  /** Put before each row. */
  readonly indent: string;
  readonly gap: string;
}

/** Rows with their columns lined up; the last column is left ragged. */
export function aligned(rows: readonly (readonly string[])[], { indent, gap }: Columns): readonly string[] {
  const widths = rows.reduce<readonly number[]>(
    (widest, row) =>
      [...row, ...widest.slice(row.length)].map((_, i) => Math.max(widest[i] ?? 0, widthOf(row[i] ?? ''))),
    [],
  );
  return rows.map((row) => {
    const cells = row.map((cell, i) => (i === row.length - 1 ? cell : filled(cell, widths[i] ?? 0)));
    return (indent + cells.join(gap)).trimEnd();
  });
}
