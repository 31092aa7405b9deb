/** What tells nuts of one thread apart: how far the thread runs to the front, and how far they reach down a port. */

import type { FlareForm } from './flare-forms.ts';
import { commonPractice, published } from './source.ts';

/** A bubble flare is pushed by its back, which lies square to the tube; the cone of a double flare by a cone in the nut. */
export const nutFronts = {
  words:
    'For a bubble flare take the nut with a plain lead ahead of its thread, for a double flare the one that is threaded to its front: they are not to be swapped',
  source: published('a trade list of metric tube nuts: nuts with an unthreaded lead are for the bubble flare'),
} as const;

export const nutReach = {
  words:
    'Hold each nut beside the old one: it has to press on the flare before its hexagon meets the port, so deep ports take long nuts',
  source: commonPractice('a nut that comes up against the port with its hexagon leaves the flare loose'),
} as const;

/** Whether nuts of one thread are sold with both fronts, so that the flare decides between them; inch nuts are not. */
export function frontMatters(flare: FlareForm | undefined, thread: string | undefined): boolean {
  return (flare === 'bubble' || flare === 'double-45') && thread !== undefined && thread.startsWith('M');
}
