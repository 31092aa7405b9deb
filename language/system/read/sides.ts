/** Left and right in names: what a thing on the other side is called. */

const pairs = [
  ['left', 'right'],
  ['lh', 'rh'],
  ['fl', 'fr'],
  ['rl', 'rr'],
  ['lf', 'rf'],
  ['nearside', 'offside'],
] as const;

const otherSides: ReadonlyMap<string, string> = new Map(
  pairs.flatMap(([a, b]): [string, string][] => [
    [a, b],
    [b, a],
  ]),
);

/** `rear-left` → `rear-right`; a name without a side stays as it is. */
export function otherSideName(name: string): string {
  return name
    .split('-')
    .map((word) => otherSides.get(word) ?? word)
    .join('-');
}
