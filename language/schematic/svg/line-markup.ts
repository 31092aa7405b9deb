/** One line of the picture as a focusable group: its way, its symbol, its label and its marks. */
import type { PictureLine } from '../picture.ts';
import type { PlacedLine } from '../placed.ts';
import type { Point } from '../symbols/drawing.ts';
import { badgeMarkup, badgesOf, badgeWords } from './badges.ts';
import { labelMarkup } from './label-markup.ts';
import { element, words } from './markup.ts';
import { bowEnds } from './pipes.ts';
import { circuitStyles } from './styles.ts';

/** Dash patterns by circuit, made to be told apart without any tone. */
const dashes: readonly (string | undefined)[] = [undefined, '13 5', '13 4 2.5 4', '2.5 4', '13 4 2.5 4 2.5 4', '6 4'];

export function circuitLook(circuit: number | undefined): { readonly tone: string; readonly dash: string | undefined } {
  if (circuit === undefined) return { tone: 'lw-unfed', dash: '1.5 4' };
  return { tone: `lw-c${(circuit % circuitStyles) + 1}`, dash: dashes[circuit % dashes.length] };
}

export const lineWords: Readonly<Record<PictureLine['kind'], string>> = {
  run: 'tube run',
  hose: 'hose',
  'low-pressure-hose': 'low-pressure hose',
  feed: 'feed from the reservoir',
  screwed: 'screwed joint',
  mechanical: 'mechanical link',
};

export function pipeStrokes(line: Pick<PictureLine, 'kind' | 'circuit'>, d: string): readonly string[] {
  const { tone, dash } = circuitLook(line.circuit);
  const stroke = (kind: string, width: number, pattern?: string) =>
    element('path', {
      class: `lw-pipe ${kind}`,
      'stroke-width': width,
      'stroke-dasharray': pattern,
      'stroke-linejoin': 'round',
      d,
    });
  switch (line.kind) {
    case 'run':
    case 'hose':
      return [stroke(tone, 2.6, dash)];
    case 'low-pressure-hose':
    case 'feed':
      return [stroke('lw-low', 1.3)];
    case 'screwed':
      return [stroke(tone, 4)];
    case 'mechanical':
      return [stroke('lw-rod', 5), stroke('lw-rod-core', 2.6)];
  }
}

export function lineMarkup(placed: PlacedLine, d: string): string {
  const { line, text } = placed;
  const badges = badgesOf(line.mark, line.findings);
  const label = line.label === '' ? line.id : line.label;
  const summary = [label, lineWords[line.kind], ...line.notes, ...badges.map((badge) => badgeWords[badge])].join(', ');
  const { tone } = circuitLook(line.circuit);
  const dots = line.kind === 'hose' && placed.carrier !== undefined ? bowEnds(placed.carrier) : [];
  const tint = line.kind === 'low-pressure-hose' || line.kind === 'feed' ? 'lw-low' : tone;
  return element(
    'g',
    {
      class: ['lw-pipe-group', `lw-kind-${line.kind}`, `lw-mark-${line.mark}`].join(' '),
      'data-id': line.id,
      role: 'img',
      tabindex: '0',
    },
    [
      words('title', {}, summary),
      words('desc', {}, [line.description, ...line.findings.map((finding) => finding.message)].join(' ')),
      element('path', { class: 'lw-pipe-band', 'stroke-width': 11, 'stroke-linecap': 'round', d }),
      ...pipeStrokes(line, d),
      ...dots.map((dot) => element('circle', { class: `${tint} lw-full`, cx: dot.x, cy: dot.y, r: 3.2 })),
      ...(line.mark === 'to-remove'
        ? [element('path', { class: 'lw-strike', 'stroke-width': 1.1, d: strikes(placed.points) })]
        : []),
      element('path', { class: 'lw-hit', 'stroke-width': 14, d }),
      ...(text === undefined ? [] : [labelMarkup(text)]),
      ...badges.map((kind, i) => badgeMarkup(kind, badgePlace(placed, i))),
      element('path', { class: 'lw-ring', 'stroke-width': 1.6, 'stroke-dasharray': '2 2', d }),
    ],
  );
}

/** The band behind a line that is still to be fitted; it lies below all lines, or it would hide what crosses it. */
export const bandMarkup = ({ line }: PlacedLine, d: string): string =>
  line.mark === 'to-fit' ? element('path', { class: 'lw-band-fit', 'stroke-width': 10, d }) : '';

function badgePlace({ carrier, points }: PlacedLine, index: number): Point {
  if (carrier !== undefined) return { x: carrier.x, y: (carrier.top + carrier.bottom) / 2 + index * 17 - 4 };
  const [a, b] = longest(points);
  return { x: (a.x + b.x) / 2 + index * 17, y: (a.y + b.y) / 2 };
}

function longest(points: readonly Point[]): readonly [Point, Point] {
  let best: readonly [Point, Point] = [points[0] ?? { x: 0, y: 0 }, points[1] ?? points[0] ?? { x: 0, y: 0 }];
  for (let i = 1; i < points.length; i += 1) {
    const [a, b] = [points[i - 1], points[i]];
    if (a !== undefined && b !== undefined && size(a, b) > size(best[0], best[1])) best = [a, b];
  }
  return best;
}

const size = (a: Point, b: Point) => Math.abs(a.x - b.x) + Math.abs(a.y - b.y);
const strikePitch = 18;

/** Short strokes across the line all along it, as what is to come off is crossed out on a drawing. */
function strikes(points: readonly Point[]): string {
  return points
    .slice(1)
    .flatMap((b, i) => {
      const a = points[i] ?? b;
      const count = Math.floor(size(a, b) / strikePitch);
      return Array.from({ length: count }, (_, k) => {
        const part = (k + 0.5) / count;
        const [x, y] = [a.x + (b.x - a.x) * part, a.y + (b.y - a.y) * part].map(
          (value) => Math.round(value * 100) / 100,
        );
        return `M${(x ?? 0) - 4} ${(y ?? 0) + 4}l8 -8`;
      });
    })
    .join('');
}
