/** Writes a file whole or not at all. */
import { lstat, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

export type Written = { readonly kind: 'written' } | { readonly kind: 'refused'; readonly reason: string };

/** Writes beside the target and renames, so that what was there stays until the new text is there to the last byte. */
export async function writeWhole(path: string, text: string): Promise<Written> {
  try {
    const target = await targetOf(path);
    if (target.kind === 'directory') return { kind: 'refused', reason: 'it is a folder' };
    if (target.kind === 'device') await writeFile(target.path, text);
    else await replace(target.path, text);
    return { kind: 'written' };
  } catch (error) {
    return { kind: 'refused', reason: reasonOf(error) };
  }
}

async function replace(path: string, text: string): Promise<void> {
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    await writeFile(beside, text, { flag: 'wx' });
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
}

type Target = { readonly kind: 'file' | 'directory' | 'device'; readonly path: string };

/** Behind a symbolic link, the file that it leads to. */
async function targetOf(path: string): Promise<Target> {
  const there = await lstat(path).catch(() => undefined);
  if (there === undefined) return { kind: 'file', path };
  const real = there.isSymbolicLink() ? await realpath(path) : path;
  const what = await stat(real);
  return { kind: what.isDirectory() ? 'directory' : what.isFile() ? 'file' : 'device', path: real };
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'its folder does not exist',
  ENOTDIR: 'its folder does not exist',
  EACCES: 'there is no permission to write there',
  EPERM: 'there is no permission to write there',
  EROFS: 'nothing can be written there',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
  ENAMETOOLONG: 'the name is too long',
  EEXIST: 'another process is writing it',
};

function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return reasons[code] ?? `the system refused it${code === '' ? '' : ` (${code})`}`;
}
