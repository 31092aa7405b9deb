/** The folders that are open in the window: which they are now, and the circuit files in them. */
import type { FileSystemNode, LangiumSharedCoreServices, WorkspaceFolder } from 'langium';
import { DefaultWorkspaceManager, UriUtils } from 'langium';

const passedOver: ReadonlySet<string> = new Set(['node_modules', 'out', 'dist']);

export class OpenFolders extends DefaultWorkspaceManager {
  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.initialBuildOptions = { validation: false };
  }

  /** Takes folders in and out while the window is open. */
  change(added: readonly WorkspaceFolder[], removed: readonly WorkspaceFolder[]): void {
    const gone = new Set(removed.map(({ uri }) => uri));
    this.folders = [...(this.folders ?? []).filter(({ uri }) => !gone.has(uri)), ...added];
  }

  override shouldIncludeEntry(entry: FileSystemNode): boolean {
    if (entry.isDirectory && passedOver.has(UriUtils.basename(entry.uri))) return false;
    return super.shouldIncludeEntry(entry);
  }
}
