/** Says where a number or a rule in these tables comes from, so that every figure built on it can say so too. */

export type SourceKind = 'published' | 'from-memory' | 'common-practice';

export interface Source {
  readonly kind: SourceKind;
  readonly text: string;
}

/** Read in a published text that `text` names. */
export const published = (text: string): Source => ({ kind: 'published', text });

/** Known to stand in the published text that `text` names, written down without that text at hand. */
export const fromMemory = (text: string): Source => ({ kind: 'from-memory', text });

/** What the trade does; no standard behind it. */
export const commonPractice = (text: string): Source => ({ kind: 'common-practice', text });
