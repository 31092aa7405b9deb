/** Which runs are still to be made, which are done, and which stay as they are, as marks and records say. */
import type { Part } from '../system/part.ts';
import type { PartRecord } from '../system/record.ts';

export type Standing =
  | { readonly kind: 'to-make'; readonly why: string }
  | { readonly kind: 'done'; readonly date: string }
  | { readonly kind: 'kept' };

/** By the last record that decides; a run marked to be fitted is to be made until one says that it is done. */
export function standingOf(run: Part): Standing {
  const deciding = [...run.records].filter(decides).sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const last = deciding.at(-1);
  if (last?.verb === 'done') return { kind: 'done', date: last.date };
  if (last?.verb === 'keep') return { kind: 'kept' };
  if (last !== undefined) return { kind: 'to-make', why: `${words(last)}${last.note ? `: ${last.note}` : ''}` };
  return run.presence === 'to-fit' ? { kind: 'to-make', why: 'to be fitted' } : { kind: 'kept' };
}

/** Cleaning a line decides nothing about making it. */
function decides({ verb, work }: PartRecord): boolean {
  if (verb === 'done') return work === undefined || work === 'fit' || work === 'replace';
  return verb === 'keep' || verb === 'replace' || verb === 'fit';
}

const words = ({ verb, date }: PartRecord): string => `${verb === 'fit' ? 'to be fitted' : 'to be replaced'}, ${date}`;
