/** The files that circuit files use: finds them among the documents, and fetches those that are not there yet. */
import type { FileSystemNode, LangiumDocument, LangiumSharedCoreServices, URI } from 'langium';
import { URI as Uri } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import type { Origin } from '../system/origin.ts';
import { originOfProperty } from '../system/read/origins.ts';
import type { UsableFiles, UsedFile, UseFailure } from '../system/read/uses.ts';
import { isWithin, targetOf, type UseTarget } from './boundaries.ts';

/** Tells why a document is not read, if it is not. */
export type Refusal = (document: LangiumDocument) => string | undefined;

export class UsedFiles implements UsableFiles {
  private readonly services: LangiumSharedCoreServices;
  private readonly refusal: Refusal;
  /** What came of fetching a file that is not among the documents. */
  private readonly failures = new Map<string, UseFailure>();

  constructor(services: LangiumSharedCoreServices, refusal: Refusal) {
    this.services = services;
    this.refusal = refusal;
  }

  find(fromUri: string, path: string): UsedFile {
    const target = this.target(Uri.parse(fromUri), path);
    if ('failure' in target) return target;
    const document = this.services.workspace.LangiumDocuments.getDocument(target.uri);
    if (document === undefined) return { failure: this.failures.get(target.uri.toString()) ?? 'missing' };
    const file = document.parseResult.value;
    if (!ast.isFile(file) || this.refusal(document) !== undefined) return { failure: 'unreadable' };
    return { uri: target.uri.toString(), file };
  }

  target(from: URI, path: string): UseTarget {
    const folders = this.services.workspace.WorkspaceManager.workspaceFolders ?? [];
    return targetOf(
      from,
      path,
      folders.map((folder) => Uri.parse(folder.uri)),
    );
  }

  /** Every file that the document uses, by way of others too, whether it is there or not. */
  reachedFrom(document: LangiumDocument): ReadonlySet<string> {
    const reached = new Set<string>();
    const queue = [document];
    for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
      for (const target of this.targetsOf(next)) {
        const key = target.uri.toString();
        if (reached.has(key)) continue;
        reached.add(key);
        const used = this.services.workspace.LangiumDocuments.getDocument(target.uri);
        if (used !== undefined) queue.push(used);
      }
    }
    return reached;
  }

  /** The path of the `use` through which the document comes to another file, directly or by way of others. */
  leadingTo(document: LangiumDocument, uri: string): Origin | undefined {
    const file = document.parseResult.value;
    if (!ast.isFile(file)) return undefined;
    for (const use of file.uses) {
      const target = use.path === undefined ? undefined : this.target(document.uri, use.path);
      if (target === undefined || 'failure' in target) continue;
      const used = this.services.workspace.LangiumDocuments.getDocument(target.uri);
      const leads = target.uri.toString() === uri || (used !== undefined && this.reachedFrom(used).has(uri));
      if (leads) return originOfProperty(use, 'path');
    }
    return undefined;
  }

  /** Where each `use` leads that leads to a file which is there. */
  links(document: LangiumDocument): readonly { readonly origin: Origin; readonly uri: string }[] {
    const file = document.parseResult.value;
    if (!ast.isFile(file)) return [];
    return file.uses.flatMap((use) => {
      const found = use.path === undefined ? undefined : this.find(document.uri.toString(), use.path);
      return found !== undefined && 'uri' in found ? [{ origin: originOfProperty(use, 'path'), uri: found.uri }] : [];
    });
  }

  /** Fetches what the documents use and what that uses in turn; returns the documents that are new. */
  async load(documents: readonly LangiumDocument[]): Promise<readonly LangiumDocument[]> {
    const { LangiumDocuments } = this.services.workspace;
    const loaded: LangiumDocument[] = [];
    const queue = [...documents];
    for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
      for (const { uri, root } of this.targetsOf(next)) {
        if (LangiumDocuments.hasDocument(uri)) continue;
        const failure = await this.failureOf(uri, root);
        if (failure !== undefined) {
          this.failures.set(uri.toString(), failure);
          continue;
        }
        this.failures.delete(uri.toString());
        const document = await LangiumDocuments.getOrCreateDocument(uri);
        loaded.push(document);
        queue.push(document);
      }
    }
    return loaded;
  }

  private targetsOf(document: LangiumDocument): readonly { readonly uri: URI; readonly root: URI }[] {
    const file = document.parseResult.value;
    if (!ast.isFile(file)) return [];
    return file.uses
      .filter((use) => use.path !== undefined)
      .map((use) => this.target(document.uri, use.path))
      .filter((target) => 'uri' in target);
  }

  private async failureOf(uri: URI, root: URI): Promise<UseFailure | undefined> {
    const { FileSystemProvider } = this.services.workspace;
    let found: FileSystemNode;
    let folder: FileSystemNode;
    try {
      found = await FileSystemProvider.stat(uri);
      folder = await FileSystemProvider.stat(root);
    } catch {
      return 'missing';
    }
    // A link inside the folder may lead out of it.
    if (!isWithin(found.uri, folder.uri)) return 'outside';
    if (found.isDirectory) return 'directory';
    if (!found.isFile) return 'missing';
    return this.services.ServiceRegistry.hasServices(uri) ? undefined : 'unreadable';
  }
}
