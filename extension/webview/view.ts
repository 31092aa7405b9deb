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

/** Moves a point p of the picture to scale·p + (x, y), in CSS pixels of the panel. */
export interface Transform {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export function transformOf({ scale, x, y }: View, panel: Size): Transform {
  return { scale, x: panel.width / 2 - scale * x, y: panel.height / 2 - scale * y };
}

export function viewOf({ scale, x, y }: Transform, panel: Size): View {
  return { scale, x: (panel.width / 2 - x) / scale, y: (panel.height / 2 - y) / scale };
}

/** The whole picture, never larger than one and a half times its natural size. */
export function fitIn(picture: Box, panel: Size): View {
  const wide = Math.max(1, panel.width - 2 * margin) / Math.max(1, picture.width);
  const high = Math.max(1, panel.height - 2 * margin) / Math.max(1, picture.height);
  return centred(picture, clampScale(Math.min(wide, high, 1.5)));
}

/** The middle of the picture in the middle of the panel. */
export function centred({ x, y, width, height }: Box, scale: number): View {
  return { scale, x: x + width / 2, y: y + height / 2 };
}

/** What lies in the middle of the panel stays there. */
export function zoomed(view: View, factor: number): View {
  return { ...view, scale: clampScale(view.scale * factor) };
}

/** Moves the picture by CSS pixels. */
export function panned(view: View, by: { readonly x: number; readonly y: number }): View {
  return { ...view, x: view.x - by.x / view.scale, y: view.y - by.y / view.scale };
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
