/** The canvas: holds the picture, pans and zooms it by mouse, touch and key, and says where parts are on the screen. */
import { select } from 'd3-selection';
import { type D3ZoomEvent, type ZoomTransform, zoom, zoomIdentity, zoomTransform } from 'd3-zoom';
import type { View } from '../preview/state.ts';
import { readPicture } from './clean.ts';
import { patch } from './patch.ts';
import { type Box, broughtIntoSight, centred, fitIn, panned, scaleLimits, zoomed } from './view.ts';

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
  let fitted = true;

  const behaviour = zoom<SVGSVGElement, unknown>()
    .scaleExtent([scaleLimits.least, scaleLimits.most])
    .extent((): [[number, number], [number, number]] => [
      [0, 0],
      [panel().width, panel().height],
    ])
    .on('zoom', ({ transform, sourceEvent }: D3ZoomEvent<SVGSVGElement, unknown>) => {
      viewport.setAttribute('transform', transform.toString());
      // Without an event of the browser the change came from this file, which tells of it itself.
      if (sourceEvent) {
        fitted = false;
        onLook(asView(transform));
      }
    });
  const canvas = select<SVGSVGElement, unknown>(svg).call(behaviour).on('dblclick.zoom', null);

  const panel = () => ({ width: svg.clientWidth, height: svg.clientHeight });
  const current = () => asView(zoomTransform(svg));
  const apply = ({ scale, x, y }: View) => {
    canvas.call(behaviour.transform, zoomIdentity.translate(x, y).scale(scale));
  };
  const choose = (view: View) => {
    fitted = false;
    apply(view);
    onLook(view);
  };
  const refit = () => {
    if (fitted && picture.width > 0 && panel().width > 0) apply(fitIn(picture, panel()));
  };
  new ResizeObserver(refit).observe(svg);

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
      refit();
      return true;
    },
    clear: () => {
      viewport.replaceChildren();
      picture = { x: 0, y: 0, width: 0, height: 0 };
    },
    isEmpty: () => viewport.childElementCount === 0,
    look: (view) => {
      fitted = view === undefined;
      if (view === undefined) refit();
      else apply(view);
    },
    fullSize: () => choose(centred(picture, panel(), 1)),
    zoomBy: (factor) => choose(zoomed(current(), panel(), factor)),
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

function asView({ k, x, y }: ZoomTransform): View {
  return { scale: k, x, y };
}
