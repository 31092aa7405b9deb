/** The colouring grammar against the notation: every keyword and unit has a colour, and names keep theirs. */
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import oniguruma from 'vscode-oniguruma';
import textmate, { type IGrammar } from 'vscode-textmate';
import { findUnit, units, unitWords } from '../../language/quantity/index.ts';

const root = path.resolve(import.meta.dirname, '../..');
const grammarFile = path.join(root, 'extension/syntaxes/linewright.tmLanguage.json');

let grammar: IGrammar;
beforeAll(async () => {
  const wasm = readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm'));
  await oniguruma.loadWASM(wasm);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (sources) => new oniguruma.OnigScanner(sources),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => textmate.parseRawGrammar(readFileSync(grammarFile, 'utf8'), grammarFile),
  });
  const loaded = await registry.loadGrammar('source.linewright');
  if (loaded === null) throw new Error('The grammar cannot be loaded.');
  grammar = loaded;
});

/** Pieces of the text with the innermost scope of each, without the language's own ending. */
function coloured(text: string): (readonly [string, string])[] {
  let state = textmate.INITIAL;
  return text.split('\n').flatMap((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
    state = ruleStack;
    return tokens.map(({ startIndex, endIndex, scopes }) => {
      const scope = scopes.length > 1 ? (scopes.at(-1) ?? '') : '';
      return [line.slice(startIndex, endIndex).trim(), scope.replace(/\.linewright$/, '')] as const;
    });
  });
}

const scopeOf = (text: string, piece: string) => coloured(text).find(([part]) => part === piece)?.[1];

const keywords = readdirSync(path.join(root, 'language/grammar'))
  .filter((name) => name.endsWith('.langium'))
  .flatMap((name) => [
    ...readFileSync(path.join(root, 'language/grammar', name), 'utf8').matchAll(/'([A-Za-z0-9][\w.-]*)'/g),
  ])
  .map(([, word]) => word ?? '')
  .filter((word) => word !== '');

describe('words', () => {
  test.each([...new Set(keywords)])('%s has a colour', (word) => {
    expect(scopeOf(`  x ${word}`, word)).toBeTruthy();
  });

  test.each(units.flatMap(({ spellings }) => spellings))('%s is a unit after a number', (unit) => {
    expect(scopeOf(`  length 12 ${unit}`, unit)).toBe('keyword.other.unit');
    expect(scopeOf(`  length 12${unit}`, unit)).toBe('keyword.other.unit');
  });

  test.each(unitWords.filter((word) => findUnit(word) === undefined))(
    '%s is refused as a unit and looks it',
    (word) => {
      expect(scopeOf(`  length 12 ${word}`, word)).not.toBe('keyword.other.unit');
    },
  );
});

describe('numbers as a mechanic writes them', () => {
  test.each(['3/16', '1 1/8', '1-1/8', '4.75', '½', '1 ½', '1e3', '-12', '1,200'])('%s is one number', (number) => {
    expect(coloured(`  length ${number} in`)).toContainEqual([number, 'constant.numeric']);
  });

  test('a compound, a tolerance, an unknown, an assumption, an estimate', () => {
    const pieces = coloured('  length 4 ft 3 1/2 in ± 1/2 in');
    expect(pieces.filter(([, scope]) => scope === 'constant.numeric').map(([piece]) => piece)).toEqual([
      '4',
      '3 1/2',
      '1/2',
    ]);
    expect(scopeOf('  bore ? assume 1 in', '?')).toBe('keyword.operator.unknown');
    expect(scopeOf('  bore ? assume 1 in', 'assume')).toBe('keyword.other.assume');
    expect(scopeOf('  push about 90 lbf', 'about')).toBe('keyword.other.about');
  });

  test('a thread and a date are no sums', () => {
    expect(scopeOf('  nut 3/8-24', '3/8-24')).toBe('constant.other.thread');
    expect(scopeOf('  nut M10x1', 'M10x1')).toBe('constant.other.thread');
    expect(scopeOf('  2026-03-02 found "wet"', '2026-03-02')).toBe('constant.other.date');
  });
});

describe('names', () => {
  test.each([
    ['tee front-tee on frame {', 'front-tee'],
    ['run bar of line {', 'bar'],
    ['to-fit hose in {', 'in'],
    ['drum-brake rear-left on rear-axle {', 'rear-left'],
    ['vehicle pomona "Van" {', 'pomona'],
    ['stock line run {', 'line'],
  ])('%s', (text, name) => {
    expect(scopeOf(text, name)).toBe('entity.name.type.part');
  });

  test('a part that is named after a word of the notation is coloured as a name where it is meant', () => {
    expect(scopeOf('  from hose.tube', 'hose.tube')).toBe('variable.other.part');
    expect(scopeOf('  to in.out', 'in.out')).toBe('variable.other.part');
  });
});

describe('text', () => {
  test('comments and strings end where they end', () => {
    expect(coloured('bore 1 in // not 2 in').at(-1)?.[1]).toBe('comment.line.double-slash');
    expect(scopeOf('/* bore 1 in */ pedal {', 'pedal')).toBe('storage.type');
    expect(scopeOf('x "a // b" 2 in', 'in')).toBe('keyword.other.unit');
    // A string that is not closed does not swallow the next line.
    expect(scopeOf('note "open\npedal {', 'pedal')).toBe('storage.type');
  });
});
