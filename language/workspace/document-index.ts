/** Knows which files a change touches: those that use the changed one, directly or by way of others. */
import type { LangiumDocument, LangiumSharedCoreServices } from 'langium';
import { DefaultIndexManager } from 'langium';
import type { UsedFiles } from './used-files.ts';

export class CircuitIndexManager extends DefaultIndexManager {
  private readonly usedFiles: () => UsedFiles;

  constructor(services: LangiumSharedCoreServices, usedFiles: () => UsedFiles) {
    super(services);
    this.usedFiles = usedFiles;
  }

  override isAffected(document: LangiumDocument, changedUris: Set<string>): boolean {
    if (super.isAffected(document, changedUris)) return true;
    for (const uri of this.usedFiles().reachedFrom(document)) if (changedUris.has(uri)) return true;
    return false;
  }
}
