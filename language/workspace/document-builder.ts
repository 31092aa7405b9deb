/** Builds documents together with the files that they use, and checks only those that are open. */
import type { BuildOptions, LangiumDocument, LangiumSharedCoreServices } from 'langium';
import { DefaultDocumentBuilder, DocumentState } from 'langium';
import type { UsedFiles } from './used-files.ts';

type Cancellation = Parameters<DefaultDocumentBuilder['update']>[2];

export class CircuitDocumentBuilder extends DefaultDocumentBuilder {
  private readonly usedFiles: () => UsedFiles;

  constructor(services: LangiumSharedCoreServices, usedFiles: () => UsedFiles) {
    super(services);
    this.usedFiles = usedFiles;
  }

  protected override async buildDocuments(
    documents: LangiumDocument[],
    options: BuildOptions,
    token: NonNullable<Cancellation>,
  ): Promise<void> {
    await this.runCancelable(documents, DocumentState.Parsed, token, (document) =>
      this.langiumDocumentFactory.update(document, token),
    );
    const loaded = await this.usedFiles().load(documents);
    await super.buildDocuments([...documents, ...loaded], options, token);
  }

  /** With an editor, files that are not open there are indexed and not checked. */
  protected override shouldValidate(document: LangiumDocument): boolean {
    const isOpen = this.textDocuments === undefined || this.textDocuments.get(document.uri) !== undefined;
    return isOpen && super.shouldValidate(document);
  }
}
