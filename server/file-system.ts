/** Chooses who reads a file: the server itself where it can, else the window. */
import type { FileSystemNode, FileSystemProvider, URI } from 'langium';
import { EmptyFileSystemProvider } from 'langium';

/** What the language needs of a file system. Each call fails with a sentence for people. */
export type Files = Pick<FileSystemProvider, 'stat' | 'readFile' | 'readDirectory'>;

export class FilesByScheme extends EmptyFileSystemProvider {
  private readonly filesOf: (scheme: string) => Files;

  constructor(filesOf: (scheme: string) => Files) {
    super();
    this.filesOf = filesOf;
  }

  override async stat(uri: URI): Promise<FileSystemNode> {
    return this.filesOf(uri.scheme).stat(uri);
  }

  override async readFile(uri?: URI): Promise<string> {
    if (uri === undefined) throw new Error('No file is named.');
    return this.filesOf(uri.scheme).readFile(uri);
  }

  override async readDirectory(uri?: URI): Promise<FileSystemNode[]> {
    return uri === undefined ? [] : this.filesOf(uri.scheme).readDirectory(uri);
  }
}
