/** Numbers as a mechanic writes them: `3/16`, `1 1/8`, `1-1/8`, `1½`, `0.028`, `1e3`. */

export interface NumberProblem {
  readonly code:
    | 'not-a-number'
    | 'zero-denominator'
    | 'too-large'
    | 'odd-fraction'
    | 'grouped-number'
    | 'decimal-comma';
  readonly message: string;
  /** The number as it should be written. */
  readonly fix?: string;
}

export interface ReadNumber {
  /** NaN where the text is no number at all; with a problem, the likeliest meaning, not to be computed with. */
  readonly value: number;
  readonly problem?: NumberProblem;
}

const vulgarFractions: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['½', [1, 2]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅐', [1, 7]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
  ['⅑', [1, 9]],
  ['⅒', [1, 10]],
]);

const sign = '[-\\u2212]?';
const space = '[ \\t\\u00a0\\u2009\\u202f]';
const vulgar = `[${[...vulgarFractions.keys()].join('')}]`;
// What follows keeps `3/8-24`, a thread, from being taken for a fraction with something behind it.
const slashed = '\\d+[/\\u2044]\\d+(?!\\d|-\\d)';
const mixed = `\\d+(?:(?:${space}+|-)${slashed}|(?:${space}+|-)?${vulgar})`;
const decimal = '(?:\\d+(?:,\\d+)*(?:\\.\\d+)?|\\.\\d+)(?:[eE][-+]?\\d+)?';

/**
 * Matches one number, mixed ones with their inner space or hyphen included, on one line. For the lexer, in which the
 * terminals for dates and threads come first. Comma forms match so that they can be told off by name.
 */
export const numberPattern: RegExp = new RegExp(`${sign}(?:${mixed}|${slashed}|${vulgar}|${decimal})`);

const whole = new RegExp(`^(?:${numberPattern.source})$`);
const parts = new RegExp(`^(?:(\\d+)(?:${space}+|-)?)??(?:(\\d+)[/\\u2044](\\d+)|(${vulgar}))$`);

/** Reads one number. Never throws; commas never group thousands nor stand for the decimal point. */
export function readNumber(text: string): ReadNumber {
  if (!whole.test(text)) {
    return { value: Number.NaN, problem: { code: 'not-a-number', message: `${quoted(text)} is not a number.` } };
  }
  const negative = /^[-\u2212]/.test(text);
  const unsigned = negative ? text.slice(1) : text;
  const read = readFraction(unsigned) ?? readCommas(unsigned) ?? readDecimal(unsigned);
  if (!negative) return read;
  const value = 0 - read.value;
  if (!read.problem) return { value };
  const { fix } = read.problem;
  return { value, problem: fix === undefined ? read.problem : { ...read.problem, fix: `-${fix}` } };
}

function readDecimal(text: string): ReadNumber {
  const value = Number(text);
  if (Number.isFinite(value)) return { value };
  return { value: Number.NaN, problem: { code: 'too-large', message: `${text} is too large a number.` } };
}

function readFraction(text: string): ReadNumber | undefined {
  const match = parts.exec(text);
  if (!match) return undefined;
  const [, wholeText, numeratorText, denominatorText, character] = match;
  const fraction = character === undefined ? undefined : vulgarFractions.get(character);
  const numerator = fraction?.[0] ?? Number(numeratorText);
  const denominator = fraction?.[1] ?? Number(denominatorText);
  if (denominator === 0) {
    const message = `${text} divides by zero: the lower number of a fraction cannot be 0.`;
    return { value: Number.NaN, problem: { code: 'zero-denominator', message } };
  }
  const units = wholeText === undefined ? 0 : Number(wholeText);
  const value = units + numerator / denominator;
  if (!Number.isFinite(value)) {
    return { value: Number.NaN, problem: { code: 'too-large', message: `${text} is too large a number.` } };
  }
  if (wholeText === undefined || numerator < denominator) return { value };
  const rest = numerator % denominator;
  const fix = `${units + Math.floor(numerator / denominator)}${rest === 0 ? '' : ` ${rest}/${denominator}`}`;
  const message = `The fraction in ${text} is not less than one. If it is meant so, write ${fix}.`;
  return { value, problem: { code: 'odd-fraction', message, fix } };
}

function readCommas(text: string): ReadNumber | undefined {
  if (!text.includes(',')) return undefined;
  const ungrouped = text.replaceAll(',', '');
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\D|$)/.test(text)) {
    const point = text.indexOf(',') === text.lastIndexOf(',') && !text.includes('.');
    const other = point ? ` or, if the comma is a decimal point, ${text.replace(',', '.')}` : '';
    const message = `Commas do not group thousands here: ${text} could be read two ways. Write ${ungrouped}${other}.`;
    return { ...readDecimal(ungrouped), problem: { code: 'grouped-number', message, fix: ungrouped } };
  }
  if (/^\d+,\d+(?:[eE]|$)/.test(text)) {
    const fix = text.replace(',', '.');
    const message = `The decimal point is a point: write ${fix} for ${text}.`;
    return { ...readDecimal(fix), problem: { code: 'decimal-comma', message, fix } };
  }
  const message = `${text} is not one number: commas neither group thousands nor stand for the decimal point.`;
  return { value: Number.NaN, problem: { code: 'not-a-number', message } };
}

function quoted(text: string): string {
  return text.trim() === '' ? 'Nothing' : `"${text}"`;
}
