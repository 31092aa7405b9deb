/** Small pieces of sentences that several rules need. */
import {
  type Dimension,
  type Estimate,
  type Precision,
  type Si,
  si,
  type WrittenUnit,
  writeEstimate,
} from '../quantity/index.ts';
import { inch, mm } from '../standards/written-units.ts';
import type { Part } from '../system/part.ts';
import type { Related } from '../system/problem.ts';

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[], joiner: 'and' | 'or' = 'and'): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${joiner} ${last}`;
}

/** The first few, and how many more there are: "a, b and 7 more". */
export function listedUpTo(most: number, words: readonly string[]): string {
  if (words.length <= most) return listed(words);
  return listed([...words.slice(0, most), `${words.length - most} more`]);
}

/** "1 part", "4 parts". */
export const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** The same with the first letter in capitals. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A single value as the writer writes such values. */
export function written<D extends Dimension>(value: Si<D>, like: WrittenUnit, precision?: Precision): string {
  const estimate: Estimate<D> = { value, low: value, high: value, about: false, assumed: false };
  return writeEstimate(estimate, precision === undefined ? { like } : { like, precision });
}

/** A figure of the trade in the writer's unit, no finer than the trade means it: inches to the eighth. */
export function roundly<D extends Dimension>(value: Si<D>, like: WrittenUnit): string {
  const isTape = like.unit.symbol === 'in' && like.style !== 'decimal';
  return written(value, like, isTape ? { fraction: 8 } : { significant: 2 });
}

/** A length that must be reached, rounded up to what a tape or a rule shows: 1/16 in, or half a millimetre. */
export function atLeast(length: Si<'length'>, like: WrittenUnit): string {
  const step = like.unit.family === 'inch' ? inch(1 / 16) : mm(0.5);
  return written(si('length', Math.ceil(length / step - 1e-6) * step), like);
}

/** Places to go and look, no more than a reader will. */
export function places(parts: readonly Part[], most: number, say: (part: Part) => string): readonly Related[] {
  return parts.slice(0, most).map((part) => ({ message: say(part), origin: part.nameOrigin }));
}
