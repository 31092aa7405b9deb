/** Makes documents from texts and files; what cannot be read becomes an empty document that knows why. */
import type { AstNode, LangiumDocument, LangiumSharedCoreServices, ParseResult, ParserOptions } from 'langium';
import { DefaultLangiumDocumentFactory, type URI } from 'langium';
import { whyUnreadable } from './text-limits.ts';

type Cancellation = Parameters<DefaultLangiumDocumentFactory['update']>[1];

export class CircuitDocumentFactory extends DefaultLangiumDocumentFactory {
  /** Why the text behind a parse result was not read. */
  private readonly refusals = new WeakMap<AstNode, string>();
  /** Files that could not be fetched, until their (empty) text is parsed. */
  private readonly failed = new Map<string, string>();

  constructor(services: LangiumSharedCoreServices) {
    super(services);
  }

  /** Why this document is not read, as a sentence; undefined where it is. */
  refusal(document: LangiumDocument): string | undefined {
    return this.refusals.get(document.parseResult.value);
  }

  protected override async getInitialText(uri: URI, token: Cancellation): Promise<string> {
    return this.fetch(uri, () => super.getInitialText(uri, token));
  }

  protected override async getUpdatedText<T extends AstNode>(
    document: LangiumDocument<T>,
    textDocument: Parameters<DefaultLangiumDocumentFactory['fromTextDocument']>[0] | undefined,
    token: Cancellation,
  ): Promise<string> {
    return this.fetch(document.uri, () => super.getUpdatedText(document, textDocument, token));
  }

  private async fetch(uri: URI, read: () => Promise<string>): Promise<string> {
    this.failed.delete(uri.toString());
    try {
      return await read();
    } catch (error) {
      this.failed.set(uri.toString(), error instanceof Error ? error.message : String(error));
      return '';
    }
  }

  protected override parse<T extends AstNode>(uri: URI, text: string, options?: ParserOptions): ParseResult<T> {
    const refusal = this.refusalOf(uri, text);
    const result = super.parse<T>(uri, refusal === undefined ? text : '', options);
    if (refusal !== undefined) this.refusals.set(result.value, refusal);
    return result;
  }

  protected override async parseAsync<T extends AstNode>(
    uri: URI,
    text: string,
    token: Cancellation,
  ): Promise<ParseResult<T>> {
    const refusal = this.refusalOf(uri, text);
    const result = await super.parseAsync<T>(uri, refusal === undefined ? text : '', token);
    if (refusal !== undefined) this.refusals.set(result.value, refusal);
    return result;
  }

  private refusalOf(uri: URI, text: string): string | undefined {
    const failure = this.failed.get(uri.toString());
    return failure ?? whyUnreadable(text);
  }
}
