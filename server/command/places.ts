/** Offsets in a file to the line and column that a person or an editor counts, both from one. */

export interface Spot {
  readonly line: number;
  /** In UTF-16 units, as editors count. */
  readonly column: number;
}

/** Finds lines and columns in one text; offsets outside it go to its nearest end. */
export function spotsIn(text: string): (offset: number) => Spot {
  const starts = [0];
  for (const { index, 0: end } of text.matchAll(/\r\n|\r|\n/g)) starts.push(index + end.length);
  return (offset) => {
    const inside = Math.min(Math.max(0, offset), text.length);
    const line = lineAt(starts, inside);
    return { line: line + 1, column: inside - (starts[line] ?? 0) + 1 };
  };
}

/** Index of the last line that begins at or before the offset. */
function lineAt(starts: readonly number[], offset: number): number {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}
