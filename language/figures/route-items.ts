/** What a route is made of, ready to compute with; undefined stands for what the writer does not know yet. */

import type { Estimate } from '../quantity/estimate.ts';

type Maybe<T> = T | undefined;

/** In the axes of ISO 8855: x forward, y to the left, z up. */
export type EstimatedPoint = readonly [Maybe<Estimate<'length'>>, Maybe<Estimate<'length'>>, Maybe<Estimate<'length'>>];

/**
 * `straight` runs from tangent to tangent, `corner` is a tape's reading from corner to corner (or end to corner).
 * `turn` rolls the plane of the next bend about the tube, positive by the right hand along the way to go. `coil` takes
 * the diameter of its centre line. A route of points is made of points alone; a radius belongs to the bend at the point.
 */
export type RouteItem =
  | { readonly kind: 'straight'; readonly length: Maybe<Estimate<'length'>> }
  | { readonly kind: 'corner'; readonly length: Maybe<Estimate<'length'>> }
  | { readonly kind: 'bend'; readonly angle: Maybe<Estimate<'angle'>>; readonly radius?: Maybe<Estimate<'length'>> }
  | { readonly kind: 'turn'; readonly angle: Maybe<Estimate<'angle'>> }
  | { readonly kind: 'coil'; readonly turns: Maybe<Estimate<'number'>>; readonly diameter: Maybe<Estimate<'length'>> }
  | { readonly kind: 'point'; readonly point: EstimatedPoint; readonly radius?: Maybe<Estimate<'length'>> };

export type RouteItemKind = RouteItem['kind'];
