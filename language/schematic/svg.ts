/** Places to SVG text: same picture and theme, same bytes; no inline style, every word from the file escaped. */
import type { Placed } from './placed.ts';
import { legendOf } from './svg/legend.ts';
import { bandMarkup, lineMarkup } from './svg/line-markup.ts';
import { element, words } from './svg/markup.ts';
import { nodeMarkup } from './svg/node-markup.ts';
import { pipePaths } from './svg/pipes.ts';
import { themeStyles } from './svg/styles.ts';
import { fitText, textWidth } from './text-width.ts';
import { type ThemeName, themes } from './themes.ts';

/** `window` leaves the tones to the stylesheet of the page; a theme's name writes them into the picture. */
export interface SvgOptions {
  readonly theme: ThemeName | 'window';
}

const margin = 28;
const captionHeight = 64;
const legendGap = 30;
const leastWidth = 440;
const titleSize = { size: 17, weight: 'bold' } as const;
const stateSize = { size: 12, weight: 'regular' } as const;
const compassWidth = 70;

const stateWords = {
  found: 'As found: what is on the vehicle today',
  planned: 'As planned: how the vehicle will be when the work is done',
} as const;

export function svgOf(placed: Placed, { theme }: SvgOptions): string {
  const { picture } = placed;
  const inner = Math.max(placed.width, leastWidth);
  const width = inner + margin * 2;
  const legend = legendOf(picture, inner);
  const height = margin * 2 + captionHeight + placed.height + legendGap + legend.height;
  const left = placed.left - Math.round((inner - placed.width) / 2);
  const corner = { x: left - margin, y: placed.top - captionHeight - margin };
  const paths = pipePaths(placed.lines);
  const markup = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'lw-picture',
      viewBox: `${corner.x} ${corner.y} ${width} ${height}`,
      width,
      height,
      role: 'graphics-document',
      'aria-roledescription': 'schematic',
    },
    [
      words('title', {}, picture.title),
      words('desc', {}, `${stateWords[picture.state]}. ${picture.description}`),
      ...(theme === 'window' ? [] : [element('style', {}, [themeStyles(themes[theme])])]),
      element('rect', { class: 'lw-paper', ...corner, width, height }),
      element('g', { class: 'lw-canvas' }, [
        caption(placed, { x: left, y: placed.top - captionHeight, inner }),
        element(
          'g',
          { class: 'lw-bands', 'aria-hidden': 'true' },
          placed.lines.map((line, i) => bandMarkup(line, paths[i] ?? '')),
        ),
        element(
          'g',
          { class: 'lw-pipes' },
          placed.lines.map((line, i) => lineMarkup(line, paths[i] ?? '')),
        ),
        element('g', { class: 'lw-parts' }, placed.nodes.map(nodeMarkup)),
        element('g', { transform: `translate(${left} ${placed.top + placed.height + legendGap})` }, [legend.markup]),
      ]),
    ],
  );
  return `${markup}\n`;
}

interface CaptionPlace {
  readonly x: number;
  readonly y: number;
  readonly inner: number;
}

function caption({ picture }: Placed, { x, y, inner }: CaptionPlace): string {
  const room = inner - compassWidth;
  return element('g', { class: 'lw-caption', transform: `translate(${x} ${y})` }, [
    words(
      'text',
      { class: 'lw-title', y: 14, 'font-size': titleSize.size, 'font-weight': 700, 'stroke-width': 0 },
      fitText(picture.title, titleSize, room),
    ),
    words(
      'text',
      { class: 'lw-note', y: 34, 'font-size': stateSize.size, 'stroke-width': 0 },
      fitText(stateWords[picture.state], stateSize, room),
    ),
    compass(inner - compassWidth / 2),
  ]);
}

/** Which way the front is, and which side is left. */
function compass(x: number): string {
  const letter = (dx: number, y: number, text: string) =>
    words('text', { class: 'lw-note', x: dx, y, 'font-size': 10, 'text-anchor': 'middle', 'stroke-width': 0 }, text);
  const half = Math.ceil(textWidth('front', { size: 10, weight: 'regular' }) / 2);
  return element('g', { class: 'lw-compass', transform: `translate(${x} 0)`, 'aria-hidden': 'true' }, [
    element('path', { class: 'lw-thin', 'stroke-width': 1.1, d: 'M0 34V14M-4 19L0 13L4 19M-8 26H8' }),
    letter(0, 8, 'front'),
    letter(-half - 6, 30, 'left'),
    letter(half + 9, 30, 'right'),
  ]);
}
