/** Splits circuit text into tokens and mends what the layout of the lines shows to be missing, each with a message. */
import type { LangiumCoreServices, LexerResult, TokenizeOptions } from 'langium';
import { DefaultLexer } from 'langium';
import { repairTokens } from './repair.ts';
import type { Vocabulary } from './vocabulary.ts';

export class CircuitLexer extends DefaultLexer {
  private readonly vocabulary: Vocabulary;

  constructor(services: LangiumCoreServices, vocabulary: Vocabulary) {
    super(services);
    this.vocabulary = vocabulary;
  }

  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const result = super.tokenize(text, options);
    // Completion wants the text as it stands, without guesses about what is missing.
    if (options?.mode === 'partial') return result;
    return { ...result, ...repairTokens({ text, lexed: result, types: this.definition, vocabulary: this.vocabulary }) };
  }
}
