/** Soft washers at banjos and flat faces: how many a joint takes. */

import { commonPractice, published } from './source.ts';

export const washerUse = {
  words: 'new washers each time a joint is made; used ones are thrown away, copper and aluminium alike',
  source: published('public service manuals: new washers each time, one on each side of the banjo'),
} as const;

/** One on each side of every eye; two eyes on one bolt share the washer between them. Zero for no eye. */
export function banjoWashers(eyes: number): number {
  return eyes > 0 ? eyes + 1 : 0;
}

export const sharedWasherSource = commonPractice('eyes stacked on one bolt have a single washer between them');
