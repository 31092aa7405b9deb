/** The arithmetic of looking at a picture: fitting it, zooming about a point, bringing a part into sight. No DOM. */
import type { View } from '../preview/state.ts';

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Box extends Size {
  readonly x: number;
  readonly y: number;
}

export const scaleLimits = { least: 0.1, most: 8 } as const;

const margin = 16;

/** The whole picture in the middle of the panel, never larger than one and a half times its natural size. */
export function fitIn(picture: Box, panel: Size): View {
  const wide = Math.max(1, panel.width - 2 * margin) / Math.max(1, picture.width);
  const high = Math.max(1, panel.height - 2 * margin) / Math.max(1, picture.height);
  return centred(picture, panel, clampScale(Math.min(wide, high, 1.5)));
}

/** The picture at a given scale with its middle in the middle of the panel. */
export function centred(picture: Box, panel: Size, scale: number): View {
  return {
    scale,
    x: panel.width / 2 - scale * (picture.x + picture.width / 2),
    y: panel.height / 2 - scale * (picture.y + picture.height / 2),
  };
}

/** What lies in the middle of the panel stays there. */
export function zoomed(view: View, panel: Size, factor: number): View {
  const scale = clampScale(view.scale * factor);
  const ratio = scale / view.scale;
  const middle = { x: panel.width / 2, y: panel.height / 2 };
  return { scale, x: middle.x - ratio * (middle.x - view.x), y: middle.y - ratio * (middle.y - view.y) };
}

export function panned(view: View, by: { readonly x: number; readonly y: number }): View {
  return { ...view, x: view.x + by.x, y: view.y + by.y };
}

/** Moves no farther than needed to have the part (in CSS pixels of the panel) in sight; not at all if it is. */
export function broughtIntoSight(view: View, part: Box, panel: Size): View {
  return panned(view, {
    x: shift(part.x, part.x + part.width, panel.width),
    y: shift(part.y, part.y + part.height, panel.height),
  });
}

function shift(from: number, to: number, length: number): number {
  const [least, most] = [margin, length - margin];
  if (to - from > most - least) return from > most || to < least ? length / 2 - (from + to) / 2 : 0;
  if (from < least) return least - from;
  return to > most ? most - to : 0;
}

function clampScale(scale: number): number {
  return Math.min(scaleLimits.most, Math.max(scaleLimits.least, scale));
}
