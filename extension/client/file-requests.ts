/** Reads files for the server where it cannot do so itself: virtual folders, and everything in a browser. */
import { FileSystemError, FileType, Uri, workspace } from 'vscode';
import type { BaseLanguageClient, Disposable } from 'vscode-languageclient';
import type { DirectoryContent, FileContent, FileParams, FileStat, WindowRequests } from '../../server/protocol.ts';
import { decodeText } from './decode-text.ts';

export function answerFileRequests(client: BaseLanguageClient): Disposable[] {
  return [
    client.onRequest<FileContent, void>(readFileMethod, ({ uri }: FileParams) => readFile(Uri.parse(uri))),
    client.onRequest<FileStat, void>(statMethod, ({ uri }: FileParams) => stat(Uri.parse(uri))),
    client.onRequest<DirectoryContent, void>(readDirectoryMethod, ({ uri }: FileParams) =>
      readDirectory(Uri.parse(uri)),
    ),
  ];
}

const readFileMethod: keyof WindowRequests = 'linewright/fs/readFile';
const statMethod: keyof WindowRequests = 'linewright/fs/stat';
const readDirectoryMethod: keyof WindowRequests = 'linewright/fs/readDirectory';

async function readFile(uri: Uri): Promise<FileContent> {
  try {
    return decodeText(await workspace.fs.readFile(uri));
  } catch (error) {
    if (isMissing(error)) return { kind: 'missing' };
    return { kind: 'unreadable', reason: error instanceof Error ? error.message : String(error) };
  }
}

async function stat(uri: Uri): Promise<FileStat> {
  try {
    const found = await workspace.fs.stat(uri);
    return { kind: isDirectory(found.type) ? 'directory' : 'file' };
  } catch {
    return { kind: 'missing' };
  }
}

async function readDirectory(uri: Uri): Promise<DirectoryContent> {
  try {
    const found = await workspace.fs.readDirectory(uri);
    const entries = found.map(([name, type]) => ({ name, kind: isDirectory(type) ? 'directory' : 'file' }) as const);
    return { entries: entries.sort((a, b) => (a.name < b.name ? -1 : 1)) };
  } catch {
    return { entries: [] };
  }
}

function isDirectory(type: FileType): boolean {
  return (type & FileType.Directory) !== 0;
}

function isMissing(error: unknown): boolean {
  return error instanceof FileSystemError && error.code === 'FileNotFound';
}
