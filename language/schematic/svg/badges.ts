/** Marks on parts and lines: each kind has a shape and a sign of its own besides its tone. */
import type { Mark, PictureFinding, Severity } from '../picture.ts';
import type { Point } from '../symbols/drawing.ts';
import { element } from './markup.ts';

export type BadgeKind = Severity | 'to-fit' | 'to-remove';

/** From worst to mildest. */
const severities: readonly Severity[] = ['error', 'warning', 'information', 'question'];

export const badgeWords: Readonly<Record<BadgeKind, string>> = {
  error: 'error',
  warning: 'warning',
  information: 'information',
  question: 'to measure or to look at',
  'to-fit': 'to be fitted',
  'to-remove': 'to be removed',
};

const outlines: Readonly<Record<BadgeKind, string>> = {
  error: 'M-3.3 -8H3.3L8 -3.3V3.3L3.3 8H-3.3L-8 3.3V-3.3Z',
  warning: 'M0 -8.5L8.8 7H-8.8Z',
  information: 'M-7.5 0A7.5 7.5 0 1 1 7.5 0A7.5 7.5 0 1 1 -7.5 0Z',
  question: 'M-7 -7H7V7H-7Z',
  'to-fit': 'M-7.5 0A7.5 7.5 0 1 1 7.5 0A7.5 7.5 0 1 1 -7.5 0Z',
  'to-remove': 'M-7.5 0A7.5 7.5 0 1 1 7.5 0A7.5 7.5 0 1 1 -7.5 0Z',
};

const signs: Readonly<Record<BadgeKind, string>> = {
  error: 'M0 -4.6V1M0 4.3V4.4',
  warning: 'M0 -3.6V1.2M0 4.2V4.3',
  information: 'M0 -0.8V4.2M0 -4.1V-4',
  question: 'M-2.4 -2.2A2.5 2.5 0 1 1 0 0.5V1.6M0 4.5V4.6',
  'to-fit': 'M-4 0H4M0 -4V4',
  'to-remove': 'M-4 0H4',
};

/** What a part or line carries: its work mark first, then its worst finding. */
export function badgesOf(mark: Mark, findings: readonly PictureFinding[]): readonly BadgeKind[] {
  const worst = severities.find((severity) => findings.some((finding) => finding.severity === severity));
  return [...(mark === 'kept' ? [] : [mark]), ...(worst === undefined ? [] : [worst])];
}

export function badgeMarkup(kind: BadgeKind, { x, y }: Point): string {
  return element('g', { class: 'lw-badge', transform: `translate(${x} ${y})` }, [
    element('path', { class: `lw-badge-${kind}`, 'stroke-width': 1.4, 'stroke-linejoin': 'round', d: outlines[kind] }),
    element('path', {
      class: `lw-sign-${kind}`,
      fill: 'none',
      'stroke-width': 2,
      'stroke-linecap': 'round',
      d: signs[kind],
    }),
  ]);
}
