/** Turns routes and positions to the other side of the vehicle: what went left goes right. */
import type { Dimension, Known, Stated } from '../../quantity/index.ts';
import { scale } from '../../quantity/index.ts';
import type { Point, Position, Route } from '../route.ts';

function otherWay<D extends Dimension>(stated: Stated<D>): Stated<D> {
  if (stated.kind === 'unknown') return stated;
  if (stated.kind === 'assumed') return { kind: 'assumed', assumption: otherWayKnown(stated.assumption) };
  return otherWayKnown(stated);
}

function otherWayKnown<D extends Dimension>(known: Known<D>): Known<D> {
  switch (known.kind) {
    case 'exact':
    case 'about':
      return { ...known, value: scale(known.value, -1) };
    case 'toleranced':
      return { ...known, value: scale(known.value, -1), low: scale(known.high, -1), high: scale(known.low, -1) };
    case 'range':
      return { ...known, low: scale(known.high, -1), high: scale(known.low, -1) };
  }
}

/** y changes sign. */
function mirrorPoint(point: Point): Point {
  return { ...point, y: otherWay(point.y) };
}

export function mirrorPosition(position: Position | undefined): Position | undefined {
  return position?.kind === 'point' ? { ...position, point: mirrorPoint(position.point) } : position;
}

/** Lengths and bends stay, rotations about the tube change sign. */
export function mirrorRoute(route: Route): Route {
  return {
    ...route,
    steps: route.steps.map((step) => {
      if (step.kind === 'turn') return { ...step, angle: otherWay(step.angle) };
      if (step.kind === 'point') return { ...step, point: mirrorPoint(step.point) };
      return step;
    }),
  };
}
