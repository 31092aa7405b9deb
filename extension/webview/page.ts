/** Puts the page together and keeps its state: what is shown, selected and remembered. */
import type { CircuitView } from '../../server/protocol.ts';
import type { PagePicture, ToPage, Words } from '../preview/messages.ts';
import type { PreviewState } from '../preview/state.ts';
import { elementOf } from './elements.ts';
import { fill } from './fill.ts';
import type { Host } from './host.ts';
import { actOnKeys } from './keyboard.ts';
import { createList } from './list.ts';
import { createMemory } from './memory.ts';
import { createNotice } from './notice.ts';
import { rasterise } from './raster.ts';
import { createStage } from './stage.ts';
import { createTools } from './tools.ts';
import { partAt, partOf } from './touch.ts';
import { createVoice } from './voice.ts';

const zoomStep = 1.25;

export function createPage(host: Host): (message: ToPage) => void {
  const canvas = elementOf('canvas', HTMLElement);
  const svg = elementOf('stage', SVGSVGElement);
  let words: Words | undefined;
  let picture: PagePicture | undefined;

  const memory = createMemory(host);
  const stage = createStage({ svg, onLook: memory.keepView });
  const fit = () => {
    stage.look(undefined);
    memory.keepView(undefined);
  };
  const open = (id: string) => {
    select(id);
    host.post({ type: 'open', id });
  };
  const select = (id: string | undefined) => {
    memory.keepSelected(id);
    markSelected();
  };
  const markSelected = () => {
    const selected = memory.state()?.selected;
    for (const marked of svg.querySelectorAll('.lw-selected')) marked.classList.remove('lw-selected');
    if (selected !== undefined) stage.wholePart(selected)?.classList.add('lw-selected');
    list.select(selected);
  };
  const point = (id: string) => {
    select(id);
    const element = stage.wholePart(id);
    if (element !== undefined) stage.bringIntoSight(element);
  };
  const setList = (shown: PreviewState['list']) => {
    memory.keepList(shown);
    elementOf('list', HTMLElement).hidden = shown === 'closed';
    tools.setList(shown);
  };

  const list = createList(elementOf('list-items', HTMLElement), { open, point });
  const notice = createNotice(
    {
      box: elementOf('notice', HTMLElement),
      text: elementOf('notice-text', HTMLElement),
      go: elementOf('notice-go', HTMLElement),
    },
    () => host.post({ type: 'openBroken' }),
  );
  const voice = createVoice(elementOf('live', HTMLElement));
  const tools = createTools(elementOf('tools', HTMLElement), {
    zoomIn: () => stage.zoomBy(zoomStep),
    zoomOut: () => stage.zoomBy(1 / zoomStep),
    fit,
    fullSize: stage.fullSize,
    circuit: (circuit: CircuitView) => host.post({ type: 'circuit', circuit }),
    list: () => setList(memory.state()?.list === 'open' ? 'closed' : 'open'),
    saveSvg: () => host.post({ type: 'save', format: 'svg' }),
    savePng: () => host.post({ type: 'save', format: 'png' }),
  });
  actOnKeys(canvas, {
    zoomIn: () => stage.zoomBy(zoomStep),
    zoomOut: () => stage.zoomBy(1 / zoomStep),
    fullSize: stage.fullSize,
    fit,
    pan: stage.panBy,
    open,
    toEditor: () => host.post({ type: 'focusEditor' }),
    joinedTo: (id) => picture?.parts.find((part) => part.id === id)?.joined ?? [],
    elementOf: stage.wholePart,
  });
  svg.addEventListener('click', ({ clientX, clientY }) => {
    const id = partAt(clientX, clientY);
    if (id !== undefined) open(id);
  });
  canvas.addEventListener('focusin', ({ target }) => {
    const id = target instanceof Element && target.matches(':focus-visible') ? partOf(target) : undefined;
    if (id !== undefined) point(id);
  });

  const start = (message: Extract<ToPage, { type: 'start' }>) => {
    words = message.words;
    const state = memory.begin(message.uri, message.circuit);
    tools.setWords(words);
    setList(state.list);
    elementOf('list-title', HTMLElement).textContent = words.listTitle;
    elementOf('keys', HTMLElement).textContent = words.keys;
    stage.look(state.view);
    if (picture?.uri !== message.uri) showNothing(words.waiting);
  };
  const showNothing = (text: string) => {
    picture = undefined;
    stage.clear();
    list.show([], words);
    canvas.setAttribute('aria-label', words?.canvas ?? '');
    tools.setCircuits([], memory.state()?.circuit ?? 'planned');
    notice.show({ text });
    document.body.dataset['picture'] = 'none';
  };
  const show = (next: PagePicture) => {
    if (!stage.show(next.svg)) return;
    picture = next;
    memory.keepPicture(next.circuit, next.placement);
    const shown = words?.[next.circuit] ?? '';
    canvas.setAttribute('aria-label', `${next.title}, ${shown}. ${next.description}`);
    list.show(next.parts, words);
    tools.setCircuits(next.views, next.circuit);
    markSelected();
    const { broken } = next;
    notice.show(
      broken &&
        words && { text: fill(words.brokenPartly, broken.line, broken.message), go: fill(words.goToLine, broken.line) },
    );
    document.body.dataset['picture'] = broken === undefined ? 'current' : 'old';
    const { errors, warnings, toMeasure } = next.tally;
    voice.sayLater(fill(words?.summary ?? '', errors, warnings, toMeasure));
  };
  const keepOld = (text: string, line?: number) => {
    const go = line === undefined || words === undefined ? {} : { go: fill(words.goToLine, line) };
    notice.show({ text, ...go });
    document.body.dataset['picture'] = stage.isEmpty() ? 'none' : 'old';
    voice.hush();
  };

  return (message) => {
    switch (message.type) {
      case 'start':
        return start(message);
      case 'picture':
        return show(message.picture);
      case 'broken': {
        const sentence = stage.isEmpty() ? words?.brokenWithout : words?.brokenWithPicture;
        return keepOld(fill(sentence ?? '', message.line, message.message), message.line);
      }
      case 'trouble':
        return keepOld(message.message);
      case 'nothing':
        return showNothing(message.message);
      case 'highlight':
        return message.id === undefined ? select(undefined) : point(message.id);
      case 'rasterise': {
        const { job } = message;
        rasterise(message.svg, message.scale).then(
          (png) => host.post({ type: 'raster', job, png }),
          (error) => host.post({ type: 'rasterFailed', job, message: String(error) }),
        );
      }
    }
  };
}
