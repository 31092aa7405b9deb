/** Builds documents together with the files that they use, and checks only those that are open. */
import type { BuildOptions, LangiumDocument, LangiumSharedCoreServices, URI } from 'langium';
import { DefaultDocumentBuilder, DocumentState, isOperationCancelled, OperationCancelled } from 'langium';
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

  /**
   * Puts aside what was built of a document whose text has changed, before the change comes to be built: whoever asks
   * in between waits for the new text.
   */
  announceChange(uri: URI): void {
    const document = this.langiumDocuments.getDocument(uri);
    if (document !== undefined) document.state = DocumentState.Changed;
  }

  /** The next build checks every document again, where what they are checked for has changed and they have not. */
  forgetChecks(): void {
    for (const document of this.langiumDocuments.all) {
      if (document.state === DocumentState.Validated) this.resetToState(document, DocumentState.IndexedReferences);
    }
  }

  /** An open document is always on its way to any state, even if its building has not begun. */
  protected override awaitDocumentState(
    state: DocumentState,
    uri: URI,
    token: NonNullable<Cancellation>,
  ): Promise<URI> {
    const document = this.langiumDocuments.getDocument(uri);
    const isOpen = this.textDocuments?.get(uri) !== undefined;
    if (!isOpen || (document !== undefined && document.state >= state) || token.isCancellationRequested) {
      return super.awaitDocumentState(state, uri, token);
    }
    return new Promise((resolve, reject) => {
      const reached = this.onDocumentPhase(state, (built) => {
        if (built.uri.toString() !== uri.toString()) return;
        reached.dispose();
        cancelled.dispose();
        resolve(uri);
      });
      const cancelled = token.onCancellationRequested(() => {
        reached.dispose();
        cancelled.dispose();
        reject(OperationCancelled);
      });
    });
  }

  /** What is reached is told, even if a newer change has put an end to the build in the same moment. */
  protected override async notifyDocumentPhase(
    document: LangiumDocument,
    state: DocumentState,
    token: NonNullable<Cancellation>,
  ): Promise<void> {
    for (const listener of [...this.documentPhaseListeners.get(state)]) {
      try {
        await listener(document, token);
      } catch (error) {
        if (!isOperationCancelled(error)) throw error;
      }
    }
  }

  /** With an editor, files that are not open there are indexed and not checked. */
  protected override shouldValidate(document: LangiumDocument): boolean {
    const isOpen = this.textDocuments === undefined || this.textDocuments.get(document.uri) !== undefined;
    return isOpen && super.shouldValidate(document);
  }
}
