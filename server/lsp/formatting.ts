/** Lays a document or a stretch of it out anew. */
import type { LangiumDocument, Lexer } from 'langium';
import type { Formatter } from 'langium/lsp';
import type {
  DocumentOnTypeFormattingOptions,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
} from 'vscode-languageserver';
import type { TextEdit } from 'vscode-languageserver-types';
import { formatEdits } from '../../language/index.ts';
import { rangeOf } from './positions.ts';

interface Stretch {
  readonly start: number;
  readonly end: number;
}

export class CircuitFormatter implements Formatter {
  private readonly lexer: () => Lexer;
  private readonly isRefused: (document: LangiumDocument) => boolean;

  constructor(lexer: () => Lexer, isRefused: (document: LangiumDocument) => boolean) {
    this.lexer = lexer;
    this.isRefused = isRefused;
  }

  formatDocument(document: LangiumDocument): TextEdit[] {
    return this.edits(document, undefined);
  }

  formatDocumentRange(document: LangiumDocument, { range }: DocumentRangeFormattingParams): TextEdit[] {
    const { textDocument } = document;
    return this.edits(document, { start: textDocument.offsetAt(range.start), end: textDocument.offsetAt(range.end) });
  }

  /** Behind a closing brace: its own line and the one before it. */
  formatDocumentOnType(document: LangiumDocument, { position }: DocumentOnTypeFormattingParams): TextEdit[] {
    const { textDocument } = document;
    const start = textDocument.offsetAt({ line: Math.max(0, position.line - 1), character: 0 });
    return this.edits(document, { start, end: textDocument.offsetAt(position) });
  }

  get formatOnTypeOptions(): DocumentOnTypeFormattingOptions {
    return { firstTriggerCharacter: '}' };
  }

  private edits(document: LangiumDocument, within: Stretch | undefined): TextEdit[] {
    if (this.isRefused(document)) return [];
    const { textDocument } = document;
    const edits = formatEdits(textDocument.getText(), this.lexer(), within === undefined ? {} : { within });
    return edits.map((edit) => ({ range: rangeOf(edit, textDocument), newText: edit.text }));
  }
}
