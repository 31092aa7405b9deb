/** The drawn way of each line: rounded bends, a hop over what it crosses, and the bow of a flexible line. */
import type { PlacedLine } from '../placed.ts';
import type { Point } from '../symbols/drawing.ts';
import { digits } from './markup.ts';

const bend = 6;
const hop = 5;
const bow = 16;
const bowInset = 5;

/** Path data by line, in the order of `lines`. */
export function pipePaths(lines: readonly PlacedLine[]): readonly string[] {
  const risers = lines.flatMap(({ points, line }, owner) =>
    line.kind === 'mechanical' ? [] : uprights(points, owner),
  );
  return lines.map((placed, owner) => pipePath(placed, owner, risers));
}

interface Upright {
  readonly owner: number;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

function uprights(points: readonly Point[], owner: number): readonly Upright[] {
  return pairs(points).flatMap(([a, b]) =>
    a.x === b.x ? [{ owner, x: a.x, top: Math.min(a.y, b.y), bottom: Math.max(a.y, b.y) }] : [],
  );
}

const pairs = (points: readonly Point[]): readonly (readonly [Point, Point])[] =>
  points.slice(1).map((point, i) => [points[i] ?? point, point]);

function pipePath({ points, carrier, line }: PlacedLine, owner: number, risers: readonly Upright[]): string {
  const [first] = points;
  if (first === undefined) return '';
  const parts = [`M${digits(first.x)} ${digits(first.y)}`];
  for (const [i, [a, b]] of pairs(points).entries()) {
    const after = points[i + 2];
    const radius = after === undefined ? 0 : Math.min(bend, distance(a, b) / 2, distance(b, after) / 2);
    const stop = toward(b, a, radius);
    if (a.y === b.y) parts.push(...hops(a, stop, owner, risers));
    else if (line.kind === 'hose' && carrier !== undefined && carrier.x === a.x && within(carrier, a, b)) {
      parts.push(bowed(a, b, carrier));
    }
    parts.push(`L${digits(stop.x)} ${digits(stop.y)}`);
    if (after !== undefined && radius > 0) {
      const leave = toward(b, after, radius);
      parts.push(`Q${digits(b.x)} ${digits(b.y)} ${digits(leave.x)} ${digits(leave.y)}`);
    }
  }
  return parts.join('');
}

const distance = (a: Point, b: Point) => Math.abs(a.x - b.x) + Math.abs(a.y - b.y);

/** The point `far` pixels from `from` in the direction of `to`. */
function toward(from: Point, to: Point, far: number): Point {
  const length = distance(from, to);
  if (length === 0) return from;
  return { x: from.x + ((to.x - from.x) / length) * far, y: from.y + ((to.y - from.y) / length) * far };
}

function hops(a: Point, stop: Point, owner: number, risers: readonly Upright[]): readonly string[] {
  const way = Math.sign(stop.x - a.x);
  const [low, high] = [Math.min(a.x, stop.x), Math.max(a.x, stop.x)];
  const over = risers
    .filter((riser) => riser.owner !== owner && riser.top < a.y - 1 && riser.bottom > a.y + 1)
    .map((riser) => riser.x)
    .filter((x) => x - low > hop + bend && high - x > hop)
    .sort((p, q) => (p - q) * way);
  let last = Number.NEGATIVE_INFINITY;
  return over.flatMap((x) => {
    if (Math.abs(x - last) < hop * 2) return [];
    last = x;
    const start = x - way * hop;
    return [`L${digits(start)} ${digits(a.y)}a${hop} ${hop} 0 0 ${way > 0 ? 1 : 0} ${digits(way * hop * 2)} 0`];
  });
}

type Carrier = NonNullable<PlacedLine['carrier']>;

const within = (carrier: Carrier, a: Point, b: Point) =>
  Math.min(a.y, b.y) <= carrier.top && Math.max(a.y, b.y) >= carrier.bottom;

/** The ends of the bow of a flexible line, which carry its dots. */
export function bowEnds(carrier: Carrier): readonly [Point, Point] {
  return [
    { x: carrier.x, y: carrier.top + bowInset },
    { x: carrier.x, y: carrier.bottom - bowInset },
  ];
}

function bowed(a: Point, b: Point, carrier: Carrier): string {
  const [upper, lower] = bowEnds(carrier);
  const [first, second] = a.y < b.y ? [upper, lower] : [lower, upper];
  const middle = (carrier.top + carrier.bottom) / 2;
  return `L${digits(first.x)} ${digits(first.y)}Q${digits(carrier.x + (carrier.words === 'left' ? bow : -bow))} ${digits(middle)} ${digits(second.x)} ${digits(second.y)}`;
}
