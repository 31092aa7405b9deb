/** Puts the page of a sheet together: its buttons, the paper, and how far down it was read. */
import type { CircuitView } from '../../../server/protocol.ts';
import { debounce } from '../../debounce.ts';
import type { SheetWords, ToSheetPage } from '../../sheets/messages.ts';
import { readSheetState, type SheetSubject, sameSheet } from '../../sheets/state.ts';
import { readBody } from '../clean.ts';
import { elementOf } from '../elements.ts';
import { patch } from '../patch.ts';
import type { SheetHost } from './host.ts';

/** Milliseconds after which a paper that has come to rest is remembered. */
const rest = 150;

export function createSheetPage(host: SheetHost): (message: ToSheetPage) => void {
  const bar = elementOf('tools', HTMLElement);
  const notice = elementOf('notice', HTMLElement);
  const paper = elementOf('paper', HTMLElement);
  const sheet = elementOf('sheet', HTMLElement);
  let subject: SheetSubject | undefined;
  /** Where to go once there is a sheet to go down. */
  let readTo: number | undefined;

  const planned = button('planned', () => host.post({ type: 'circuit', circuit: 'planned' }));
  const found = button('found', () => host.post({ type: 'circuit', circuit: 'found' }));
  const print = button('print', () => host.post({ type: 'print' }));
  const save = button('save', () => host.post({ type: 'save' }));
  const circuits = group('circuits', planned, found);
  circuits.hidden = true;
  bar.append(circuits, group('output', print, save));

  const remember = () => {
    if (subject !== undefined) host.store({ version: 1, ...subject, scroll: readTo ?? paper.scrollTop });
  };
  const rememberSoon = debounce(remember, rest, {
    set: (act, wait) => window.setTimeout(act, wait),
    clear: (timeout) => window.clearTimeout(timeout),
  });
  paper.addEventListener('scroll', () => rememberSoon.ask(undefined));
  document.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') host.post({ type: 'focusEditor' });
  });

  const say = (text: string | undefined) => {
    notice.hidden = text === undefined;
    notice.textContent = text ?? '';
  };
  const label = (words: SheetWords) => {
    bar.setAttribute('aria-label', words.tools);
    circuits.setAttribute('aria-label', words.circuit);
    planned.textContent = words.planned;
    found.textContent = words.found;
    print.textContent = words.print;
    print.title = words.printHint;
    save.textContent = words.save;
  };
  const start = (message: Extract<ToSheetPage, { type: 'start' }>) => {
    const before = readSheetState(host.stored());
    const isSame = before !== undefined && sameSheet(before, message.subject);
    if (subject === undefined) readTo = isSame ? before.scroll : 0;
    subject = message.subject;
    label(message.words);
    remember();
    if (!sheet.hasChildNodes()) say(message.words.waiting);
    // The keys go down the paper from the start, unless a button has them.
    if (document.activeElement === document.body) paper.focus();
  };
  const show = (message: Extract<ToSheetPage, { type: 'sheet' }>) => {
    const body = readBody(message.body);
    if (body === undefined) return;
    body.id = 'sheet';
    patch(sheet, body);
    say(undefined);
    document.body.dataset['sheet'] = 'current';
    paper.setAttribute('aria-label', message.title);
    showCircuits(message.views, message.circuit);
    if (readTo !== undefined) paper.scrollTop = readTo;
    readTo = undefined;
  };
  const showCircuits = (views: readonly CircuitView[], shown: CircuitView) => {
    circuits.hidden = views.length < 2;
    planned.setAttribute('aria-pressed', String(shown === 'planned'));
    found.setAttribute('aria-pressed', String(shown === 'found'));
  };

  return (message) => {
    switch (message.type) {
      case 'start':
        return start(message);
      case 'sheet':
        return show(message);
      case 'trouble':
        document.body.dataset['sheet'] = 'old';
        return say(message.message);
    }
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
