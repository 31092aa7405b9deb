/** The canvas: holds the picture, pans and zooms it by mouse, touch and key, and says where parts are on the screen. */
import { select } from 'd3-selection';
import { type D3ZoomEvent, zoom, zoomIdentity } from 'd3-zoom';
import type { View } from '../preview/state.ts';
import { readPicture } from './clean.ts';
import { patch } from './patch.ts';
import {
  type Box,
  broughtIntoSight,
  centred,
  fitIn,
  panned,
  scaleLimits,
  transformOf,
  viewOf,
  zoomed,
} from './view.ts';

export interface Stage {
  /** False if the text is not a picture; the one on show stays then. */
  readonly show: (svg: string) => boolean;
  readonly clear: () => void;
  readonly isEmpty: () => boolean;
  /** Undefined fits the picture, now and whenever panel or picture change size. */
  readonly look: (view: View | undefined) => void;
  readonly fullSize: () => void;
  readonly zoomBy: (factor: number) => void;
  readonly panBy: (by: { readonly x: number; readonly y: number }) => void;
  readonly bringIntoSight: (part: Element) => void;
  /** The drawn part or line, also for the id of a sub-part that is drawn inside it. */
  readonly wholePart: (id: string) => SVGElement | undefined;
}

export interface StageParts {
  readonly svg: SVGSVGElement;
  /** Told of every change that a person made; undefined while the picture is fitted. */
  readonly onLook: (view: View | undefined) => void;
}

export function createStage({ svg, onLook }: StageParts): Stage {
  const viewport = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  viewport.setAttribute('class', 'viewport');
  svg.append(viewport);
  let picture: Box = { x: 0, y: 0, width: 0, height: 0 };
  /** Undefined while the picture is fitted. */
  let chosen: View | undefined;

  const panel = () => ({ width: svg.clientWidth, height: svg.clientHeight });
  const behaviour = zoom<SVGSVGElement, unknown>()
    .scaleExtent([scaleLimits.least, scaleLimits.most])
    .extent((): [[number, number], [number, number]] => [
      [0, 0],
      [panel().width, panel().height],
    ])
    .on('zoom', ({ transform, sourceEvent }: D3ZoomEvent<SVGSVGElement, unknown>) => {
      viewport.setAttribute('transform', transform.toString());
      // Without an event of the browser the change came from this file, which keeps account itself.
      if (sourceEvent) {
        chosen = viewOf({ scale: transform.k, x: transform.x, y: transform.y }, panel());
        onLook(chosen);
      }
    });
  const canvas = select<SVGSVGElement, unknown>(svg).call(behaviour).on('dblclick.zoom', null);

  const current = () => chosen ?? fitIn(picture, panel());
  const draw = () => {
    if (picture.width === 0 || panel().width === 0) return;
    const { scale, x, y } = transformOf(current(), panel());
    canvas.call(behaviour.transform, zoomIdentity.translate(x, y).scale(scale));
  };
  const look = (view: View | undefined) => {
    chosen = view;
    draw();
  };
  const choose = (view: View) => {
    look(view);
    onLook(view);
  };
  new ResizeObserver(draw).observe(svg);

  return {
    show: (text) => {
      const next = readPicture(text);
      if (next === undefined) return false;
      const { x, y, width, height } = next.viewBox.baseVal;
      picture = { x, y, width, height };
      const group = viewport.cloneNode(false);
      if (!(group instanceof Element)) return false;
      group.append(...next.childNodes);
      patch(viewport, group);
      draw();
      return true;
    },
    clear: () => {
      viewport.replaceChildren();
      picture = { x: 0, y: 0, width: 0, height: 0 };
    },
    isEmpty: () => viewport.childElementCount === 0,
    look,
    fullSize: () => choose(centred(picture, 1)),
    zoomBy: (factor) => choose(zoomed(current(), factor)),
    panBy: (by) => choose(panned(current(), by)),
    bringIntoSight: (part) => {
      const frame = svg.getBoundingClientRect();
      const { left, top, width, height } = part.getBoundingClientRect();
      const before = current();
      const after = broughtIntoSight(before, { x: left - frame.left, y: top - frame.top, width, height }, panel());
      if (after.x !== before.x || after.y !== before.y) choose(after);
    },
    wholePart: (id) => {
      const found = viewport.querySelector(`[data-id="${CSS.escape(id)}"]`)?.closest('[tabindex]');
      return found instanceof SVGElement ? found : undefined;
    },
  };
}
