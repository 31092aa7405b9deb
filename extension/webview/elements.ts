/** The fixed elements of the page. A missing one is our own mistake and stops the page. */
export function elementOf<E extends Element>(id: string, kind: new () => E): E {
  const found = document.getElementById(id);
  if (!(found instanceof kind)) throw new Error(`The page has no ${kind.name} #${id}.`);
  return found;
}
