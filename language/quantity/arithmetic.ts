/** Arithmetic that keeps dimensions: what may be added, and what a product of two quantities is. */

import { alike, type Dimension, type Si, si } from './dimension.ts';

/** Sum of two values of one dimension. */
export function add<D extends Dimension>(first: Si<D>, second: Si<NoInfer<D>>): Si<D> {
  return alike(first, first + second);
}

/** First minus second, of one dimension. */
export function subtract<D extends Dimension>(first: Si<D>, second: Si<NoInfer<D>>): Si<D> {
  return alike(first, first - second);
}

/** The value times a plain factor. */
export function scale<D extends Dimension>(value: Si<D>, factor: number): Si<D> {
  return alike(value, value * factor);
}

/** The same the other way round; zero stays zero without a sign. */
export function negated<D extends Dimension>(value: Si<D>): Si<D> {
  return alike(value, 0 - value);
}

/** First over second, of one dimension: a plain ratio. Infinite or NaN where the second is zero. */
export function ratioOf<D extends Dimension>(first: Si<D>, second: Si<NoInfer<D>>): Si<'number'> {
  return si('number', first / second);
}

/** Area of a circle in m² from its diameter in m: π d² / 4. */
export function circleArea(diameter: Si<'length'>): Si<'area'> {
  return si('area', (Math.PI * diameter * diameter) / 4);
}

/** Diameter in m of the circle with this area in m²: √(4 A / π). NaN for a negative area. */
export function circleDiameter(area: Si<'area'>): Si<'length'> {
  return si('length', Math.sqrt((4 * area) / Math.PI));
}

/** Volume in m³ of a prism or cylinder: area times length. */
export function cylinderVolume(area: Si<'area'>, length: Si<'length'>): Si<'volume'> {
  return si('volume', area * length);
}

/** Length in m over which this area sweeps this volume. Not finite for a zero area. */
export function sweptLength(volume: Si<'volume'>, area: Si<'area'>): Si<'length'> {
  return si('length', volume / area);
}

/** Force in N of a gauge pressure on an area. */
export function timesArea(pressure: Si<'pressure'>, area: Si<'area'>): Si<'force'> {
  return si('force', pressure * area);
}

/** Gauge pressure in Pa from a force on an area. Not finite for a zero area. */
export function overArea(force: Si<'force'>, area: Si<'area'>): Si<'pressure'> {
  return si('pressure', force / area);
}

/** Torque in N·m of a force on an arm. */
export function timesArm(force: Si<'force'>, arm: Si<'length'>): Si<'torque'> {
  return si('torque', force * arm);
}

/** Length in m of an arc: radius times angle in rad. */
export function arcLength(radius: Si<'length'>, angle: Si<'angle'>): Si<'length'> {
  return si('length', radius * angle);
}
