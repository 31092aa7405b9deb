/** Vectors of three plain numbers, as the geometry of routes needs them. */

export type Vector = readonly [number, number, number];

export const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

export const times = (a: Vector, factor: number): Vector => [a[0] * factor, a[1] * factor, a[2] * factor];

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

export const norm = (a: Vector): number => Math.hypot(...a);

/** The vector at length one; a vector of no length stays as it is. */
export const unit = (a: Vector): Vector => (norm(a) > 0 ? times(a, 1 / norm(a)) : a);

/** 0 to π, sound for nearly parallel vectors too. */
export const angleBetween = (a: Vector, b: Vector): number => Math.atan2(norm(cross(a, b)), dot(a, b));

/** Turns `a` about the unit vector `axis` by the right hand (Rodrigues' rotation formula). */
export function turnAbout(a: Vector, axis: Vector, angle: number): Vector {
  const across = times(cross(axis, a), Math.sin(angle));
  const along = times(axis, dot(axis, a) * (1 - Math.cos(angle)));
  return plus(plus(times(a, Math.cos(angle)), across), along);
}
