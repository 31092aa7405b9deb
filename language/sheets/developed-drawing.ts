/** A tube laid out straight, lengths to scale: where each bend begins and ends, and how it is called at the bench. */
import { digits, element, words } from '../schematic/svg/markup.ts';
import { textWidth } from '../schematic/text-width.ts';

export interface DrawnBend {
  readonly number: number;
  /** From the face of end A, in m; start ≤ end. */
  readonly start: number;
  readonly end: number;
  /** "90°" */
  readonly angle: string;
  /** What the tape shows at its start. */
  readonly mark: string;
}

export interface Developed {
  readonly name: string;
  /** From flare face to flare face, in m, more than zero. */
  readonly length: number;
  readonly lengthText: string;
  readonly bends: readonly DrawnBend[];
}

export interface DevelopedDrawing {
  readonly svg: string;
  /** The same in words. */
  readonly alternative: string;
}

const page = { width: 680, margin: 26, above: 2, rowHeight: 13, tube: 10, font: 11 } as const;

/** Presentation attributes only, so that it shows under a strict content policy; one tone, that of the text around it. */
export function developedDrawing(developed: Developed): DevelopedDrawing {
  const { length, bends } = developed;
  const scale = (page.width - 2 * page.margin) / length;
  const at = (along: number): number => page.margin + Math.min(length, Math.max(0, along)) * scale;
  const names = rowsOf(
    bends.map(({ number, angle, start, end }) => label(`${number}: ${angle}`, at((start + end) / 2))),
  );
  const marks = rowsOf(bends.map(({ mark, start }) => label(mark, at(start))));
  const top = page.above + names.count * page.rowHeight + 6;
  const bottom = top + page.tube;
  const foot = bottom + 8 + marks.count * page.rowHeight + 6;
  const height = foot + 17;
  const children = [
    element('rect', {
      class: 'tube',
      x: at(0),
      y: top,
      width: at(length) - at(0),
      height: page.tube,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 1.2,
    }),
    ...bends.map((bend) => zone(at(bend.start), at(bend.end), top)),
    ...names.labels.map(({ text, x, row, centre }) => {
      const y = top - 6 - row * page.rowHeight;
      return `${leader(centre, top, y + 2)}${caption(text, x, y)}`;
    }),
    ...marks.labels.map(({ text, x, row, centre }) => {
      const y = bottom + 8 + (row + 1) * page.rowHeight - 3;
      return `${leader(centre, bottom, y - 11)}${caption(text, x, y)}`;
    }),
    flare(at(0), top, -1),
    flare(at(length), top, 1),
    endLetter('A', at(0) - 16, top),
    endLetter('B', at(length) + 16, top),
    measure(at(0), at(length), foot, developed.lengthText),
  ];
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'developed',
      viewBox: `0 0 ${page.width} ${digits(height)}`,
      width: page.width,
      height,
      'font-family': 'Helvetica, Arial, sans-serif',
      'font-size': page.font,
      'aria-hidden': 'true',
    },
    children,
  );
  return { svg, alternative: inWords(developed) };
}

function inWords({ name, lengthText, bends }: Developed): string {
  const each = bends.map(({ number, mark, angle }) => `bend ${number} of ${angle} begins at ${mark}`);
  return `${name} laid out straight, ${lengthText} from flare face to flare face${
    each.length > 0 ? `; from end A, ${each.join(', ')}` : ', without a bend'
  }.`;
}

interface Label {
  readonly text: string;
  readonly width: number;
  readonly centre: number;
}

interface Placed extends Label {
  readonly x: number;
  readonly row: number;
}

function label(text: string, centre: number): Label {
  return { text, centre, width: textWidth(text, { size: page.font, weight: 'regular' }) };
}

/** Each label in the nearest row in which it touches none before it. */
function rowsOf(labels: readonly Label[]): { readonly labels: readonly Placed[]; readonly count: number } {
  const ends: number[] = [];
  const placed = [...labels]
    .sort((a, b) => a.centre - b.centre)
    .map((each): Placed => {
      const half = each.width / 2;
      const x = Math.min(page.width - 2 - half, Math.max(2 + half, each.centre));
      const free = ends.findIndex((end) => x - half >= end + 6);
      const row = free < 0 ? ends.length : free;
      ends[row] = x + half;
      return { ...each, x, row };
    });
  return { labels: placed, count: ends.length };
}

const caption = (text: string, x: number, y: number): string =>
  words('text', { class: 'measure', x, y, 'text-anchor': 'middle', fill: 'currentColor' }, text);

const leader = (x: number, from: number, to: number): string =>
  element('line', { class: 'leader', x1: x, y1: from, x2: x, y2: to, stroke: 'currentColor', 'stroke-width': 0.5 });

/** Where the tube is bent: hatched at 45°, each stroke cut off at the edges of the zone. */
function zone(start: number, end: number, top: number): string {
  const [x0, x1] = [start, Math.max(end, start + 2)];
  const strokes: string[] = [];
  for (let x = x0 - page.tube + 4; x < x1; x += 4) {
    const [from, to] = [Math.max(x, x0), Math.min(x + page.tube, x1)];
    if (to > from)
      strokes.push(
        `M${digits(from)} ${digits(top + page.tube - (from - x))}L${digits(to)} ${digits(top + page.tube - (to - x))}`,
      );
  }
  const edge = { stroke: 'currentColor', 'stroke-width': 1 } as const;
  return [
    element('path', { class: 'hatch', d: strokes.join(''), fill: 'none', stroke: 'currentColor', 'stroke-width': 0.6 }),
    element('line', { class: 'mark', x1: x0, y1: top - 3, x2: x0, y2: top + page.tube + 3, ...edge }),
    element('line', { class: 'mark', x1: x1, y1: top, x2: x1, y2: top + page.tube, ...edge }),
  ].join('');
}

/** The widened end; a sign, not to scale. */
function flare(x: number, top: number, way: 1 | -1): string {
  const [middle, out] = [top + page.tube / 2, 9];
  const d = `M${digits(x)} ${digits(top)}L${digits(x + 4 * way)} ${digits(middle - out)}L${digits(x + 4 * way)} ${digits(middle + out)}L${digits(x)} ${digits(top + page.tube)}`;
  return element('path', { class: 'flare', d, fill: 'none', stroke: 'currentColor', 'stroke-width': 1.2 });
}

const endLetter = (letter: string, x: number, top: number): string =>
  words(
    'text',
    { class: 'end', x, y: top + page.tube - 1, 'text-anchor': 'middle', 'font-weight': 'bold', fill: 'currentColor' },
    letter,
  );

/** The whole length beneath, between its two ends. */
function measure(from: number, to: number, y: number, text: string): string {
  const line = (x1: number, y1: number, x2: number, y2: number): string =>
    element('line', { class: 'dimension', x1, y1, x2, y2, stroke: 'currentColor', 'stroke-width': 0.5 });
  return [
    line(from, y, to, y),
    line(from, y - 4, from, y + 4),
    line(to, y - 4, to, y + 4),
    caption(text, (from + to) / 2, y + 13),
  ].join('');
}
