/** The life of documents: opened, typed into, closed unsaved, changed on disk; and which edits are taken together. */
import type { URI } from 'langium';
import { delayNextTick, URI as Uri, UriUtils } from 'langium';
import { DefaultDocumentUpdateHandler } from 'langium/lsp';
import type { DidChangeWatchedFilesParams, FileSystemWatcher, TextDocumentChangeEvent } from 'vscode-languageserver';
import { FileChangeType } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { ServerSharedServices } from './lsp/services.ts';

type Change = TextDocumentChangeEvent<TextDocument>;

export class DocumentLife extends DefaultDocumentUpdateHandler {
  private readonly shared: ServerSharedServices;
  /** What has changed since the last build began, by address. */
  private readonly pending = new Map<string, { readonly uri: URI; readonly change: 'changed' | 'deleted' }>();

  constructor(services: ServerSharedServices) {
    super(services);
    this.shared = services;
  }

  isServed(uri: URI): boolean {
    return this.shared.window.Window.serves(uri.scheme);
  }

  didOpenDocument({ document }: Change): void {
    const uri = Uri.parse(document.uri);
    const { LangiumDocuments, LangiumDocumentFactory } = this.shared.workspace;
    // Known from the first moment, so that requests wait for it instead of failing.
    if (this.isServed(uri) && !LangiumDocuments.hasDocument(uri)) {
      LangiumDocuments.addDocument(LangiumDocumentFactory.fromModel({ $type: 'File' }, uri));
    }
    this.shared.workspace.DocumentBuilder.announceChange(uri);
  }

  override didChangeContent({ document }: Change): void {
    const uri = Uri.parse(document.uri);
    if (!this.isServed(uri)) return;
    this.shared.workspace.DocumentBuilder.announceChange(uri);
    this.fireDocumentUpdate([uri], []);
  }

  didCloseDocument({ document }: Change): void {
    const uri = Uri.parse(document.uri);
    if (!this.isServed(uri)) return;
    void this.shared.lsp.Connection?.sendDiagnostics({ uri: document.uri, diagnostics: [] });
    void this.isOnDisk(uri).then((kept) =>
      kept ? this.fireDocumentUpdate([uri], []) : this.fireDocumentUpdate([], [uri]),
    );
  }

  override didChangeWatchedFiles({ changes }: DidChangeWatchedFilesParams): void {
    const isOpen = (uri: string): boolean => this.shared.workspace.TextDocuments.get(uri) !== undefined;
    // What is open is as the editor has it, whatever happens on disk.
    const ours = changes.filter(({ uri }) => this.isServed(Uri.parse(uri)) && !isOpen(uri));
    const of = (deleted: 'deleted' | 'there') =>
      ours
        .filter(({ type }) => (type === FileChangeType.Deleted) === (deleted === 'deleted'))
        .map(({ uri }) => Uri.parse(uri));
    if (ours.length > 0) this.fireDocumentUpdate(of('there'), of('deleted'));
  }

  protected override fireDocumentUpdate(changed: URI[], deleted: URI[]): void {
    void this.take({ changed, deleted });
  }

  /**
   * Builds what has changed, and whatever is not built yet. A change that comes while an earlier one still waits is built
   * together with it, so every build begins here: one that began elsewhere would cancel a waiting one and lose it.
   */
  async take({ changed = [], deleted = [] }: { changed?: readonly URI[]; deleted?: readonly URI[] }): Promise<void> {
    for (const uri of changed) this.pending.set(uri.toString(), { uri, change: 'changed' });
    for (const uri of deleted) this.pending.set(uri.toString(), { uri, change: 'deleted' });
    try {
      await this.workspaceManager.ready;
      await this.workspaceLock.write(async (token) => {
        await pause(gatheringTime(this.pendingSize()));
        if (token.isCancellationRequested) return;
        const of = (wanted: 'changed' | 'deleted') =>
          [...this.pending.values()].filter(({ change }) => change === wanted).map(({ uri }) => uri);
        const [changedNow, deletedNow] = [of('changed'), of('deleted')];
        this.pending.clear();
        await this.documentBuilder.update(changedNow, deletedNow, token);
      });
    } catch (error) {
      this.shared.lsp.Connection?.console.error(`A change could not be taken in: ${String(error)}`);
    }
  }

  protected override getWatchers(): FileSystemWatcher[] {
    return this.shared.window.Window.watchesFiles() ? [] : [{ globPattern: '**/*.circuit' }];
  }

  private async isOnDisk(uri: URI): Promise<boolean> {
    if (uri.scheme === 'untitled' || UriUtils.extname(uri) !== '.circuit') return false;
    try {
      return (await this.shared.workspace.FileSystemProvider.stat(uri)).isFile;
    } catch {
      return false;
    }
  }

  private pendingSize(): number {
    const sizes = [...this.pending.keys()].map(
      (uri) => this.shared.workspace.TextDocuments.get(uri)?.getText().length ?? 0,
    );
    return sizes.reduce((sum, size) => sum + size, 0);
  }
}

/** Texts up to this many characters are built so fast that waiting for further keys would only cost time. */
const smallText = 16_000;

/** Milliseconds to wait for further keys before a text of that many characters is built: at most 40. */
function gatheringTime(characters: number): number {
  return characters <= smallText ? 0 : Math.min(40, Math.round(characters / 4000));
}

/** At the least until the keys that have arrived already are handed over, one in each turn of the event loop. */
function pause(milliseconds: number): Promise<void> {
  return milliseconds === 0 ? delayNextTick() : new Promise((resolve) => setTimeout(resolve, milliseconds));
}
