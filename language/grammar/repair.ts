/**
 * Mends a list of tokens before it is parsed: braces and values that the lines show to be missing, units and kinds that
 * do not exist. Each mend is reported as a fault, so nothing is guessed in silence and the rest of the file stays readable.
 */
import type { Lexer, LexerResult } from 'langium';
import { bracesOf } from './repair-braces.ts';
import { headsOf } from './repair-heads.ts';
import { wordsOf } from './repair-words.ts';
import type { Vocabulary } from './vocabulary.ts';

export type Token = LexerResult['tokens'][number];
export type LexingError = LexerResult['errors'][number];

/** An error of the lexer with the edits that would mend it. */
export interface Fault extends LexingError {
  readonly mends?: readonly FaultMend[];
}

export interface FaultMend {
  readonly title: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface RepairInput {
  readonly text: string;
  readonly lexed: LexerResult;
  readonly types: Lexer['definition'];
  readonly vocabulary: Vocabulary;
}

export interface Repaired {
  readonly tokens: Token[];
  readonly errors: Fault[];
}

/** The tokens as they are to be parsed, with what was found wrong; sound text comes back as it is. */
export function repairTokens(input: RepairInput): Repaired {
  const strings = closeTexts(input);
  const heads = headsOf(strings.tokens, input);
  const words = wordsOf(heads.tokens, input);
  const braces = bracesOf(words.tokens, input);
  return { tokens: braces.tokens, errors: [...strings.errors, ...heads.errors, ...words.errors, ...braces.errors] };
}

/** A text without its closing quote ends with its line. */
function closeTexts({ text, lexed, types }: RepairInput): Repaired {
  const open = lexed.errors.filter((error) => text.charAt(error.offset) === '"');
  const stringType = types['STRING'];
  if (open.length === 0 || stringType === undefined) return { tokens: lexed.tokens, errors: lexed.errors };
  const errors = new Map(open.map((error) => [error.offset, error]));
  const tokens: Token[] = [];
  const reported: Fault[] = [];
  let until = -1;
  const begin = (error: LexingError): void => {
    // A brace at the end of the line still opens its block.
    const rest = /^[^\r\n]*?(?=\s*\{?\s*(?:[\r\n]|$))/.exec(text.slice(error.offset))?.[0] ?? '"';
    until = error.offset + rest.length;
    const [line, column] = [error.line ?? 1, error.column ?? 1];
    tokens.push({
      image: rest,
      startOffset: error.offset,
      endOffset: until - 1,
      startLine: line,
      endLine: line,
      startColumn: column,
      endColumn: column + rest.length - 1,
      tokenTypeIdx: stringType.tokenTypeIdx ?? 0,
      tokenType: stringType,
    });
    reported.push({
      ...error,
      length: rest.length,
      message: 'This text has no closing quote; a text ends on the line on which it begins.',
      mends: [{ title: 'Close the quote here', start: until, end: until, text: '"' }],
    });
  };
  const pending = [...errors.values()].sort((a, b) => a.offset - b.offset);
  for (const token of lexed.tokens) {
    while (pending[0] !== undefined && pending[0].offset < token.startOffset) {
      const error = pending.shift();
      if (error !== undefined && error.offset >= until) begin(error);
    }
    if (token.startOffset >= until) tokens.push(token);
  }
  for (const error of pending) if (error.offset >= until) begin(error);
  const others = lexed.errors.filter(
    ({ offset }) => !errors.has(offset) && !reported.some((r) => offset > r.offset && offset < r.offset + r.length),
  );
  return { tokens, errors: [...others, ...reported] };
}

/** A token that is not in the text, where the text lacks one. */
export function virtualToken(tokenType: Token['tokenType'], image: string): Token {
  return {
    image,
    startOffset: Number.NaN,
    endOffset: Number.NaN,
    startLine: Number.NaN,
    endLine: Number.NaN,
    startColumn: Number.NaN,
    endColumn: Number.NaN,
    tokenTypeIdx: tokenType.tokenTypeIdx ?? 0,
    tokenType,
    isInsertedInRecovery: true,
  };
}

/** The token as one of another type. */
export function retyped(token: Token, tokenType: Token['tokenType'] | undefined): Token {
  return tokenType === undefined ? token : { ...token, tokenType, tokenTypeIdx: tokenType.tokenTypeIdx ?? 0 };
}

export function faultAt(token: Token, message: string, mends: Fault['mends'] = []): Fault {
  const { startOffset: offset, startLine: line, startColumn: column } = token;
  return { offset, line, column, length: token.image.length, message, ...(mends.length > 0 ? { mends } : {}) };
}
