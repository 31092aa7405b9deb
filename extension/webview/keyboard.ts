/** Acts on keys: over the canvas arrows pan, on a part they follow its lines; zoom and fit work anywhere on the page. */
import { actionOf, type Direction } from './keys.ts';
import { partOf } from './touch.ts';
import { type Neighbour, neighbourTowards, type Point } from './walk.ts';

export interface KeyboardActions {
  readonly zoomIn: () => void;
  readonly zoomOut: () => void;
  readonly fullSize: () => void;
  readonly fit: () => void;
  readonly pan: (by: Point) => void;
  readonly open: (id: string) => void;
  readonly toEditor: () => void;
  readonly joinedTo: (id: string) => readonly string[];
  readonly elementOf: (id: string) => SVGElement | undefined;
}

/** CSS pixels per press of an arrow key. */
const panStep = 48;

const pans: Readonly<Record<Direction, Point>> = {
  left: { x: panStep, y: 0 },
  right: { x: -panStep, y: 0 },
  up: { x: 0, y: panStep },
  down: { x: 0, y: -panStep },
};

export function actOnKeys(canvas: HTMLElement, act: KeyboardActions): void {
  document.addEventListener('keydown', (event) => {
    const action = actionOf(event);
    if (action === undefined) return;
    const target = event.target instanceof Element ? event.target : null;
    const inCanvas = target !== null && canvas.contains(target);
    switch (action.kind) {
      case 'move':
        // Elsewhere on the page arrows scroll, as everywhere.
        if (!inCanvas) return;
        move(partOf(target), action.direction, act);
        break;
      case 'toSource': {
        const id = inCanvas ? partOf(target) : undefined;
        if (id === undefined) return;
        act.open(id);
        break;
      }
      default:
        act[action.kind]();
    }
    event.preventDefault();
  });
}

function move(id: string | undefined, direction: Direction, act: KeyboardActions): void {
  const from = id === undefined ? undefined : middleOf(act.elementOf(id));
  if (id === undefined || from === undefined) {
    act.pan(pans[direction]);
    return;
  }
  const neighbours = act.joinedTo(id).flatMap((joined): Neighbour[] => {
    const at = middleOf(act.elementOf(joined));
    return at === undefined ? [] : [{ id: joined, at }];
  });
  const next = neighbourTowards(from, direction, neighbours);
  if (next !== undefined) act.elementOf(next.id)?.focus();
}

function middleOf(element: Element | undefined): Point | undefined {
  if (element === undefined) return undefined;
  const { left, top, width, height } = element.getBoundingClientRect();
  return { x: left + width / 2, y: top + height / 2 };
}
