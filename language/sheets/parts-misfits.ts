/** Joints that the rules call wrong: what goes into them is not ordered before that is put right. */
import type { Finding } from '../rules/rule.ts';
import type { Part } from '../system/part.ts';

/** Rules about the two ends of a joint, or about a fitting that must not be there. */
const ofJoints: ReadonlySet<string> = new Set([
  'gender-mismatch',
  'thread-mismatch',
  'taper-in-straight',
  'seat-mismatch',
  'flare-mismatch',
  'seat-and-thread',
  'nut-size',
  'compression-joint',
  'hose-cannot-turn',
]);

/** Paths of the parts and ports that an error about a joint names. */
export function wrongJoints(findings: readonly Finding[]): ReadonlySet<string> {
  const errors = findings.filter(({ code, severity }) => severity === 'error' && ofJoints.has(code));
  return new Set(errors.flatMap(({ subject, also }) => [subject, ...(also ?? [])]));
}

/** "the joint at main.secondary.front": those of a part that is to be bought, in the order of its ports. */
export function wrongAt(part: Part, wrong: ReadonlySet<string>): readonly string[] {
  const ports = part.ports.filter(({ id }) => wrong.has(id)).map(({ id }) => `the joint at ${id}`);
  return ports.length === 0 && wrong.has(part.id) ? [`the choice of ${part.label}`] : ports;
}
