/** Reads the length of one coil or bar as it is said on the command line: `25 ft`, `7.62 m`, `20ft 6in`. */
import { readAmount, type Si, type Term } from '../../language/index.ts';
import { type Wrong, wrong } from './arguments.ts';
import { plain } from './plain.ts';

export type StockLength = { readonly kind: 'length'; readonly value: Si<'length'> } | Wrong;

const term = /\s*([\d][\d./ -]*?)\s*([a-z]+)/gy;

export function readStockLength(text: string): StockLength {
  const matches = [...text.toLowerCase().matchAll(term)];
  const whole = matches.reduce((length, [match]) => length + match.length, 0) === text.trimEnd().length;
  const terms = matches.map(([, number = '', unit = '']): Term => ({ number, unit }));
  const { amount, problems } =
    whole && terms.length > 0 ? readAmount(terms, 'length') : { amount: undefined, problems: [] };
  if (amount === undefined) {
    const why = problems[0]?.message ?? 'Write a number and its unit.';
    return wrong(`--stock-length takes a length such as “25 ft” or “7.62 m”, not “${plain(text)}”. ${why}`);
  }
  if (amount.value > 0.05 && amount.value < 1000) return { kind: 'length', value: amount.value };
  return wrong(`--stock-length takes what tube is sold in, such as “25 ft”, not “${plain(text)}”.`);
}
