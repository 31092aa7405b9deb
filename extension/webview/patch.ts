/** Changes a drawn picture into the next one in place, so that nothing flickers and what has the focus keeps it. */

/** Makes `live` equal to `next`; elements with the same `data-id` or `id` stay the same elements wherever they move. */
export function patch(live: Element, next: Element): void {
  patchAttributes(live, next);
  const keyed = new Map<string, Element>();
  for (const child of live.children) {
    const key = keyOf(child);
    if (key !== undefined) keyed.set(key, child);
  }
  let place: ChildNode | null = live.firstChild;
  for (const wanted of next.childNodes) {
    const match = findMatch(place, wanted, keyed);
    if (match === undefined) {
      live.insertBefore(document.importNode(wanted, true), place);
    } else {
      if (match === place) place = match.nextSibling;
      else live.insertBefore(match, place);
      patchNode(match, wanted);
    }
  }
  while (place !== null) {
    const after: ChildNode | null = place.nextSibling;
    place.remove();
    place = after;
  }
}

function findMatch(
  place: ChildNode | null,
  wanted: ChildNode,
  keyed: ReadonlyMap<string, Element>,
): ChildNode | undefined {
  const key = keyOf(wanted);
  if (key !== undefined) {
    const same = keyed.get(key);
    return same?.nodeName === wanted.nodeName ? same : undefined;
  }
  if (place === null || place.nodeName !== wanted.nodeName || keyOf(place) !== undefined) return undefined;
  return place;
}

function patchNode(live: ChildNode, next: ChildNode): void {
  if (live instanceof Element && next instanceof Element) patch(live, next);
  else if (live.nodeValue !== next.nodeValue) live.nodeValue = next.nodeValue;
}

function patchAttributes(live: Element, next: Element): void {
  for (const { name } of [...live.attributes]) if (!next.hasAttribute(name)) live.removeAttribute(name);
  for (const { name, value } of next.attributes) if (live.getAttribute(name) !== value) live.setAttribute(name, value);
}

function keyOf(node: Node): string | undefined {
  if (!(node instanceof Element)) return undefined;
  return node.getAttribute('data-id') ?? node.getAttribute('id') ?? undefined;
}
