/** One line of text may speak for many parts, by stock or mirror: what is wrong with it is said once. */
import type { Remark } from './rule.ts';
import { listedUpTo } from './wording.ts';

/** Remarks about the same stretch of text become the first of them, which names the others. */
export function oncePerPlace(remarks: readonly Remark[]): readonly Remark[] {
  const byPlace = new Map<string, Remark[]>();
  for (const remark of remarks) {
    const { uri, start, end } = remark.origin;
    const place = `${uri} ${start} ${end}`;
    const same = byPlace.get(place);
    if (same) same.push(remark);
    else byPlace.set(place, [remark]);
  }
  return [...byPlace.values()].flatMap(merged);
}

function merged([first, ...others]: readonly Remark[]): readonly Remark[] {
  if (first === undefined) return [];
  // Two things wrong with one part at one place are two remarks.
  const twins = others.filter(({ subject }) => subject !== first.subject);
  const rest = others.filter((other) => other.subject === first.subject && other.message !== first.message);
  if (twins.length === 0) return [first, ...rest];
  const subjects = [...new Set(twins.map(({ subject }) => subject))];
  const remark = {
    ...first,
    message: `${first.message} The same line speaks for ${listedUpTo(4, subjects)}.`,
    also: [...(first.also ?? []), ...subjects],
  };
  return [remark, ...rest];
}
