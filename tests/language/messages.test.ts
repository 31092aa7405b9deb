/** What broken text is told: in the words of the trade, at the right place, with the edit that mends it, and never a token's name. */
import fc from 'fast-check';
import { URI } from 'langium';
import { describe, expect, test } from 'vitest';
import { createLinewrightServices, type TextProblem, textProblems } from '../../language/index.ts';
import { examples } from '../examples/examples.ts';

const { shared, language } = createLinewrightServices();
const uri = URI.parse('file:///garage/test.circuit');

const problemsOf = (text: string): readonly TextProblem[] =>
  textProblems(shared.workspace.LangiumDocumentFactory.fromString(text, uri));

const cylinder = (lines: string): string => `drum-brake left {\n  cylinder {\n${lines}\n  }\n}\n`;

interface Case {
  readonly name: string;
  readonly text: string;
  /** The words that are underlined. */
  readonly at: string;
  readonly says: readonly string[];
}

const cases: readonly Case[] = [
  {
    name: 'a fact without its value',
    text: cylinder('    bore\n    stroke 16 mm'),
    at: 'bore',
    says: ['`bore` needs a value with its unit, for instance 7/8 in, or ? if you do not know it.'],
  },
  {
    name: 'a fact of words without its word',
    text: 'drum-brake left {\n  shoes\n}\n',
    at: 'shoes',
    says: ['leading-trailing'],
  },
  {
    name: 'a kind of part that is none',
    text: 'drumbrake left on frame {\n}\n',
    at: 'drumbrake',
    says: ['no kind of part', 'drum-brake'],
  },
  {
    name: 'a sub-part that is none',
    text: 'drum-brake left {\n  cylindr {\n  }\n}\n',
    at: 'cylindr',
    says: ['cylinder'],
  },
  {
    name: 'a port without its thread',
    text: 'tee t {\n  ports a, b, c:\n}\n',
    at: '}',
    says: ['a thread such as 3/8-24'],
  },
  {
    name: 'ports without a colon',
    text: 'tee t {\n  ports a, b, c 3/8-24\n}\n',
    at: '3/8-24',
    says: ['colon', 'ports a, b: 3/8-24 inverted-flare'],
  },
  {
    name: 'a block that is not closed',
    text: 'tee t {\n  ports a, b, c: 3/8-24\n\ntee u {\n}\n',
    at: '{',
    says: ['The block of tee t is not closed', 'before “tee” on line 4'],
  },
  {
    name: 'an inner block that is not closed',
    text: 'drum-brake left {\n  cylinder {\n    bore 1 in\n}\n\ntee u {\n}\n',
    at: '{',
    says: ['The block of cylinder is not closed'],
  },
  {
    name: 'a block that is not opened',
    text: 'tee t on frame\n  ports a, b, c: 3/8-24\n}\n',
    at: 'frame',
    says: ['The block of tee t is not opened'],
  },
  { name: 'a brace that closes nothing', text: 'tee t {\n}\n}\n', at: '}', says: ['closes nothing'] },
  { name: 'a part without a name', text: 'tee on frame {\n}\n', at: 'tee', says: ['The tee needs a name'] },
  {
    name: 'a path that breaks off',
    text: 'run r {\n  from main.\n  to t.a\n}\n',
    at: '.',
    says: ['Behind “main.” the name of a port or sub-part is expected.'],
  },
  { name: 'a text without its closing quote', text: 'vehicle v "van {\n}\n', at: '"van', says: ['no closing quote'] },
  {
    name: 'a fluid that is none',
    text: 'fluid dot-6\n',
    at: 'dot-6',
    says: ['dot-3, dot-4, dot-5, dot-5.1 or mineral'],
  },
  {
    name: 'a record word that is none',
    text: 'tee t {\n  2026-03-02 fund "rust"\n}\n',
    at: '"rust"',
    says: ['“fund” is not the word of a record. Did you mean found?'],
  },
  {
    name: 'an accept without its date',
    text: 'accept dead-end on circuit because "x"\n',
    at: 'circuit',
    says: ['a date and a reason'],
  },
  {
    name: 'a use without its path',
    text: 'use line from\ntee t {\n}\n',
    at: 'tee',
    says: ['the path of a file in quotes'],
  },
  { name: 'characters that mean nothing', text: 'tee t { }\n§§§\n', at: '§§§', says: ['“§§§” has no meaning here'] },
  {
    name: 'a character that nobody sees',
    text: 'tee t { }\n\u0001\n',
    at: '\u0001',
    says: ['U+0001'],
  },
];

describe.each(cases.map((each) => [each.name, each] as const))('%s', (_, { text, at, says }) => {
  test('is told once, where it is', () => {
    const problems = problemsOf(text);
    expect(problems).toHaveLength(1);
    const [problem] = problems;
    expect(problem && text.slice(problem.origin.start, problem.origin.end)).toBe(at);
    for (const words of says) expect(problem?.message).toContain(words);
  });

  test('leaves no trace once its mend is made', () => {
    const mend = problemsOf(text)[0]?.mends?.[0];
    if (mend === undefined) return;
    const [edit] = mend.edits;
    const mended = text.slice(0, edit?.start) + (edit?.text ?? '') + text.slice(edit?.end);
    expect(problemsOf(mended)).toEqual([]);
  });
});

test('a unit that does not exist is left to the reading of quantities, and costs nothing else', () => {
  expect(problemsOf(cylinder('    bore 7/8 parsec\n    stroke 16 mm'))).toEqual([]);
});

test('two facts on one line are two facts', () => {
  expect(problemsOf(cylinder('    bore 1 in  stroke 16 mm'))).toEqual([]);
  expect(problemsOf('drum-brake left {\n  linings { friction 0.38  thickness 4 mm }\n}\n')).toEqual([]);
});

test('a value may stand on the next line', () => {
  expect(problemsOf(cylinder('    bore\n      7/8 in'))).toEqual([]);
});

test('no message names a token or speaks as a parser does', () => {
  const own = /NUMBER|UNIT|INCH_THREAD|METRIC_THREAD|STRING|EOF|\bID\b|\bNAME\b|:KW|token|[Ee]xpecting|undefined|->/;
  const broken = fc.constantFrom(...examples).chain(({ text }) => {
    const { tokens } = language.parser.Lexer.tokenize(text, { mode: 'partial' });
    return fc
      .tuple(fc.nat(tokens.length - 1), fc.constantFrom('', '{', '}', '12', 'zzz', ',', ':', '"', '?'))
      .map(([index, instead]) => {
        const token = tokens[index];
        const start = token?.startOffset ?? 0;
        return `${text.slice(0, start)}${instead}${text.slice(start + (token?.image.length ?? 0))}`;
      });
  });
  fc.assert(
    fc.property(broken, (text) => {
      for (const { message } of problemsOf(text)) {
        // What the writer wrote may be quoted; everything else is ours.
        expect(message.replace(/[“`][^”`]*[”`]/g, '')).not.toMatch(own);
        expect(message).toMatch(/[.?]$/);
      }
    }),
    { numRuns: 300 },
  );
});
