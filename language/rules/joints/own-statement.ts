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

/** Whether another joint is said by the same words, as a mirror image's is. */
export function isSharedStatement(joint: Joint, system: System): boolean {
  return system.joints.some((other) => other !== joint && sameStretch(other.statement, joint.statement));
}

/** The word to underline for a joint of this part: where it is said, or the part's name where a mirror or stock says it. */
export function placeOf(joint: Joint, part: Part): Origin {
  const isHere = joint.statement.uri === part.origin.uri && holds(part.origin, joint.statement);
  return joint.kind === 'screwed' || isHere ? joint.origin : part.nameOrigin;
}

/** The same for a fact of the part. */
export function placeOfFact(origin: Origin | undefined, part: Part): Origin {
  return origin !== undefined && origin.uri === part.origin.uri && holds(part.origin, origin)
    ? origin
    : part.nameOrigin;
}

const sameStretch = (a: Origin, b: Origin): boolean => a.uri === b.uri && a.start === b.start && a.end === b.end;

const holds = (outer: Origin, inner: Origin): boolean => outer.start <= inner.start && inner.end <= outer.end;
