/** Tells from the line whether a word may begin a statement here, or whether the words before it wait for something else. */
import { properties } from '../system/kinds/index.ts';
import { expectedDimension } from './expected-dimension.ts';
import type { Wanted } from './offers.ts';

/** Words with which statements begin. */
const heads: ReadonlySet<string> = new Set([
  'vehicle',
  'fluid',
  'stock',
  'mirror',
  'screw',
  'accept',
  'use',
  'to-fit',
  'to-remove',
  'port',
  'ports',
  'from',
  'to',
  'tube',
  'nut',
  'flare',
  'route',
  'clip',
  'path',
  'feeds',
  'pushes',
  'acts-on',
  'load',
  'fixed',
  'rubber-mounted',
  'sprung',
]);

/** Facts that take a word and no number. */
const wordFacts: ReadonlySet<string> = new Set(
  Object.values(properties).flatMap((row) => (row.value === 'word' ? [row.key] : [])),
);

/** Whether what the grammar would allow is also what the line waits for: the grammar does not see the ends of lines. */
export function isAwaited(wanted: Wanted, lineBefore: string): boolean {
  if (needsUnit(lineBefore)) return wanted.kind === 'terminal' && wanted.name === 'UNIT';
  if (opensStatement(wanted)) return atStatement(lineBefore, wanted);
  if (wanted.kind === 'keyword' && ['about', 'assume', '?'].includes(wanted.word))
    return waitsForValue(lineBefore, wanted.word);
  return true;
}

/** A number at the end of the line, and what it is the value of, or the list that it stands in. */
const endsInNumber =
  /(?:([A-Za-z][\w-]*)|[,(±]|\.\.|\+\/-)\s*(?:(?:about|assume)\s+)?[-−]?\d[\d./]*(?:\s+\d+\/\d+)?\s+$/;

function needsUnit(lineBefore: string): boolean {
  const match = endsInNumber.exec(lineBefore);
  if (match === null) return false;
  const dimension = expectedDimension(match[1] === undefined ? lineBefore : `${match[1]} `);
  return dimension !== undefined && dimension !== 'number';
}

function opensStatement(wanted: Wanted): boolean {
  if (wanted.kind === 'keyword') {
    if (wanted.rule === 'Use') return wanted.word === 'use';
    const isWord = ['FeatureWord', 'Variant', 'FlareForm', 'Material', 'PropertyKey', 'FluidGrade'].includes(
      wanted.rule,
    );
    return !isWord && (wanted.rule === 'Kind' || heads.has(wanted.word));
  }
  return wanted.kind === 'terminal' && (wanted.rule === 'PropertyKey' || wanted.name === 'DATE');
}

function atStatement(lineBefore: string, wanted: Wanted): boolean {
  if (/(^|[{}])\s*$/.test(lineBefore)) return true;
  if (/\b(to-fit|to-remove)\s+$/.test(lineBefore)) return wanted.kind === 'keyword';
  if (/\bstock\s+\S+\s+$/.test(lineBefore)) return wanted.kind === 'keyword' && wanted.rule === 'Kind';
  // Statements of a block on one line stand two spaces apart, or at least behind a whole value.
  const inside = /\{([^{}]*)$/.exec(lineBefore)?.[1];
  return inside !== undefined && (/\S {2,}$/.test(inside) || /[\d"?]\s*[^\s\d{]*\s+$/.test(inside));
}

function waitsForValue(lineBefore: string, word: string): boolean {
  const last = /([\w-]+|\?)\s*$/.exec(lineBefore)?.[1] ?? '';
  if (word === 'assume') return last === '?';
  if (wordFacts.has(last)) return word === '?';
  if (/[:\s](nut|flare)\s+$|:\s*$/.test(lineBefore)) return word === '?';
  return expectedDimension(`${last} `) !== undefined;
}
