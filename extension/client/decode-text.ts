/** Tells text from what is not text before the server is given it. */
import type { FileContent } from '../../server/protocol.ts';

/** A circuit file is a few thousand lines at most; beyond this something else was named. */
export const largestFile = 4 * 1024 * 1024;

export function decodeText(bytes: Uint8Array): FileContent {
  if (bytes.length > largestFile) {
    const size = (bytes.length / 1024 / 1024).toFixed(1);
    return { kind: 'unreadable', reason: `The file is ${size} MiB large; a circuit file may have 4 MiB.` };
  }
  if (bytes.includes(0)) return { kind: 'unreadable', reason: 'The file is not text.' };
  try {
    return { kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { kind: 'unreadable', reason: 'The file is not text in UTF-8.' };
  }
}
