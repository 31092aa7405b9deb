/** Soft washers at banjos and flat faces: how many a joint takes. */

import { published } from './source.ts';

export const washerUse = {
  words: 'new washers each time a joint is made; used ones are thrown away, copper and aluminium alike',
  source: published('public service manuals: new washers each time, one on each side of the banjo'),
} as const;

/** One on each side of every eye; eyes on one bolt share the washer between them (common practice). Zero for no eye. */
export function banjoWashers(eyes: number): number {
  return eyes > 0 ? eyes + 1 : 0;
}
