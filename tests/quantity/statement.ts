/** Takes the words of a quantity apart the way the grammar does, so that tests can be written as text. */
import { numberPattern, type StatedParts, type Term } from '../../language/quantity/index.ts';

const termPattern = new RegExp(`(${numberPattern.source})[ \\t]*([^\\s\\d±.+?-][^\\s±]*)?`, 'g');

export function termsOf(text: string): readonly Term[] {
  return [...text.matchAll(termPattern)].map(([, number = '', unit]) =>
    unit === undefined ? { number } : { number, unit },
  );
}

export function partsOf(text: string): StatedParts {
  const [, unknown, assumed, about, rest = ''] = /^(\?)?\s*(assume)?\s*(about)?\s*(.*)$/.exec(text) ?? [];
  const [first = '', tolerance] = rest.split(/±|\+\/-/);
  const [from = '', to] = first.split('..');
  return {
    unknown: unknown !== undefined,
    assumed: assumed !== undefined,
    about: about !== undefined,
    terms: termsOf(from),
    ...(tolerance === undefined ? {} : { toleranceTerms: termsOf(tolerance) }),
    ...(to === undefined ? {} : { toTerms: termsOf(to) }),
  };
}
