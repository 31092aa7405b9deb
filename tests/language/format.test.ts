/** Laying a text out: it never changes a word, and a text that is laid out stays as it is. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createLinewrightServices, type FormatEdit, formatEdits } from '../../language/index.ts';
import { examples } from '../examples/examples.ts';

const { Lexer } = createLinewrightServices().language.parser;
const applied = (text: string, edits: readonly FormatEdit[]): string =>
  edits.reduceRight((now, { start, end, text: space }) => now.slice(0, start) + space + now.slice(end), text);
const format = (text: string): string => applied(text, formatEdits(text, Lexer));

/** Words and comments, without the space between them. */
const wordsOf = (text: string): readonly string[] => {
  const { tokens, hidden } = Lexer.tokenize(text, { mode: 'partial' });
  return [...tokens, ...hidden].sort((a, b) => a.startOffset - b.startOffset).map(({ image }) => image);
};

describe.each(examples.map((example) => [example.name, example] as const))('%s', (_, { text }) => {
  test('is laid out as it is', () => {
    expect(format(text)).toBe(text);
  });

  test('comes back from any disorder of spaces within its lines', () => {
    const flat = text.replace(/^ +/gm, '').replace(/\n\n+/g, '\n\n\n\n');
    expect(format(flat)).toBe(text);
  });
});

test.each([
  ['spaces around punctuation', 'tee t{ports a ,b:3/8-24}', 'tee t { ports a, b: 3/8-24 }\n'],
  ['a number and its unit', 'pedal p {\ntravel 190mm\n}', 'pedal p {\n  travel 190 mm\n}\n'],
  ['an empty block', 'cylinder {\n\n}\n', 'cylinder {}\n'],
  [
    'a comment behind a fact',
    'pedal p {\n ratio 6.2    // as measured\n}\n',
    'pedal p {\n  ratio 6.2    // as measured\n}\n',
  ],
  ['a comment of its own', 'tee t {\n// above\nports a: 3/8-24\n}\n', 'tee t {\n  // above\n  ports a: 3/8-24\n}\n'],
  ['a comment inside a statement', 'pedal p { ratio /* lever */ 6.2 }', 'pedal p { ratio  /* lever */ 6.2 }\n'],
  ['a comment at the end', 'tee t {}\n\n\n// last', 'tee t {}\n\n// last\n'],
  [
    'a route over several lines',
    'run r {\nroute straight 3 in,\nbend 90 deg\n}',
    'run r {\n  route straight 3 in,\n    bend 90 deg\n}\n',
  ],
  [
    'an accept over two lines',
    'accept x on circuit 2026-03-05\nbecause "y"',
    'accept x on circuit 2026-03-05\n  because "y"\n',
  ],
  ['paths', 'run r { from a . b }', 'run r { from a.b }\n'],
  ['Windows line ends', 'tee t {\r\nports a: 3/8-24\r\n}\r\n', 'tee t {\r\n  ports a: 3/8-24\r\n}\r\n'],
  ['points', 'run r { route point ( 1 m ,2 m, 3 m ) }', 'run r { route point (1 m, 2 m, 3 m) }\n'],
  ['empty text', ' \n\n', ''],
])('%s', (_, text, expected) => {
  expect(format(text)).toBe(expected);
});

test('what cannot be read stays as it is, and so does the space around it', () => {
  expect(format('tee t {\n§§   §\n     ports a: 3/8-24\n}\n')).toBe('tee t {\n  §§   §\n  ports a: 3/8-24\n}\n');
});

test('only what lies within a stretch is touched', () => {
  const text = 'tee  t {\n    ports  a: 3/8-24\n}\n';
  const start = text.indexOf('ports');
  const edits = formatEdits(text, Lexer, { within: { start, end: start + 16 } });
  expect(applied(text, edits)).toBe('tee  t {\n    ports a: 3/8-24\n}\n');
});

/** Example text with other space between its words, other words for some of them, and cuts. */
const disordered = fc.constantFrom(...examples).chain(({ text }) => {
  const words = wordsOf(text);
  const space = fc.constantFrom('', ' ', '  ', '\n', '\n\n\n', '\t', '\r\n');
  return fc.tuple(fc.nat(words.length - 1), fc.integer({ min: 1, max: 40 })).chain(([from, count]) => {
    const some = words.slice(from, from + count);
    return fc
      .array(space, { minLength: some.length, maxLength: some.length })
      .map((spaces) =>
        some.map((word, index) => word + (word.startsWith('//') ? '\n' : '') + (spaces[index] ?? '')).join(''),
      );
  });
});

test('any text keeps its words and comments, and twice is as good as once', () => {
  fc.assert(
    fc.property(fc.oneof(disordered, fc.string({ unit: 'grapheme', maxLength: 60 })), (text) => {
      const once = format(text);
      expect(wordsOf(once)).toEqual(wordsOf(text));
      expect(format(once)).toBe(once);
    }),
    { numRuns: 500 },
  );
});
