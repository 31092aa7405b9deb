/** Which file a `use` means, and whether it lies inside the open folders; nothing outside them is ever touched. */
import type { URI } from 'langium';
import { UriUtils } from 'langium';
import type { UseFailure } from '../system/read/uses.ts';

export type UseTarget = { readonly uri: URI; readonly root: URI } | { readonly failure: UseFailure };

/** Folders are those that are open; a file in none of them is confined to its own folder. */
export function targetOf(from: URI, path: string, folders: readonly URI[]): UseTarget {
  if (path.trim() === '' || /^[/\\~]|^[A-Za-z][\w+.-]*:/.test(path)) return { failure: 'not-relative' };
  if (from.scheme === 'untitled') return { failure: 'missing' };
  const root = folders.find((folder) => isWithin(from, folder)) ?? UriUtils.dirname(from);
  const steps = from.path.split('/').slice(0, -1);
  for (const step of path.split('/')) {
    if (step === '..') {
      if (steps.length <= 1) return { failure: 'outside' };
      steps.pop();
    } else if (step !== '.' && step !== '') steps.push(step);
  }
  const uri = from.with({ path: steps.join('/') || '/', query: '', fragment: '' });
  if (!isWithin(uri, root)) return { failure: 'outside' };
  if (uri.toString() === from.toString()) return { failure: 'itself' };
  return { uri, root };
}

/** Whether a file or folder lies in the folder, or is it. */
export function isWithin(uri: URI, folder: URI): boolean {
  if (uri.scheme !== folder.scheme || uri.authority !== folder.authority) return false;
  const path = folder.path.replace(/\/+$/, '');
  return uri.path === path || uri.path.startsWith(`${path}/`);
}
