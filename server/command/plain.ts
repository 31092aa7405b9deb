/** Words out of a file made safe to print: nothing in them may steer a terminal or break a line. */

/** Control characters and the marks that turn the direction of writing. */
const steering = /[\p{Cc}\u2028\u2029\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

/** Each steering character becomes its code in angle brackets; all else stays, emoji and markup included. */
export function plain(text: string): string {
  return text.replace(steering, (character) => `<${(character.codePointAt(0) ?? 0).toString(16).padStart(2, '0')}>`);
}
