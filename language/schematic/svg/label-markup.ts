/** Title and notes of a part or line as text. */

import { noteFont, noteHeight, titleFont, titleHeight } from '../symbols/box.ts';
import type { Point } from '../symbols/drawing.ts';
import { element, words } from './markup.ts';

export interface Label {
  /** Top of the first line: its left end, its middle or its right end. */
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly title: string;
  readonly notes: readonly string[];
}

/** Share of the line height at which letters stand. */
const baseline = 0.8;

export function labelMarkup({ at, anchor, title, notes }: Label): string {
  const lines = [
    ...(title === '' ? [] : [line({ x: at.x, y: at.y + titleHeight * baseline }, 'title', title)]),
    ...notes.map((note, i) =>
      line({ x: at.x, y: at.y + (title === '' ? 0 : titleHeight) + noteHeight * (i + baseline) }, 'note', note),
    ),
  ];
  return element('g', { class: 'lw-label', 'text-anchor': anchor, 'aria-hidden': 'true' }, lines);
}

function line({ x, y }: Point, kind: 'title' | 'note', text: string): string {
  const font = kind === 'title' ? titleFont : noteFont;
  return words(
    'text',
    {
      class: `lw-${kind}`,
      x,
      y,
      'font-size': font.size,
      'font-weight': font.weight === 'bold' ? 700 : 400,
      'stroke-width': 3,
      'stroke-linejoin': 'round',
      'paint-order': 'stroke',
    },
    text,
  );
}
