/** The picture in words: every part and line with its numbers and findings, for reading instead of looking. */
import type { PicturePart } from '../../server/protocol.ts';
import type { Words } from '../preview/messages.ts';

export interface ListActions {
  /** A part was chosen: its place in the text is wanted. */
  readonly open: (id: string) => void;
  /** A part was reached; the picture shows where it is. */
  readonly point: (id: string) => void;
}

export interface PartList {
  readonly show: (parts: readonly PicturePart[], words: Words | undefined) => void;
  readonly select: (id: string | undefined) => void;
}

export function createList(items: HTMLElement, act: ListActions): PartList {
  const buttons = new Map<string, HTMLButtonElement>();
  return {
    show: (parts, words) => {
      const focused = [...buttons].find(([, button]) => button === document.activeElement)?.[0];
      buttons.clear();
      items.replaceChildren(
        ...parts.map((part) => {
          const button = itemButton(part, words);
          button.addEventListener('click', () => act.open(part.id));
          button.addEventListener('focus', () => act.point(part.id));
          buttons.set(part.id, button);
          const item = document.createElement('li');
          item.append(button);
          return item;
        }),
      );
      if (focused !== undefined) buttons.get(focused)?.focus({ preventScroll: true });
    },
    select: (id) => {
      for (const [part, button] of buttons) {
        if (part === id) button.setAttribute('aria-current', 'true');
        else button.removeAttribute('aria-current');
      }
    },
  };
}

function itemButton(part: PicturePart, words: Words | undefined): HTMLButtonElement {
  const button = document.createElement('button');
  button.type = 'button';
  button.dataset['part'] = part.id;
  button.append(span('name', part.label), ' ', span('trade', part.trade));
  if (part.description !== '') button.append(' ', span('numbers', part.description));
  for (const { severity, message } of part.findings) {
    button.append(' ', span(`finding ${severity}`, `${words?.[severity] ?? ''}: ${message}`));
  }
  return button;
}

function span(className: string, text: string): HTMLElement {
  const made = document.createElement('span');
  made.className = className;
  made.textContent = text;
  return made;
}
