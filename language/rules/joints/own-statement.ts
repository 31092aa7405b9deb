/** Tells whether a joint is said where an edit to it changes this one joint and no other. */

import type { Joint } from '../../system/joint.ts';
import type { Origin } from '../../system/origin.ts';
import type { Part } from '../../system/part.ts';
import type { System } from '../../system/system.ts';

/** Whether the joint is said in this file, inside the declaration of the part: not in its stock and not in what it mirrors. */
export function isOwnStatement(joint: Joint, part: Part, system: System): boolean {
  const { statement } = joint;
  if (statement.uri !== system.uri || part.origin.uri !== system.uri) return false;
  if (joint.kind === 'screwed') return true;
  return holds(part.origin, statement);
}

/** The joints whose words speak for another joint as well, as those of stock and of a mirrored run do. */
export function sharingStatement(system: System): ReadonlySet<Joint> {
  const byWords = new Map<string, Joint[]>();
  for (const joint of system.joints) {
    const { uri, start, end } = joint.statement;
    const words = `${uri} ${start} ${end}`;
    const same = byWords.get(words);
    if (same) same.push(joint);
    else byWords.set(words, [joint]);
  }
  return new Set([...byWords.values()].filter((joints) => joints.length > 1).flat());
}

/** The words to underline for a fact of the part: the fact, or the part's name where stock or a mirrored part says it. */
export function placeOfFact(origin: Origin | undefined, part: Part): Origin {
  return origin !== undefined && origin.uri === part.origin.uri && holds(part.origin, origin)
    ? origin
    : part.nameOrigin;
}

const holds = (outer: Origin, inner: Origin): boolean => outer.start <= inner.start && inner.end <= outer.end;
