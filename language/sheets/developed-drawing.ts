/** A tube laid out straight, lengths to scale: where each bend begins and ends, and how it is called at the bench. */
import { digits, element, roomFor, words } from './drawing-markup.ts';

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

const page = { width: 680, left: 26, right: 76, above: 2, rowHeight: 13, tube: 10, font: 11 } as const;

/** Presentation attributes only, so that it shows under a strict content policy; one tone, that of the text around it. */
export function developedDrawing(developed: Developed): DevelopedDrawing {
  const { length, bends } = developed;
  const scale = (page.width - page.left - page.right) / length;
  const at = (along: number): number => page.left + Math.min(length, Math.max(0, along)) * scale;
  const names = rowsOf(
    bends.map(({ number, angle, start, end }) => ({ text: `${number}: ${angle}`, x: at((start + end) / 2) })),
  );
  const marks = rowsOf(bends.map(({ mark, start }) => ({ text: mark, x: at(start) })));
  const top = page.above + names.count * page.rowHeight + 8;
  const bottom = top + page.tube;
  const foot = bottom + 10 + marks.count * page.rowHeight + 6;
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
    ...names.labels.map((label) => flag(label, top, top - 8 - label.row * page.rowHeight)),
    ...marks.labels.map((label) => flag(label, bottom, bottom + 16 + label.row * page.rowHeight)),
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
  /** Where its leader stands; the text begins beside it. */
  readonly x: number;
}

interface Placed extends Label {
  /** 0 is nearest to the tube. */
  readonly row: number;
}

/**
 * From the right to the left, each label beside its leader in the nearest row where it covers no leader of those to
 * its right: these end in nearer rows, so that no leader runs through a text.
 */
function rowsOf(labels: readonly Label[]): { readonly labels: readonly Placed[]; readonly count: number } {
  const placed: Placed[] = [];
  for (const label of [...labels].sort((a, b) => b.x - a.x)) {
    const reach = label.x + roomFor(label.text, page.font) + 8;
    const covered = placed.filter(({ x }) => x <= reach).map(({ row }) => row);
    placed.push({ ...label, row: covered.length > 0 ? Math.max(...covered) + 1 : 0 });
  }
  return { labels: placed, count: placed.reduce((most, { row }) => Math.max(most, row + 1), 0) };
}

function flag({ text, x }: Label, from: number, y: number): string {
  const start = Math.min(x + 3, page.width - 2 - roomFor(text, page.font));
  const end = y < from ? y - 8 : y;
  return [
    element('line', { class: 'leader', x1: x, y1: from, x2: x, y2: end, stroke: 'currentColor', 'stroke-width': 0.5 }),
    words({ class: 'measure', x: start, y, fill: 'currentColor' }, text),
  ].join('');
}

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
    words({ class: 'measure', x: (from + to) / 2, y: y + 13, 'text-anchor': 'middle', fill: 'currentColor' }, text),
  ].join('');
}
