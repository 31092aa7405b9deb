/** One part of the picture as a focusable group: symbol with its sub-parts, label, open ports and marks. */
import type { PlacedNode } from '../placed.ts';
import type { Shape } from '../symbols/drawing.ts';
import { symbols } from '../symbols/table.ts';
import { badgeMarkup, badgesOf, badgeWords } from './badges.ts';
import { labelMarkup } from './label-markup.ts';
import { digits, element, words } from './markup.ts';
import { shapeMarkup } from './shapes.ts';

/** The least size of a target, in pixels: WCAG 2.2, success criterion 2.5.8. */
const leastTarget = 24;

export function nodeMarkup({ node, box, at, open }: PlacedNode): string {
  const badges = badgesOf(node.mark, node.findings);
  const worst = badges.find((badge) => badge !== 'to-fit' && badge !== 'to-remove');
  const kind = symbols[node.symbol].words;
  const summary = [
    node.label === '' ? node.id : node.label,
    kind,
    ...node.notes,
    ...badges.map((badge) => badgeWords[badge]),
  ];
  const corner = { x: at.x + box.origin.x, y: at.y + box.origin.y };
  const { width, height } = box.core;
  return element(
    'g',
    {
      class: [
        'lw-part',
        `lw-symbol-${node.symbol}`,
        `lw-mark-${node.mark}`,
        ...(worst === undefined ? [] : [`lw-has-${worst}`]),
      ].join(' '),
      'data-id': node.id,
      role: 'img',
      tabindex: '0',
    },
    [
      words('title', {}, summary.join(', ')),
      words('desc', {}, [node.description, ...node.findings.map((finding) => finding.message)].join(' ')),
      element('g', { transform: `translate(${digits(corner.x)} ${digits(corner.y)})` }, [
        element('rect', {
          class: 'lw-hit',
          x: Math.min(0, (width - leastTarget) / 2),
          y: Math.min(0, (height - leastTarget) / 2),
          width: Math.max(width, leastTarget),
          height: Math.max(height, leastTarget),
        }),
        ...(node.mark === 'to-fit'
          ? [
              element('rect', {
                class: 'lw-field-fit',
                'stroke-width': 1,
                x: -4,
                y: -4,
                width: width + 8,
                height: height + 8,
                rx: 5,
              }),
            ]
          : []),
        ...partGroups(box.shapes, node.details),
        ...(node.mark === 'to-remove'
          ? [element('path', { class: 'lw-strike', 'stroke-width': 2, d: `M-3 ${height + 3}L${width + 3} -3` })]
          : []),
        element('rect', {
          class: 'lw-ring',
          'stroke-width': 2,
          x: -5,
          y: -5,
          width: width + 10,
          height: height + 10,
          rx: 5,
        }),
      ]),
      ...open.map((port) => openPortMarkup(node.id, port)),
      labelMarkup({ ...box.text, at: { x: at.x + box.text.at.x, y: at.y + box.text.at.y } }),
      ...badges.map((badge, i) => badgeMarkup(badge, { x: at.x + box.badges.x - i * 18, y: at.y + box.badges.y })),
    ],
  );
}

/** An open port ends in a ring, a plugged one in a cross. */
function openPortMarkup(node: string, { port, at, away, end }: PlacedNode['open'][number]): string {
  const [x, y] = [digits(away.x), digits(away.y)];
  const stub = { class: 'lw-line', 'stroke-width': 1.4, d: `M${digits(at.x)} ${digits(at.y)}L${x} ${y}` };
  const cross = { class: 'lw-line', 'stroke-width': 1.4, d: `M${x} ${y}m-3.5 -3.5l7 7m0 -7l-7 7` };
  return element('g', { class: `lw-port-${end}`, 'data-port': `${node}.${port}` }, [
    element('path', stub),
    end === 'plugged'
      ? element('path', cross)
      : element('circle', { class: 'lw-body', 'stroke-width': 1.2, cx: away.x, cy: away.y, r: 2.6 }),
  ]);
}

/** Shapes in drawing order; neighbours that belong to one sub-part share a group that names it. */
function partGroups(shapes: readonly Shape[], details: PlacedNode['node']['details']): readonly string[] {
  const groups: { part: string | undefined; markup: string[] }[] = [];
  for (const shape of shapes) {
    const last = groups.at(-1);
    if (last !== undefined && last.part === shape.part) last.markup.push(shapeMarkup(shape));
    else groups.push({ part: shape.part, markup: [shapeMarkup(shape)] });
  }
  return groups.flatMap(({ part, markup }) => {
    if (part === undefined) return markup;
    const label = details.find((detail) => detail.id === part)?.label ?? part;
    return [element('g', { class: 'lw-sub-part', 'data-id': part }, [words('title', {}, label), ...markup])];
  });
}
