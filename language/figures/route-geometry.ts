/**
 * Develops a route: what each straight is from tangent to tangent, where each bend starts, how long the centre line is.
 * Developed length Σ l + Σ R θ; a length taken to a corner is longer than its straight by the setback R tan(θ/2)
 * (Machinery's Handbook, from memory; vectors for points). Spring-back and stretch of the tube are left out.
 */

import { si } from '../quantity/dimension.ts';
import { type Estimate, exactly, isKnown, scaleEstimate, sumEstimates } from '../quantity/estimate.ts';
import { arcOf, bendShare, setbackOf } from './bend.ts';
import type { RouteItem } from './route-items.ts';
import { type LaidBend, type LaidCoil, layOut, type RouteMissing, type Span } from './route-layout.ts';
import type { RouteProblem } from './route-problem.ts';

export type { EstimatedPoint, RouteItem } from './route-items.ts';
export type { RouteMissing } from './route-layout.ts';

type Length = Estimate<'length'> | undefined;

export interface DevelopedBend {
  /** The route's item that made it: a bend, or the point at its corner. */
  readonly item: number;
  /** Along the centre line from the first flare face to where the bend begins. */
  readonly start: Length;
  readonly angle: Estimate<'angle'> | undefined;
  readonly radius: Length;
  readonly radiusFrom: 'route' | 'default' | 'nowhere';
  /** Roll of the bend's plane from that of the bend before; zero for the first. */
  readonly rotation: Estimate<'angle'> | undefined;
  readonly arc: Length;
}

export interface Development {
  /** One more than there are bends; from tangent to tangent, without coils. */
  readonly straights: readonly Length[];
  readonly bends: readonly DevelopedBend[];
  readonly coils: readonly LaidCoil[];
  /** Flare face to flare face; undefined while something is missing or cannot be. */
  readonly centrelineLength: Length;
  readonly missing: readonly RouteMissing[];
  readonly problems: readonly RouteProblem[];
}

export interface DevelopOptions {
  /** The radius of bends that state none; without it they are missing. */
  readonly bendRadius?: Estimate<'length'> | undefined;
}

const zero = exactly(si('length', 0));

/** Develops a route, in m and rad. Never throws: what is not known or cannot be is left undefined and named. */
export function developRoute(items: readonly RouteItem[], options: DevelopOptions = {}): Development {
  const { spans, bends, missing, problems } = layOut(items, options.bendRadius);
  const overlaps: RouteProblem[] = [];
  const straights: Length[] = [];
  const developed: DevelopedBend[] = [];
  let reached: Length = spans.length > 0 ? zero : undefined;

  for (const [index, span] of spans.entries()) {
    const bend = bends[index];
    const straight = straightOf(span, bends[index - 1], bend, overlaps);
    straights.push(straight);
    const spanLength = straight === undefined ? undefined : span.length;
    reached = sum([reached, spanLength, ...span.coils.map(({ length }) => length)]);
    if (bend === undefined) continue;
    const start = span.toCorner ? sum([reached, back(bend)]) : reached;
    const { cornerLegs, ...shape } = bend;
    const { angle, radius } = bend;
    const known = angle !== undefined && radius !== undefined;
    developed.push({ ...shape, start, arc: known ? arcOf(radius, angle) : undefined });
    reached = sum([reached, known ? bendShare(radius, angle, cornerLegs) : undefined]);
  }
  return {
    straights,
    bends: developed,
    coils: spans.flatMap(({ coils }) => coils),
    centrelineLength: reached,
    missing: [...missing].sort((a, b) => a.item - b.item),
    problems: [...problems, ...overlaps].sort((a, b) => a.item - b.item),
  };
}

/** A corner length loses a setback to each bend beside it; when they want more than there is, nothing is left. */
function straightOf(
  span: Span,
  before: LaidBend | undefined,
  after: LaidBend | undefined,
  overlaps: RouteProblem[],
): Length {
  if (!span.toCorner) return span.length;
  const beside = [before, after].flatMap((bend) => (bend ? [back(bend)] : []));
  const left = sum([span.length, ...beside]);
  if (left === undefined || span.length === undefined) return undefined;
  if (left.value >= -1e-9) return left;
  const { value: available } = span.length;
  overlaps.push({ kind: 'bends-overlap', item: span.item, available, needed: si('length', available - left.value) });
  return undefined;
}

/** The setback of a bend, taken away. */
function back({ radius, angle }: LaidBend): Length {
  return radius !== undefined && angle !== undefined ? scaleEstimate(setbackOf(radius, angle), -1) : undefined;
}

/** Undefined as soon as one of them is not known. */
function sum(lengths: readonly Length[]): Length {
  const known = lengths.flatMap((length) => length ?? []);
  const total = sumEstimates('length', known);
  return known.length === lengths.length && isKnown(total) ? total : undefined;
}
