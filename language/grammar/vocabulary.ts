/** What the reading of broken text has to know about the notation: which words are kinds, which open facts, what a fact takes. */

export interface Vocabulary {
  readonly kinds: ReadonlySet<string>;
  /** What follows a word, as the rest of a sentence: `bore` → "a value with its unit, for instance 7/8 in, …". */
  readonly needs: ReadonlyMap<string, string>;
  /** Words close to a misspelt one, closest first. */
  nearest(word: string, known: Iterable<string>): readonly string[];
}

/** "a value with its unit, for instance 7/8 in, or ? if you do not know it" */
export function valueNeed(example: string): string {
  const what = /^[\d.]+$/.test(example) ? 'a number' : 'a value with its unit';
  return `${what}, for instance ${example}, or ? if you do not know it`;
}

/** What the grammar's own words take. */
export const wordNeeds: ReadonlyMap<string, string> = new Map([
  ['straight', valueNeed('140 mm')],
  ['corner', valueNeed('140 mm')],
  ['bend', valueNeed('90 deg')],
  ['turn', valueNeed('90 deg')],
  ['coil', valueNeed('2 turns diameter 40 mm')],
  ['every', valueNeed('450 mm')],
  ['wall', valueNeed('0.028 in')],
  ['tube', valueNeed('3/16 in wall 0.028 in steel')],
  ['at', valueNeed('200 mm')],
  ['after', valueNeed('30 s')],
  ['assume', 'the value to go on with, for instance ? assume 1 in'],
  ['about', 'a value with its unit, for instance about 2 in'],
  ['±', 'the limit either way, for instance ± 1/2 in'],
  ['+/-', 'the limit either way, for instance ± 1/2 in'],
  ['..', 'the upper end with its unit, for instance 60 .. 120 psi'],
  ['nut', 'a thread such as 3/8-24, or ? if you do not know it'],
  ['flare', 'double-45, bubble, single-37, single-45 or none, or ? if you do not know it'],
  ['clip', '“every” and a distance, for instance clip every 450 mm'],
  ['from', 'what it joins, for instance main.a'],
  ['to', 'what it joins, for instance front-tee.feed'],
]);
