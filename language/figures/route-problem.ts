/** What can be wrong with a route, and how to say it in the writer's units. */

import { subtract } from '../quantity/arithmetic.ts';
import type { Si } from '../quantity/dimension.ts';

/** `item` counts the route's items from 0. */
export type RouteProblem = { readonly item: number } & (
  | { readonly kind: 'empty-route' }
  | { readonly kind: 'beyond-reason' }
  | { readonly kind: 'one-point' }
  | { readonly kind: 'points-with-lengths' }
  | { readonly kind: 'corner-with-straight' }
  | { readonly kind: 'zero-length' }
  | { readonly kind: 'negative-length'; readonly length: Si<'length'> }
  | { readonly kind: 'radius-not-positive'; readonly radius: Si<'length'> }
  | { readonly kind: 'no-angle' }
  | { readonly kind: 'negative-angle'; readonly angle: Si<'angle'> }
  | { readonly kind: 'more-than-a-turn'; readonly angle: Si<'angle'> }
  | { readonly kind: 'corner-at-hairpin'; readonly angle: Si<'angle'> }
  | { readonly kind: 'bends-overlap'; readonly available: Si<'length'>; readonly needed: Si<'length'> }
  | { readonly kind: 'turn-without-two-bends' }
  | { readonly kind: 'empty-coil' }
  | { readonly kind: 'same-point' }
  | { readonly kind: 'doubles-back' }
  | { readonly kind: 'radius-without-bend' }
  | { readonly kind: 'radius-at-end' }
);

export interface RouteWriter {
  length(value: Si<'length'>): string;
  angle(value: Si<'angle'>): string;
}

/** The problem in plain words, with what to do next. */
export function sayRouteProblem(problem: RouteProblem, write: RouteWriter): string {
  switch (problem.kind) {
    case 'empty-route':
      return 'This route says nothing of a length. Give straights and bends, corner lengths, points, or one length.';
    case 'beyond-reason':
      return 'No line on a vehicle is this large. Look at the unit and at the place of the decimal point.';
    case 'one-point':
      return 'One point makes no route. Give the point at the other end too.';
    case 'points-with-lengths':
      return 'This route mixes points with lengths or bends. Give all of it in points or none.';
    case 'corner-with-straight':
      return 'Between two bends this route mixes corner and straight lengths, so where they meet cannot be told. Use one of the two.';
    case 'zero-length':
      return 'This length is zero. Leave it out, or measure it.';
    case 'negative-length':
      return `A length of ${write.length(problem.length)} cannot be. Lengths along a tube are more than zero.`;
    case 'radius-not-positive':
      return `A bend radius of ${write.length(problem.radius)} cannot be. Give the radius to the centre line of the tube.`;
    case 'no-angle':
      return 'A bend of no angle is straight tube. Leave it out, or give its angle.';
    case 'negative-angle':
      return `A bend of ${write.angle(problem.angle)} cannot be. Give the angle without a sign and say the way with a turn of half a circle.`;
    case 'more-than-a-turn':
      return `A bend of ${write.angle(problem.angle)} goes more than once round. Write it as a coil.`;
    case 'corner-at-hairpin':
      return `The legs of a bend of ${write.angle(problem.angle)} have no corner to measure to. Give straights from tangent to tangent.`;
    case 'bends-overlap':
      return `There are ${write.length(problem.available)} from corner to corner here, and the bends take ${write.length(problem.needed)} of it: they overlap by ${write.length(subtract(problem.needed, problem.available))}. Bend tighter or move a corner.`;
    case 'turn-without-two-bends':
      return 'This turn has no bend on both sides of it, so there is nothing to turn against. Leave it out.';
    case 'empty-coil':
      return 'A coil needs turns and a diameter that are more than zero.';
    case 'same-point':
      return 'This point is the same as the one before it. Leave it out.';
    case 'doubles-back':
      return 'At this point the route goes back the way it came, which no bend can do. Check the points beside it.';
    case 'radius-without-bend':
      return 'The route runs straight through this point, so there is no bend and its radius says nothing. Leave it out, or check the point.';
    case 'radius-at-end':
      return 'There is no bend at the end of a route, so this radius says nothing. Leave it out.';
  }
}
