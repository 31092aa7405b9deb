/** Which findings the file answers with `accept`, and the line that answers one. */
import type { Edit, Mend } from '../system/problem.ts';
import type { Accept } from '../system/record.ts';
import type { Finding } from './rule.ts';

/** A finding that the file answers, and the answer. */
export interface Silenced {
  readonly finding: Finding;
  readonly accept: Accept;
}

/** Whether the accept speaks of this finding: the same rule, and what the finding is about or something that holds it. */
export function speaksOf(accept: Accept, finding: Finding): boolean {
  if (accept.rule !== finding.code) return false;
  if (accept.target.kind === 'circuit') return finding.subject === 'circuit';
  const { path } = accept.target;
  return [finding.subject, ...(finding.also ?? [])].some((about) => about === path || about.startsWith(`${path}.`));
}

/** What the last line of a finding says that was accepted but must not be. */
export const notAcceptable = 'This cannot be accepted away: it has to be put right.';

export interface AcceptPlace {
  /** The day, year-month-day, as the host knows it. */
  readonly today: string;
  readonly uri: string;
  /** Offset of the end of the file's text. */
  readonly fileEnd: number;
}

/** The mend that answers a finding in the file; the writer puts the reason where the dots are. */
export function acceptMend(finding: Finding, place: AcceptPlace): Mend {
  const target = finding.subject === 'circuit' ? 'circuit' : finding.subject;
  const line = `\n\naccept ${finding.code} on ${target} ${place.today} because "…"\n`;
  const edit: Edit = { uri: place.uri, start: place.fileEnd, end: place.fileEnd, text: line };
  return { title: 'Accept this with a reason', edits: [edit] };
}
