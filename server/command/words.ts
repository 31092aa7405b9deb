/** Sentences that several verbs say alike. */

/** Stands under everything that somebody might work by. */
export const caution =
  "An aid, no authority: local codes, the vehicle maker's manual and licensed practice come first. Brakes can kill.";

/** "1 error", "2 errors", "no errors". */
export function counted(count: number, one: string, many: string = `${one}s`): string {
  return `${count === 0 ? 'no' : count} ${count === 1 ? one : many}`;
}
