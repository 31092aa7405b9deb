/** Shapes of a symbol as SVG elements. */
import type { Look, Shape } from '../symbols/drawing.ts';
import { type Attributes, element, words } from './markup.ts';

const strokes: Readonly<Record<Look, Attributes>> = {
  body: { 'stroke-width': 1.8 },
  line: { 'stroke-width': 1.8, 'stroke-linecap': 'round', 'stroke-linejoin': 'round' },
  thin: { 'stroke-width': 1.1, 'stroke-linecap': 'round', 'stroke-linejoin': 'round' },
  dashed: { 'stroke-width': 1.1, 'stroke-dasharray': '4 3' },
  solid: { 'stroke-width': 1 },
  piston: { 'stroke-width': 1.2, 'stroke-linejoin': 'round' },
  fluid: {},
  word: { 'font-size': 14, 'font-weight': 700, 'text-anchor': 'middle' },
};

export function shapeMarkup(shape: Shape): string {
  const shared = { class: `lw-${shape.look}`, ...strokes[shape.look] };
  switch (shape.kind) {
    case 'path':
      return element('path', { ...shared, d: shape.d });
    case 'circle':
      return element('circle', { ...shared, cx: shape.at.x, cy: shape.at.y, r: shape.r });
    case 'rect':
      return element('rect', {
        ...shared,
        x: shape.at.x,
        y: shape.at.y,
        width: shape.width,
        height: shape.height,
        rx: shape.r,
      });
    case 'text':
      return words('text', { ...shared, x: shape.at.x, y: shape.at.y }, shape.text);
  }
}
