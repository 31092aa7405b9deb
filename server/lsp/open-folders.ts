/** The folders that are open in the window: which they are now, and the circuit files in them. */
import type { FileSystemNode, URI, WorkspaceFolder } from 'langium';
import { DefaultWorkspaceManager, Deferred, DocumentState, URI as Uri, UriUtils } from 'langium';
import type { ServerSharedServices } from './services.ts';

const passedOver: ReadonlySet<string> = new Set(['node_modules', 'out', 'dist']);

/** The file that is being looked at comes first; the others follow when it is checked, or after this many milliseconds. */
const patience = 250;
/** Files that are gone when they are to be read are not asked for again and again. */
const mostTurns = 20;

export class OpenFolders extends DefaultWorkspaceManager {
  private readonly shared: ServerSharedServices;
  private readonly gathered = new Deferred<void>();

  constructor(services: ServerSharedServices) {
    super(services);
    this.shared = services;
  }

  /** Every circuit file of the folders is known: what asks about all files waits for it. */
  get complete(): Promise<void> {
    return this.gathered.promise;
  }

  /** Documents are taken in from the start; the files of the folders are read behind the first of them. */
  override async initializeWorkspace(folders: readonly WorkspaceFolder[]): Promise<void> {
    this._ready.resolve();
    void this.gather(folders).then(
      () => this.gathered.resolve(),
      (error: unknown) => {
        this.shared.lsp.Connection?.console.error(`The folders could not be searched: ${String(error)}`);
        this.gathered.resolve();
      },
    );
  }

  /** Takes folders in and out while the window is open. */
  change(added: readonly WorkspaceFolder[], removed: readonly WorkspaceFolder[]): void {
    const gone = new Set(removed.map(({ uri }) => uri));
    this.folders = [...(this.folders ?? []).filter(({ uri }) => !gone.has(uri)), ...added];
    void this.gather(added);
  }

  override shouldIncludeEntry(entry: FileSystemNode): boolean {
    if (entry.isDirectory && passedOver.has(UriUtils.basename(entry.uri))) return false;
    return super.shouldIncludeEntry(entry);
  }

  private async gather(folders: readonly WorkspaceFolder[]): Promise<void> {
    const found: URI[] = [];
    await Promise.all([this.firstChecked(), ...folders.map(({ uri }) => this.traverseFolder(Uri.parse(uri), found))]);
    const { LangiumDocuments } = this.shared.workspace;
    const missing = () => found.filter((uri) => !LangiumDocuments.hasDocument(uri));
    // A key pressed meanwhile puts an end to a build, and the next one takes up what it left.
    for (let turn = 0; turn < mostTurns && missing().length > 0; turn++) {
      await this.shared.lsp.DocumentUpdateHandler.take({ changed: missing() });
    }
  }

  /** While an open document is still being read for the first time, nothing else competes with it. */
  private firstChecked(): Promise<void> {
    return new Promise((resolve) => {
      const { DocumentBuilder, TextDocuments } = this.shared.workspace;
      const listening = DocumentBuilder.onDocumentPhase(DocumentState.Validated, () => done());
      let turns = 0;
      const timer = setInterval(() => {
        turns += 1;
        if (turns >= mostTurns || TextDocuments.all().length === 0) done();
      }, patience);
      const done = () => {
        clearInterval(timer);
        listening.dispose();
        resolve();
      };
    });
  }
}
