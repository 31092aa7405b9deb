/** What marks and records leave to be done on a part: renew it, reseal it, nothing more, or nothing ever decided. */
import type { Part } from './part.ts';
import type { PartRecord } from './record.ts';

export type WorkAhead =
  /** To be fitted or replaced; the record that says so, if one does. */
  | { readonly kind: 'renew'; readonly record: PartRecord | undefined }
  | { readonly kind: 'reseal'; readonly record: PartRecord }
  | { readonly kind: 'done'; readonly record: PartRecord }
  /** To be kept as it is, or taken off. */
  | { readonly kind: 'settled'; readonly record: PartRecord }
  | { readonly kind: 'none' };

/**
 * The last record that decides counts, by its date and then by its place in the text; a part marked to be fitted is to
 * be renewed until one does. `whole` is what is ahead for the part that holds it: a new assembly brings its parts along.
 */
export function workAhead(part: Part, whole: WorkAhead = { kind: 'none' }): WorkAhead {
  const deciding = part.records.filter(decides).sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const last = deciding.at(-1);
  if (last !== undefined) return decision(last);
  if (whole.kind === 'renew' || whole.kind === 'done') return whole;
  return part.presence === 'to-fit' ? { kind: 'renew', record: undefined } : { kind: 'none' };
}

function decision(record: PartRecord): WorkAhead {
  switch (record.verb) {
    case 'fit':
    case 'replace':
      return { kind: 'renew', record };
    case 'reseal':
      return { kind: 'reseal', record };
    case 'done':
      return { kind: 'done', record };
    default:
      return { kind: 'settled', record };
  }
}

/** What was found decides nothing yet, and cleaning a part says nothing about renewing it. */
function decides({ verb, work }: PartRecord): boolean {
  return verb === 'done' ? work !== 'clean' : verb !== 'found' && verb !== 'clean';
}
