/** Circuit text from a disk, or a sentence that says why there is none. */
import { readFileSync, statSync } from 'node:fs';
import { largestText, tooLarge } from '../../language/index.ts';

export type SourceText =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'unusable'; readonly why: 'missing' | 'directory' | 'unreadable'; readonly reason: string };

/** Reads a whole file as UTF-8. Never throws. */
export function readSourceText(path: string): SourceText {
  try {
    // Before it is opened: opening a pipe would wait for somebody to write into it.
    const about = statSync(path);
    if (about.isDirectory()) return unusable('directory', 'This is a folder; name a circuit file in it.');
    if (!about.isFile()) return unusable('unreadable', 'This is no ordinary file.');
    if (about.size > largestText) return unusable('unreadable', tooLarge(about.size));
    return decode(readFileSync(path));
  } catch (error) {
    return refusal(error);
  }
}

function unusable(why: 'missing' | 'directory' | 'unreadable', reason: string): SourceText {
  return { kind: 'unusable', why, reason };
}

function decode(bytes: Buffer): SourceText {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    return unusable('unreadable', 'This file is written in UTF-16; save it as UTF-8.');
  }
  if (bytes.includes(0)) return unusable('unreadable', 'This is not a text file, so it is not read as a circuit.');
  try {
    return { kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return unusable('unreadable', 'This is not text in UTF-8; save it as UTF-8.');
  }
}

function refusal(error: unknown): SourceText {
  const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown';
  if (code === 'ENOENT' || code === 'ENOTDIR') return unusable('missing', 'There is no such file.');
  if (code === 'EISDIR') return unusable('directory', 'This is a folder; name a circuit file in it.');
  if (code === 'EACCES' || code === 'EPERM') return unusable('unreadable', 'There is no permission to read it.');
  if (code === 'ELOOP') return unusable('unreadable', 'Its symbolic links lead in a circle.');
  return unusable('unreadable', `The system would not read it (${code}).`);
}
