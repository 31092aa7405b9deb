/** Walking along the lines with the arrow keys: which neighbour lies in the direction that was pressed. No DOM. */
import type { Direction } from './keys.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Neighbour {
  readonly id: string;
  readonly at: Point;
}

const along: Readonly<Record<Direction, Point>> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  up: { x: 0, y: -1 },
  down: { x: 0, y: 1 },
};

/** The neighbour whose direction is nearest to the one asked for; none if all lie more than 75° off it. */
export function neighbourTowards(
  from: Point,
  direction: Direction,
  neighbours: readonly Neighbour[],
): Neighbour | undefined {
  let best: Neighbour | undefined;
  let bestCosine = Math.cos((75 * Math.PI) / 180);
  for (const neighbour of neighbours) {
    const cosine = cosineTo(from, neighbour.at, along[direction]);
    if (cosine > bestCosine) {
      best = neighbour;
      bestCosine = cosine;
    }
  }
  return best;
}

function cosineTo(from: Point, to: Point, direction: Point): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(x, y);
  return length === 0 ? -1 : (x * direction.x + y * direction.y) / length;
}
