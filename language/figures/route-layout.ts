/** Puts a route's items in order: what lies between the bends, what each bend is, and what is missing or cannot be. */

import { type Si, si } from '../quantity/dimension.ts';
import { combineEstimates, type Estimate, exactly, isKnown, sumEstimates } from '../quantity/estimate.ts';
import { hairpin } from './bend.ts';
import type { RouteItem } from './route-items.ts';
import { readPoints } from './route-points.ts';
import type { RouteProblem } from './route-problem.ts';

/** What has to be known before a length can be given. */
export interface RouteMissing {
  readonly item: number;
  readonly what: 'length' | 'angle' | 'radius' | 'turns' | 'diameter' | 'place';
}

export interface LaidCoil {
  readonly item: number;
  readonly length: Estimate<'length'> | undefined;
}

/** What lies between two bends, or between a bend and an end. */
export interface Span {
  /** The item that its length is said in; for an empty span that of the bend before it. */
  readonly item: number;
  /** Whether its length reaches to the corners of the bends beside it instead of to their tangents. */
  readonly toCorner: boolean;
  /** As stated, without coils. */
  readonly length: Estimate<'length'> | undefined;
  readonly coils: readonly LaidCoil[];
}

export interface LaidBend {
  readonly item: number;
  readonly angle: Estimate<'angle'> | undefined;
  readonly radius: Estimate<'length'> | undefined;
  readonly radiusFrom: 'route' | 'default' | 'nowhere';
  readonly rotation: Estimate<'angle'> | undefined;
  /** How many of its two spans are measured to its corner. */
  readonly cornerLegs: 0 | 1 | 2;
}

export interface Layout {
  /** One more than there are bends; none for a route that says nothing. */
  readonly spans: readonly Span[];
  readonly bends: readonly LaidBend[];
  readonly missing: readonly RouteMissing[];
  readonly problems: readonly RouteProblem[];
}

interface Placed {
  readonly item: RouteItem;
  readonly from: number;
}

/** Lays out a route; `bendRadius` stands for the bends that state no radius. */
export function layOut(items: readonly RouteItem[], bendRadius: Estimate<'length'> | undefined): Layout {
  const pointed = items.findIndex(({ kind }) => kind === 'point');
  const measured = items.findIndex(({ kind }) => kind !== 'point');
  if (items.length === 0) return nothing({ kind: 'empty-route', item: 0 });
  const beyond = items.findIndex((item) => sizesOf(item, bendRadius).some(isBeyondReason));
  if (beyond >= 0) return nothing({ kind: 'beyond-reason', item: beyond });
  if (pointed >= 0 && measured >= 0) return nothing({ kind: 'points-with-lengths', item: Math.max(pointed, measured) });
  if (pointed < 0)
    return layOutLengths(
      items.map((item, from) => ({ item, from })),
      bendRadius,
    );

  const points = items.flatMap((item) => (item.kind === 'point' ? [item] : []));
  if (points.length === 1) return nothing({ kind: 'one-point', item: 0 });
  const read = readPoints(points);
  const layout = layOutLengths(read.items, bendRadius);
  const places = points.flatMap(({ point }, item) =>
    point.every((coordinate) => coordinate !== undefined && isKnown(coordinate))
      ? []
      : [{ item, what: 'place' as const }],
  );
  // Lengths and angles are missing only because places are.
  const missing = [...places, ...layout.missing.filter(({ what }) => what === 'radius')];
  return { ...layout, missing, problems: [...read.problems, ...layout.problems] };
}

function sizesOf(item: RouteItem, bendRadius: Estimate<'length'> | undefined): readonly (Estimate | undefined)[] {
  switch (item.kind) {
    case 'straight':
    case 'corner':
      return [item.length];
    case 'bend':
      return [item.radius ?? bendRadius];
    case 'turn':
      return [item.angle];
    case 'coil':
      return [item.turns, item.diameter];
    case 'point':
      return [...item.point, item.radius];
  }
}

/** Over 1 km, 1000 rad or 1000 turns: arithmetic on such sizes soon leaves the numbers, and no tube on a vehicle has them. */
function isBeyondReason(size: Estimate | undefined): boolean {
  return size !== undefined && isKnown(size) && Math.max(Math.abs(size.low), Math.abs(size.high)) > 1000;
}

const nothing = (problem: RouteProblem): Layout => ({ spans: [], bends: [], missing: [], problems: [problem] });

type RawBend = Omit<LaidBend, 'cornerLegs'>;

function layOutLengths(placed: readonly Placed[], bendRadius: Estimate<'length'> | undefined): Layout {
  const missing: RouteMissing[] = [];
  const problems: RouteProblem[] = [];
  const spans: Span[] = [];
  const bends: RawBend[] = [];
  let between: Placed[] = [];

  const closeSpan = (last: 'last' | 'before-bend') => {
    const outermost = bends.length === 0 || last === 'last';
    const turns = between.filter(({ item }) => item.kind === 'turn');
    const [stray] = turns;
    if (outermost && stray) problems.push({ kind: 'turn-without-two-bends', item: stray.from });
    spans.push(spanOf(between, bends.at(-1)?.item ?? 0, missing, problems));
    const rotation = outermost ? exactly(si('angle', 0)) : rotationOf(turns, missing);
    between = [];
    return rotation;
  };

  for (const { item, from } of placed) {
    if (item.kind !== 'bend') {
      between.push({ item, from });
      continue;
    }
    const rotation = closeSpan('before-bend');
    bends.push({ item: from, rotation, ...shapeOf(item, from, bendRadius, missing, problems) });
  }
  closeSpan('last');
  if (bends.length === 0 && spans.every(({ length, coils }) => length?.value === 0 && coils.length === 0)) {
    problems.push({ kind: 'empty-route', item: 0 });
    return { spans: [], bends: [], missing, problems };
  }
  return {
    spans,
    bends: bends.map((bend, index) => withLegs(bend, spans[index], spans[index + 1], problems)),
    missing,
    problems,
  };
}

/** The corner of a bend that goes (nearly) back lies nowhere; such a bend cannot be worked with beside a corner length. */
function withLegs(
  bend: RawBend,
  before: Span | undefined,
  after: Span | undefined,
  problems: RouteProblem[],
): LaidBend {
  const legs = [before, after].filter((span) => span?.toCorner === true).length;
  const cornerLegs = legs === 2 ? 2 : legs === 1 ? 1 : 0;
  if (legs === 0 || bend.angle === undefined || bend.angle.high < hairpin) return { ...bend, cornerLegs };
  problems.push({ kind: 'corner-at-hairpin', item: bend.item, angle: bend.angle.value });
  return { ...bend, angle: undefined, cornerLegs };
}

function spanOf(between: readonly Placed[], fallback: number, missing: RouteMissing[], problems: RouteProblem[]): Span {
  const lengths: (Estimate<'length'> | undefined)[] = [];
  const coils: LaidCoil[] = [];
  const kinds = new Set<'straight' | 'corner'>();
  let said: number | undefined;
  for (const { item, from } of between) {
    if (item.kind === 'coil') coils.push({ item: from, length: coilLength(item, from, missing, problems) });
    if (item.kind !== 'straight' && item.kind !== 'corner') continue;
    said ??= from;
    if (kinds.size > 0 && !kinds.has(item.kind)) problems.push({ kind: 'corner-with-straight', item: from });
    kinds.add(item.kind);
    lengths.push(statedLength(item.length, from, missing, problems));
  }
  const known = lengths.flatMap((length) => length ?? []);
  const whole = kinds.size < 2 && known.length === lengths.length;
  return {
    item: said ?? fallback,
    toCorner: kinds.has('corner'),
    length: whole ? sumEstimates('length', known) : undefined,
    coils,
  };
}

function statedLength(
  length: Estimate<'length'> | undefined,
  item: number,
  missing: RouteMissing[],
  problems: RouteProblem[],
): Estimate<'length'> | undefined {
  if (length === undefined || !isKnown(length)) {
    missing.push({ item, what: 'length' });
    return undefined;
  }
  if (length.value === 0) problems.push({ kind: 'zero-length', item });
  if (length.value >= 0) return length;
  problems.push({ kind: 'negative-length', item, length: length.value });
  return undefined;
}

/** Turns of the tube's centre line; the rise from turn to turn is left out (0.1 % of a close-wound coil). */
function coilLength(
  coil: Extract<RouteItem, { kind: 'coil' }>,
  item: number,
  missing: RouteMissing[],
  problems: RouteProblem[],
): Estimate<'length'> | undefined {
  const { turns, diameter } = coil;
  if (turns === undefined || !isKnown(turns)) missing.push({ item, what: 'turns' });
  if (diameter === undefined || !isKnown(diameter)) missing.push({ item, what: 'diameter' });
  if ((turns && turns.value <= 0) || (diameter && diameter.value <= 0)) {
    problems.push({ kind: 'empty-coil', item });
    return undefined;
  }
  if (turns === undefined || diameter === undefined || !isKnown(turns) || !isKnown(diameter)) return undefined;
  const around = (count: Si<'number'>, across: Si<'length'>) => count * Math.PI * across;
  return combineEstimates('length', around, turns, diameter);
}

function rotationOf(turns: readonly Placed[], missing: RouteMissing[]): Estimate<'angle'> | undefined {
  const angles = turns.map(({ item, from }) => {
    const angle = item.kind === 'turn' ? item.angle : undefined;
    if (angle !== undefined && isKnown(angle)) return angle;
    missing.push({ item: from, what: 'angle' });
    return undefined;
  });
  const known = angles.flatMap((angle) => angle ?? []);
  return known.length === angles.length ? sumEstimates('angle', known) : undefined;
}

function shapeOf(
  bend: Extract<RouteItem, { kind: 'bend' }>,
  item: number,
  bendRadius: Estimate<'length'> | undefined,
  missing: RouteMissing[],
  problems: RouteProblem[],
): Pick<LaidBend, 'angle' | 'radius' | 'radiusFrom'> {
  const angle = bendAngle(bend.angle, item, missing, problems);
  const radius = bend.radius ?? bendRadius;
  const radiusFrom = bend.radius !== undefined ? 'route' : bendRadius !== undefined ? 'default' : 'nowhere';
  if (radius === undefined || !isKnown(radius)) {
    missing.push({ item, what: 'radius' });
    return { angle, radius: undefined, radiusFrom: 'nowhere' };
  }
  if (radius.value > 0) return { angle, radius, radiusFrom };
  problems.push({ kind: 'radius-not-positive', item, radius: radius.value });
  return { angle, radius: undefined, radiusFrom };
}

function bendAngle(
  angle: Estimate<'angle'> | undefined,
  item: number,
  missing: RouteMissing[],
  problems: RouteProblem[],
): Estimate<'angle'> | undefined {
  if (angle === undefined || !isKnown(angle)) {
    missing.push({ item, what: 'angle' });
    return undefined;
  }
  if (angle.value > 0 && angle.value <= 2 * Math.PI + 1e-9) return angle;
  const { value } = angle;
  if (value === 0) problems.push({ kind: 'no-angle', item });
  else if (value < 0) problems.push({ kind: 'negative-angle', item, angle: value });
  else problems.push({ kind: 'more-than-a-turn', item, angle: value });
  return undefined;
}
