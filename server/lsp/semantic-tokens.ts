/** Colours words by what they are; names of the notation's own words stay names. */
import type { LangiumDocument } from 'langium';
import type { SemanticTokenProvider } from 'langium/lsp';
import {
  type SemanticTokens,
  SemanticTokensBuilder,
  type SemanticTokensDelta,
  type SemanticTokensOptions,
  type SemanticTokensRangeParams,
} from 'vscode-languageserver';
import { type Tone, tonesOf } from '../../language/index.ts';

const types: readonly Tone[] = [
  'keyword',
  'class',
  'variable',
  'struct',
  'namespace',
  'parameter',
  'property',
  'enumMember',
  'number',
  'string',
  'event',
];
const declaration = 1;

export class CircuitSemanticTokens implements SemanticTokenProvider {
  readonly tokenTypes: Record<string, number> = Object.fromEntries(types.map((tone, index) => [tone, index]));
  readonly tokenModifiers: Record<string, number> = { declaration };
  readonly semanticTokensOptions: SemanticTokensOptions = {
    legend: { tokenTypes: [...types], tokenModifiers: ['declaration'] },
    full: true,
    range: true,
  };

  semanticHighlight(document: LangiumDocument): SemanticTokens {
    return this.tokensIn(document, 0, Number.POSITIVE_INFINITY);
  }

  semanticHighlightRange(document: LangiumDocument, { range }: SemanticTokensRangeParams): SemanticTokens {
    const { textDocument } = document;
    return this.tokensIn(document, textDocument.offsetAt(range.start), textDocument.offsetAt(range.end));
  }

  /** The whole again: the files are small. */
  semanticHighlightDelta(document: LangiumDocument): SemanticTokens | SemanticTokensDelta {
    return this.semanticHighlight(document);
  }

  private tokensIn(document: LangiumDocument, from: number, to: number): SemanticTokens {
    const builder = new SemanticTokensBuilder();
    for (const { start, end, tone, declares } of tonesOf(document)) {
      if (end < from || start > to) continue;
      const { line, character } = document.textDocument.positionAt(start);
      builder.push(line, character, end - start, types.indexOf(tone), declares ? declaration : 0);
    }
    return builder.build();
  }
}
