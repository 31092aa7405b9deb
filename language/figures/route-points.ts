/**
 * Points to lengths, bends and turns, and back again, by vectors.
 * Deflection at a point: angle between the legs. Turn: angle between the planes of two bends, seen along the leg between.
 */

import { type Si, si } from '../quantity/dimension.ts';
import { differenceOf, type Estimate, exactly, isKnown } from '../quantity/estimate.ts';
import { hairpin, setback } from './bend.ts';
import type { EstimatedPoint, RouteItem } from './route-items.ts';
import type { RouteProblem } from './route-problem.ts';
import { angleBetween, cross, dot, norm, plus, times, turnAbout, unit, type Vector } from './vector.ts';

/** A route in lengths and bends that stands for the points; each item knows the point it came from. */
export interface PointsRead {
  readonly items: readonly { readonly item: RouteItem; readonly from: number }[];
  readonly problems: readonly RouteProblem[];
}

type PointItem = Extract<RouteItem, { kind: 'point' }>;

interface Leg {
  readonly from: number;
  readonly to: number;
  readonly length: Estimate<'length'> | undefined;
  /** Nominal direction and how far (rad) the tolerances can swing it; undefined where a coordinate is not known. */
  readonly aim: { readonly direction: Vector; readonly swing: number } | undefined;
}

/** Straighter than this (rad) counts as straight on: 1 mm in 10 m. */
const straightOn = 1e-4;

/** Closer than this (m) counts as one point. */
const together = 1e-6;

/** Turns points into corner lengths, bends and turns. Points that add nothing are left out and reported. */
export function readPoints(points: readonly PointItem[]): PointsRead {
  const problems: RouteProblem[] = [];
  const legs = legsBetween(points, problems);
  const items: { item: RouteItem; from: number }[] = [];
  let lastNormal: Vector | undefined;
  let bentBefore = false;

  for (const [index, leg] of legs.entries()) {
    const before = legs[index - 1];
    const radius = points[leg.from]?.radius;
    if (before === undefined && radius !== undefined) problems.push({ kind: 'radius-at-end', item: leg.from });
    if (before !== undefined) {
      const angle = deflection(before, leg);
      if (angle !== undefined && angle.value < straightOn) {
        if (radius !== undefined) problems.push({ kind: 'radius-without-bend', item: leg.from });
      } else if (angle !== undefined && angle.value >= hairpin) {
        problems.push({ kind: 'doubles-back', item: leg.from });
        items.push({ item: { kind: 'bend', angle: undefined, radius }, from: leg.from });
        [lastNormal, bentBefore] = [undefined, true];
      } else {
        const normal = normalOf(before, leg);
        if (bentBefore)
          items.push({ item: { kind: 'turn', angle: turnOf(lastNormal, normal, before) }, from: leg.from });
        items.push({ item: { kind: 'bend', angle, radius }, from: leg.from });
        [lastNormal, bentBefore] = [normal, true];
      }
    }
    items.push({ item: { kind: 'corner', length: leg.length }, from: leg.to });
  }
  const last = legs.at(-1);
  if (last !== undefined && points[last.to]?.radius !== undefined) {
    problems.push({ kind: 'radius-at-end', item: last.to });
  }
  return { items, problems };
}

function legsBetween(points: readonly PointItem[], problems: RouteProblem[]): readonly Leg[] {
  const legs: Leg[] = [];
  let from = 0;
  for (const [to, end] of points.entries()) {
    const start = points[from];
    if (to === 0 || start === undefined) continue;
    const leg = legOf(start.point, end.point, from, to);
    if (leg.length !== undefined && leg.length.value < together) {
      problems.push({ kind: 'same-point', item: to });
      continue;
    }
    legs.push(leg);
    from = to;
  }
  return legs;
}

function legOf(start: EstimatedPoint, end: EstimatedPoint, from: number, to: number): Leg {
  const differences = start.flatMap((a, axis) => {
    const b = end[axis];
    return a !== undefined && b !== undefined && isKnown(a) && isKnown(b) ? [differenceOf(b, a)] : [];
  });
  const [dx, dy, dz] = differences;
  if (dx === undefined || dy === undefined || dz === undefined) return { from, to, length: undefined, aim: undefined };
  const direction: Vector = [dx.value, dy.value, dz.value];
  const farthest = (d: Estimate<'length'>) => Math.max(Math.abs(d.low), Math.abs(d.high));
  const nearest = (d: Estimate<'length'>) =>
    d.low <= 0 && d.high >= 0 ? 0 : Math.min(Math.abs(d.low), Math.abs(d.high));
  const slack = (d: Estimate<'length'>) => Math.max(d.value - d.low, d.high - d.value);
  const spread = norm([slack(dx), slack(dy), slack(dz)]);
  const length = {
    value: si('length', norm(direction)),
    low: si('length', Math.min(norm(direction), norm([nearest(dx), nearest(dy), nearest(dz)]))),
    high: si('length', Math.max(norm(direction), norm([farthest(dx), farthest(dy), farthest(dz)]))),
    about: differences.some(({ about }) => about),
    assumed: differences.some(({ assumed }) => assumed),
  };
  const swing = spread === 0 ? 0 : spread < length.value ? Math.asin(spread / length.value) : Math.PI;
  return { from, to, length, aim: { direction, swing } };
}

/** The bend between two legs; where the tolerances let it swing too far to bound, it is only `about`. */
function deflection(before: Leg, after: Leg): Estimate<'angle'> | undefined {
  if (before.aim === undefined || after.aim === undefined) return undefined;
  const value = angleBetween(before.aim.direction, after.aim.direction);
  const swing = before.aim.swing + after.aim.swing;
  const marks = marksOf([before, after]);
  const vague = value + swing >= hairpin && swing > 0;
  return {
    value: si('angle', value),
    low: si('angle', vague ? value : Math.max(0, value - swing)),
    high: si('angle', vague ? value : value + swing),
    ...marks,
    about: marks.about || vague,
  };
}

function normalOf(before: Leg, after: Leg): Vector | undefined {
  if (before.aim === undefined || after.aim === undefined) return undefined;
  return cross(unit(before.aim.direction), unit(after.aim.direction));
}

/** The roll from one bend's plane to the next about the leg between; with toleranced points no width is claimed for it. */
function turnOf(last: Vector | undefined, next: Vector | undefined, between: Leg): Estimate<'angle'> | undefined {
  if (last === undefined || next === undefined || between.aim === undefined) return undefined;
  const value = Math.atan2(dot(cross(last, next), unit(between.aim.direction)), dot(last, next));
  const marks = marksOf([between]);
  return { ...exactly(si('angle', value)), ...marks, about: marks.about || between.aim.swing > 0 };
}

function marksOf(legs: readonly Leg[]): { readonly about: boolean; readonly assumed: boolean } {
  return {
    about: legs.some(({ length }) => length?.about === true),
    assumed: legs.some(({ length }) => length?.assumed === true),
  };
}

/** A route as a bender works it: n bends between n + 1 straights, all known; lengths in m, angles in rad. */
export interface BentRoute {
  readonly straights: readonly Si<'length'>[];
  readonly bends: readonly {
    readonly angle: Si<'angle'>;
    readonly radius: Si<'length'>;
    /** Roll from the bend before; that of the first bend turns the whole route. */
    readonly rotation: Si<'angle'>;
  }[];
}

export interface RoutePoint {
  readonly point: readonly [Si<'length'>, Si<'length'>, Si<'length'>];
  /** Of the bend at this corner; none at the two ends. */
  readonly radius?: Si<'length'>;
}

/**
 * The ends and corners of a bent route that starts at the origin along x, its first bend turning to the left (towards
 * y) when that bend's rotation is zero. A bend of more than 120° becomes several corners with the same radius.
 */
export function pointsOfRoute(route: BentRoute): readonly RoutePoint[] {
  let here: Vector = [0, 0, 0];
  let along: Vector = [1, 0, 0];
  let normal: Vector = [0, 0, 1];
  const points: RoutePoint[] = [{ point: pointAt(here) }];
  let owed = 0; // from the last corner to the tangent point behind it

  for (const [index, bend] of route.bends.entries()) {
    normal = turnAbout(normal, along, bend.rotation);
    const parts = Math.max(1, Math.ceil(bend.angle / ((2 * Math.PI) / 3) - 1e-9));
    const angle = si('angle', bend.angle / parts);
    const back = setback(bend.radius, angle);
    for (let part = 0; part < parts; part += 1) {
      const straight = part === 0 ? (route.straights[index] ?? 0) : 0;
      here = plus(here, times(along, owed + straight + back));
      points.push({ point: pointAt(here), radius: bend.radius });
      along = turnAbout(along, normal, angle);
      owed = back;
    }
  }
  points.push({ point: pointAt(plus(here, times(along, owed + (route.straights.at(route.bends.length) ?? 0)))) });
  return points;
}

const pointAt = ([x, y, z]: Vector): RoutePoint['point'] => [si('length', x), si('length', y), si('length', z)];
