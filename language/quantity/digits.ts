/** How a number is rounded and spelt: as decimals with sensible digits, or as the fractions of a tape measure. */

export type Precision =
  /** So many significant digits, but never fewer than the whole number has. */
  | { readonly significant: number }
  | { readonly decimals: number }
  /** To the nearest 1/n of the unit, n a whole number: 32 for a tape measure. */
  | { readonly fraction: number };

/** The points a value is rounded to, counted in steps from zero, and how each is spelt. */
export interface Grid {
  /** Steps in one unit. */
  readonly perUnit: number;
  /** Spells a whole number of steps. Never "-0". */
  readonly spell: (steps: number) => string;
}

/** The grid for a finite value: `significant` looks at its size. */
export function gridFor(value: number, precision: Precision): Grid {
  if ('fraction' in precision) return fractionGrid(precision.fraction);
  if ('decimals' in precision) return decimalGrid(precision.decimals);
  const size = Math.abs(value);
  const exponent = size === 0 ? 0 : Number(size.toExponential(precision.significant - 1).split('e')[1]);
  return decimalGrid(Math.min(finestDecimals, Math.max(0, precision.significant - 1 - exponent)));
}

/** `n` thirty-seconds as a mixed number, reduced: 33/32 is `1 1/32`, 16/32 is `1/2`, 32/32 is `1`. */
function fractionGrid(denominator: number): Grid {
  return {
    perUnit: denominator,
    spell(steps) {
      const size = Math.abs(steps);
      const whole = Math.floor(size / denominator);
      const rest = size % denominator;
      const shared = greatestCommonDivisor(rest, denominator);
      const fraction = rest === 0 ? '' : `${rest / shared}/${denominator / shared}`;
      const text = [whole === 0 && fraction !== '' ? '' : String(whole), fraction]
        .filter((part) => part !== '')
        .join(' ');
      return steps < 0 ? `-${text}` : text;
    },
  };
}

/** A millionth of a millionth of a thousandth of any unit here is nothing: as small a step as there is. */
const finestDecimals = 15;

function decimalGrid(decimals: number): Grid {
  const perUnit = 10 ** decimals;
  return { perUnit, spell: (steps) => spellPlain(Number((steps / perUnit).toFixed(decimals))) };
}

/** The shortest decimal of a finite number, with an exponent only where it would be very long. Never "-0". */
export function spellPlain(value: number): string {
  const text = String(value);
  if (!text.includes('e')) return text;
  const [digits = '', exponent = '0'] = text.split('e');
  const places = Number(exponent);
  if (places < 0 && places > -16) return value.toFixed(-places + (digits.split('.')[1]?.length ?? 0));
  return `${digits}e${places}`;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
