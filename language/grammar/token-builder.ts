/** Lexes numbers as quantities read them and units by their place (right after a number), and lets every word be a name. */
import type { Grammar, TokenBuilderOptions } from 'langium';
import { DefaultTokenBuilder } from 'langium';
import { numberPattern, unitWords } from '../quantity/index.ts';

type Tokens = ReturnType<DefaultTokenBuilder['buildTokens']>;
type Token = Extract<Tokens, unknown[]>[number];

const wordLike = /^[A-Za-z_\u00C0-\u024F]/;
const continuesWord = /^[\w\u00C0-\u024F³²·]|^[-/.][A-Za-z]/;

export class CircuitTokenBuilder extends DefaultTokenBuilder {
  override buildTokens(grammar: Grammar, options?: TokenBuilderOptions): Tokens {
    const built = super.buildTokens(grammar, options);
    if (!Array.isArray(built)) throw new Error('The lexer of circuit files has one mode only.');
    const unit = tokenNamed(built, 'UNIT');
    const name = tokenNamed(built, 'NAME');
    const id = tokenNamed(built, 'ID');
    for (const token of built) {
      if (token === id || (typeof token.PATTERN === 'string' && wordLike.test(token.PATTERN)))
        token.CATEGORIES = [name];
    }
    tokenNamed(built, 'NUMBER').PATTERN = numberPattern;
    makeUnitToken(unit);
    // The point comes last, so that `.028` is a number.
    const point = tokenNamed(built, '.');
    return [unit, ...built.filter((token) => token !== unit && token !== point), point];
  }
}

function makeUnitToken(unit: Token): void {
  unit.PATTERN = (text, offset, matched) => {
    const before = matched[matched.length - 1];
    if (before?.tokenType.name !== 'NUMBER') return null;
    const numberEnd = before.startOffset + before.image.length;
    if (!/^[ \t]*$/.test(text.slice(numberEnd, offset))) return null;
    const word = unitWordAt(text, offset);
    return word === undefined ? null : [word];
  };
  unit.LINE_BREAKS = false;
  unit.START_CHARS_HINT = [...new Set(unitWords.map((word) => word.charAt(0)))];
}

/** The longest unit word that starts at the offset and is not the beginning of a longer word. */
function unitWordAt(text: string, offset: number): string | undefined {
  return unitWords.find((word) => {
    const end = offset + word.length;
    return text.startsWith(word, offset) && !continuesWord.test(text.slice(end, end + 2));
  });
}

function tokenNamed(tokens: readonly Token[], name: string): Token {
  const token = tokens.find((candidate) => candidate.name === name);
  if (token === undefined) throw new Error(`The grammar has no terminal ${name}.`);
  return token;
}
