/** Finds the words that a misspelt word most likely meant. */

const most = 3;

/** Up to three known words close to `word`, closest first; a third of its letters may differ. */
export function nearest(word: string, known: Iterable<string>): readonly string[] {
  const limit = Math.max(1, Math.ceil(word.length / 3));
  const scored: { candidate: string; distance: number }[] = [];
  for (const candidate of new Set(known)) {
    if (Math.abs(candidate.length - word.length) > limit) continue;
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase());
    if (distance <= limit) scored.push({ candidate, distance });
  }
  scored.sort((a, b) => a.distance - b.distance || a.candidate.localeCompare(b.candidate, 'en'));
  return scored.slice(0, most).map(({ candidate }) => candidate);
}

/** Damerau's distance in its restricted form: insertions, deletions, changes and swaps of neighbours. */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last: number[] = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let best = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      row.push(best);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
