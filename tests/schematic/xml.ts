/** A strict little reader of XML, to prove that what is written is well formed and to ask what it contains. */

export interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly Element[];
  /** Text directly inside, entities resolved. */
  readonly text: string;
}

interface Opened {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: Element[];
  text: string;
}

const token = /<(\/?)([A-Za-z][\w:-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
const attribute = /([\w:-]+)="([^"<]*)"/g;
const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** Throws where the text is not well formed. */
export function readXml(xml: string): Element {
  const root: Opened = { name: '', attributes: new Map(), children: [], text: '' };
  const stack: Opened[] = [root];
  token.lastIndex = 0;
  while (token.lastIndex < xml.length) {
    const start = token.lastIndex;
    const match = token.exec(xml);
    if (match === null) throw new Error(`Not well formed at ${start}: ${xml.slice(start, start + 60)}`);
    const [, closing, name, attributes, selfClosing, text] = match;
    const top = stack.at(-1);
    if (top === undefined) throw new Error('More is closed than was opened.');
    if (text !== undefined) {
      top.text += resolved(text);
    } else if (closing === '/') {
      if (top.name !== name) throw new Error(`${name} closes ${top.name}.`);
      stack.pop();
    } else {
      const opened: Opened = { name: name ?? '', attributes: attributesOf(attributes ?? ''), children: [], text: '' };
      top.children.push(opened);
      if (selfClosing !== '/') stack.push(opened);
    }
  }
  const [only, ...others] = root.children;
  if (stack.length !== 1 || only === undefined || others.length > 0) throw new Error('There must be one root, closed.');
  return only;
}

function attributesOf(text: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const [, name = '', value = ''] of text.matchAll(attribute)) {
    if (found.has(name)) throw new Error(`${name} stands twice.`);
    found.set(name, resolved(value));
  }
  return found;
}

function resolved(text: string): string {
  if (/&(?!(?:amp|lt|gt|quot|#39);)/.test(text)) throw new Error(`A bare & in ${text}`);
  return text.replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => entities[name] ?? '');
}

export const within = (element: Element): readonly Element[] => [element, ...element.children.flatMap(within)];

export const withClass = (element: Element, name: string): readonly Element[] =>
  within(element).filter(({ attributes }) => (attributes.get('class') ?? '').split(' ').includes(name));

export const allText = (element: Element): string => element.text + element.children.map(allText).join('');
