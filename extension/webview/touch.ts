/** Which part was meant by a click: the one under the pointer, else the nearest within reach of a finger. */

/** Targets are at least 24 CSS pixels wide at any zoom, however thin the line. */
const reach = 12;

const around = [0, 45, 90, 135, 180, 225, 270, 315].map((degrees) => (degrees * Math.PI) / 180);

export function partAt(x: number, y: number): string | undefined {
  for (const distance of [0, reach / 2, reach]) {
    for (const angle of distance === 0 ? [0] : around) {
      const hit = document.elementFromPoint(x + distance * Math.cos(angle), y + distance * Math.sin(angle));
      const id = partOf(hit);
      if (id !== undefined) return id;
    }
  }
  return undefined;
}

/** The part that an element of the picture belongs to. */
export function partOf(element: Element | null): string | undefined {
  return element?.closest('[data-id]')?.getAttribute('data-id') ?? undefined;
}
