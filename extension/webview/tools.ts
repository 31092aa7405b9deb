/** The row of buttons over the canvas. */
import type { CircuitView } from '../../server/protocol.ts';
import type { Words } from '../preview/messages.ts';

export interface ToolActions {
  readonly zoomIn: () => void;
  readonly zoomOut: () => void;
  readonly fit: () => void;
  readonly fullSize: () => void;
  readonly circuit: (circuit: CircuitView) => void;
  readonly list: () => void;
  readonly saveSvg: () => void;
  readonly savePng: () => void;
}

export interface Tools {
  readonly setWords: (words: Words) => void;
  /** Which circuits there are to choose from, and which is shown. */
  readonly setCircuits: (views: readonly CircuitView[], shown: CircuitView) => void;
  readonly setList: (list: 'open' | 'closed') => void;
}

export function createTools(bar: HTMLElement, act: ToolActions): Tools {
  const zoomOut = button('zoom-out', act.zoomOut);
  const zoomIn = button('zoom-in', act.zoomIn);
  const fit = button('fit', act.fit);
  const fullSize = button('full-size', act.fullSize);
  const planned = button('planned', () => act.circuit('planned'));
  const found = button('found', () => act.circuit('found'));
  const circuits = group('circuits', planned, found);
  const list = button('list-toggle', act.list);
  const saveSvg = button('save-svg', act.saveSvg);
  const savePng = button('save-png', act.savePng);
  list.setAttribute('aria-controls', 'list');
  bar.append(group('look', zoomOut, zoomIn, fit, fullSize), circuits, list, group('save', saveSvg, savePng));
  circuits.hidden = true;

  return {
    setWords: (words) => {
      bar.setAttribute('aria-label', words.tools);
      circuits.setAttribute('aria-label', words.circuit);
      label(zoomOut, '−', words.zoomOut);
      label(zoomIn, '+', words.zoomIn);
      label(fullSize, '1:1', words.fullSize);
      label(saveSvg, 'SVG', words.saveSvg);
      label(savePng, 'PNG', words.savePng);
      fit.textContent = words.fit;
      planned.textContent = words.planned;
      found.textContent = words.found;
      list.textContent = words.list;
    },
    setCircuits: (views, shown) => {
      circuits.hidden = views.length < 2;
      planned.setAttribute('aria-pressed', String(shown === 'planned'));
      found.setAttribute('aria-pressed', String(shown === 'found'));
    },
    setList: (state) => list.setAttribute('aria-expanded', String(state === 'open')),
  };
}

function button(id: string, act: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.id = id;
  made.type = 'button';
  made.addEventListener('click', act);
  return made;
}

function group(name: string, ...buttons: readonly HTMLElement[]): HTMLElement {
  const made = document.createElement('div');
  made.className = `group ${name}`;
  made.setAttribute('role', 'group');
  made.append(...buttons);
  return made;
}

/** The sign is for the eye, the words for the pointer and for screen readers. */
function label(made: HTMLButtonElement, sign: string, words: string): void {
  made.textContent = sign;
  made.title = words;
  made.setAttribute('aria-label', words);
}
