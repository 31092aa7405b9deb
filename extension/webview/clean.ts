/** Reads the text of a picture or sheet into elements and leaves out whatever could run, load or style: a second fence behind the server's. */
const forbidden = new Set(['script', 'style', 'foreignobject', 'iframe', 'image', 'a', 'animate', 'set', 'use']);

/** Undefined if the text is not an SVG picture. */
export function readPicture(text: string): SVGSVGElement | undefined {
  const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  if (!(root instanceof SVGSVGElement) || root.querySelector('parsererror') !== null) return undefined;
  for (const element of [root, ...root.querySelectorAll('*')]) clean(element);
  return root;
}

/** The sheet in its page's markup; undefined if there is none. */
export function readBody(text: string): HTMLElement | undefined {
  const root = new DOMParser().parseFromString(text, 'text/html').querySelector('main');
  if (root === null) return undefined;
  for (const element of [root, ...root.querySelectorAll('*')]) clean(element);
  return root;
}

function clean(element: Element): void {
  if (forbidden.has(element.localName.toLowerCase())) {
    element.remove();
    return;
  }
  for (const { name, value } of [...element.attributes]) {
    if (/^on/i.test(name) || name === 'style' || (/href$/i.test(name) && !value.startsWith('#'))) {
      element.removeAttribute(name);
    }
  }
}
