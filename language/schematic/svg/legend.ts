/** The legend: only what this picture shows, each with a sample drawn as in the picture. */
import type { Picture, PictureLine } from '../picture.ts';
import { noteFont } from '../symbols/box.ts';
import { fitText, textWidth } from '../text-width.ts';
import { type BadgeKind, badgeMarkup, badgesOf, badgeWords } from './badges.ts';
import { lineWords, pipeStrokes } from './line-markup.ts';
import { digits, element, words } from './markup.ts';

interface Entry {
  readonly sample: readonly string[];
  readonly sampleWidth: number;
  readonly text: string;
}

export interface Legend {
  readonly markup: string;
  readonly height: number;
}

const rowHeight = 22;
const entryGap = 22;
const sampleGap = 8;
const longestEntry = 260;

/** Laid out in rows no wider than `width`, its top left at the origin. */
export function legendOf(picture: Picture, width: number): Legend {
  const entries = [...circuitEntries(picture), ...kindEntries(picture), ...badgeEntries(picture)];
  const placed: string[] = [];
  let x = 0;
  let y = 0;
  for (const entry of entries) {
    const text = fitText(entry.text, noteFont, longestEntry);
    const wide = entry.sampleWidth + sampleGap + textWidth(text, noteFont);
    if (x > 0 && x + wide > width) {
      x = 0;
      y += rowHeight;
    }
    placed.push(
      element('g', { transform: `translate(${digits(x)} ${digits(y)})` }, [
        ...entry.sample,
        words(
          'text',
          { class: 'lw-note', x: entry.sampleWidth + sampleGap, y: 15, 'font-size': noteFont.size, 'stroke-width': 0 },
          text,
        ),
      ]),
    );
    x += wide + entryGap;
  }
  const height = entries.length === 0 ? 0 : y + rowHeight;
  return {
    markup: element('g', { class: 'lw-legend', role: 'list', 'aria-label': 'Legend' }, placed.map(listed)),
    height,
  };
}

const listed = (markup: string) => element('g', { role: 'listitem' }, [markup]);

const sampleLength = 46;
const sampleLine = `M0 11H${sampleLength}`;

function circuitEntries({ circuits, lines, nodes }: Picture): readonly Entry[] {
  const unfed = lines.some((line) => isTube(line) && line.circuit === undefined);
  const used = new Set([
    ...lines.map((line) => line.circuit),
    ...nodes.flatMap((node) => node.ports.map((port) => port.circuit)),
  ]);
  return [
    ...circuits.flatMap(({ name }, circuit): readonly Entry[] =>
      used.has(circuit) ? [lineEntry({ kind: 'run', circuit }, name)] : [],
    ),
    ...(unfed ? [lineEntry({ kind: 'run' }, 'reached by no chamber')] : []),
  ];
}

const isTube = ({ kind }: PictureLine) => kind === 'run' || kind === 'hose';

function lineEntry(line: Pick<PictureLine, 'kind' | 'circuit'>, text: string): Entry {
  return { sample: pipeStrokes(line, sampleLine), sampleWidth: sampleLength, text };
}

function kindEntries({ lines }: Picture): readonly Entry[] {
  const kinds = new Set(lines.map((line) => line.kind));
  const order = ['hose', 'low-pressure-hose', 'feed', 'screwed', 'mechanical'] as const;
  return order.flatMap((kind): readonly Entry[] => {
    if (!kinds.has(kind)) return [];
    if (kind !== 'hose') return [lineEntry({ kind }, lineWords[kind])];
    const bow = element('path', {
      class: 'lw-line',
      'stroke-width': 2.2,
      d: `M4 8Q${sampleLength / 2} 20 ${sampleLength - 4} 8`,
    });
    const dots = [4, sampleLength - 4].map((cx) => element('circle', { class: 'lw-solid', cx, cy: 8, r: 2.8 }));
    return [{ sample: [bow, ...dots], sampleWidth: sampleLength, text: 'flexible hose' }];
  });
}

function badgeEntries({ lines, nodes }: Picture): readonly Entry[] {
  const shown = new Set([...nodes, ...lines].flatMap(({ mark, findings }) => badgesOf(mark, findings)));
  const order: readonly BadgeKind[] = ['to-fit', 'to-remove', 'error', 'warning', 'information', 'question'];
  return order
    .filter((kind) => shown.has(kind))
    .map((kind) => ({ sample: [badgeMarkup(kind, { x: 9, y: 11 })], sampleWidth: 18, text: badgeWords[kind] }));
}
