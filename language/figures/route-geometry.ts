/**
 * Develops a route: what each straight is from tangent to tangent, where each bend starts, how long the centre line is.
 * Developed length Σ l + Σ R θ; a length taken to a corner is longer than its straight by the setback R tan(θ/2)
 * (Machinery's Handbook, from memory; vectors for points). Spring-back and stretch of the tube are left out.
 */

import { si } from '../quantity/dimension.ts';
import { type Estimate, exactly, isKnown, mapEstimate, combineEstimates, sumEstimates } from '../quantity/estimate.ts';
import { arcOf, bendShare, hairpin, setbackOf } from './bend.ts';
import type { RouteItem } from './route-items.ts';
import { readPoints } from './route-points.ts';
import type { RouteProblem } from './route-problem.ts';

type Length = Estimate<'length'> | undefined;
type Angle = Estimate<'angle'> | undefined;

export interface DevelopedBend {
  /** The route's item that made it: a bend, or the point at its corner. */
  readonly item: number;
  /** Along the centre line from the first flare face to where the bend begins. */
  readonly start: Length;
  readonly angle: Angle;
  readonly radius: Length;
  readonly radiusFrom: 'route' | 'default' | 'nowhere';
  /** Roll of the bend's plane from that of the bend before; zero for the first. */
  readonly rotation: Angle;
  readonly arc: Length;
}

export interface DevelopedCoil {
  readonly item: number;
  readonly length: Length;
}

/** What has to be known before a length can be given. */
export interface RouteMissing {
  readonly item: number;
  readonly what: 'length' | 'angle' | 'radius' | 'turns' | 'diameter' | 'place';
}

export interface Development {
  /** One more than there are bends; tangent to tangent, without coils. */
  readonly straights: readonly Length[];
  readonly bends: readonly DevelopedBend[];
  readonly coils: readonly DevelopedCoil[];
  /** Flare face to flare face; undefined while something is missing or wrong. */
  readonly centrelineLength: Length;
  readonly missing: readonly RouteMissing[];
  readonly problems: readonly RouteProblem[];
}

export interface DevelopOptions {
  /** The radius of bends that state none; without it they are missing. */
  readonly bendRadius?: Estimate<'length'> | undefined;
}

/** Develops a route; never throws. Whatever is not known or cannot be is left undefined and named. */
export function developRoute(items: readonly RouteItem[], options: DevelopOptions = {}): Development {
  const read = readItems(items);
  const bendRadius = options.bendRadius && isKnown(options.bendRadius) ? options.bendRadius : undefined;
  const layout = layOut(read.items, bendRadius);
  const problems = [...read.problems, ...layout.problems];
  const missing = [...read.missing, ...layout.missing].sort((a, b) => a.item - b.item);
  const spanned = layout.spans.length > 0 && read.usable;
  if (!spanned) return { straights: [], bends: [], coils: [], centrelineLength: undefined, missing, problems };

  const bends: DevelopedBend[] = [];
  const straights: Length[] = [];
  let reached: Length = exactly(si('length', 0));
  for (const [index, span] of layout.spans.entries()) {
    const [before, after] = [layout.bends[index - 1], layout.bends[index]];
    const straight = straightOf(span, before, after, problems);
    straights.push(straight);
    // An overlap spoils all that lies beyond it.
    reached = straight === undefined ? undefined : sum([reached, span.length, ...span.coils.map((coil) => coil.length)]);
    if (after === undefined) continue;
    const next = layout.spans[index + 1];
    const legs = cornerLegs(span, next);
    const { angle, radius } = legs > 0 ? withoutHairpin(after, problems) : after;
    const ready = angle !== undefined && radius !== undefined;
    const arc = ready ? arcOf(radius, angle) : undefined;
    const start = sum([reached, span.toCorner ? (ready ? less(setbackOf(radius, angle)) : undefined) : nothing]);
    bends.push({ ...after, start, arc });
    reached = sum([reached, ready ? bendShare(radius, angle, legs) : undefined]);
  }
  const coils = layout.spans.flatMap((span) => span.coils);
  return { straights, bends, coils, centrelineLength: reached, missing, problems: inOrder(problems) };
}
