/** Where a misspelt name leaves it open what a part is joined to: it is spoken of already, and no other rule need guess. */
import type { Part } from '../system/part.ts';
import type { FileReading } from '../system/system.ts';

/** Whether the part's own declaration names something that is not there. */
export function namesSomethingMissing({ origin: whole }: Part, { problems }: FileReading): boolean {
  return problems.some(
    ({ code, origin }) =>
      code === 'unknown-name' && origin.uri === whole.uri && whole.start <= origin.start && origin.end <= whole.end,
  );
}

/** Whether a misspelt name most likely means this part, something in it, or the part that holds it. */
export function isMeantByMisspelling(part: Part, { problems }: FileReading): boolean {
  const words = part.id.split('.');
  return problems.some(
    ({ code, mends }) =>
      code === 'unknown-name' && (mends ?? []).some(({ edits }) => edits.some(({ text }) => words.includes(text))),
  );
}
