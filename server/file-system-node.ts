/** Reads files from disk. */
import { readdir, readFile, realpath, stat } from 'node:fs/promises';
import { URI, UriUtils } from 'langium';
import { largestText, tooLarge } from '../language/index.ts';
import type { Files } from './file-system.ts';

export const nodeFiles: Files = {
  /** `uri` of the answer is where a link leads, so that it can be told whether it leads out of the folder. */
  stat: async (uri) => {
    const real = await realpath(uri.fsPath);
    const found = await stat(real);
    return { isFile: found.isFile(), isDirectory: found.isDirectory(), uri: URI.file(real) };
  },
  readFile: async (uri) => {
    const { size } = await stat(uri.fsPath).catch(() => {
      throw new Error('This file cannot be read: it is not there, or may not be opened.');
    });
    if (size > largestText) throw new Error(tooLarge(size));
    return readFile(uri.fsPath, 'utf8');
  },
  /** Links are passed over, so that no search runs in circles or out of the folder. */
  readDirectory: async (uri) => {
    const entries = await readdir(uri.fsPath, { withFileTypes: true });
    return entries
      .sort((a, b) => (a.name < b.name ? -1 : 1))
      .map((entry) => ({
        isFile: entry.isFile(),
        isDirectory: entry.isDirectory(),
        uri: UriUtils.joinPath(uri, entry.name),
      }));
  },
};
