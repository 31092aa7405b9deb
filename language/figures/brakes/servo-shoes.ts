/** How a servo drum brake brakes: the primary shoe floats and pushes the secondary one through the adjuster. */
import { type Si, si } from '../../quantity/index.ts';
import { commonPractice } from '../../standards/source.ts';

/** Both linings alike and in the middle of their shoes; sizes in m and rad. */
export interface ServoShoes {
  readonly drumRadius: Si<'length'>;
  /** Of the pistons' axis above the middle of the drum. */
  readonly cylinderOffset: Si<'length'>;
  /** Of the adjuster below it. */
  readonly adjusterOffset: Si<'length'>;
  /** Of the anchor above it. */
  readonly anchorOffset: Si<'length'>;
  readonly liningArc: Si<'angle'>;
}

export const servoSource = commonPractice(
  'statics of the two shoes with the centre of pressure in the middle of the lining; a rigid shoe on elastic lining gives 3 % to 10 % less',
);

/**
 * Friction force at the drum over the force of one piston, the same either way round. Valid for 0 < arc < π. NaN for
 * shoes that jam by themselves and for sizes that make none.
 */
export function servoFactor(shoes: ServoShoes, friction: Si<'number'>): Si<'number'> {
  const { drumRadius: r, cylinderOffset: a, adjusterOffset: c, anchorOffset: e, liningArc } = shoes;
  const radius = pressureRadius(r, liningArc);
  const grip = radius * Math.sin(Math.atan(friction));
  if (!isServo(shoes) || servoJams(shoes, friction)) return si('number', Number.NaN);
  const primary = (a + c) / (c - grip);
  const handedOn = primary - 1;
  const secondary = (handedOn * (e + c) + (e - a)) / (e - friction * radius);
  return si('number', (primary * grip + friction * secondary * radius) / r);
}

/** Whether a shoe needs no force of the piston any more. */
export function servoJams(
  { drumRadius, adjusterOffset, anchorOffset, liningArc }: ServoShoes,
  friction: number,
): boolean {
  const radius = pressureRadius(drumRadius, liningArc);
  return radius * Math.sin(Math.atan(friction)) >= adjusterOffset || friction * radius >= anchorOffset;
}

/** Where the resultant of a symmetric lining acts. */
const pressureRadius = (radius: number, arc: number): number =>
  (radius * 4 * Math.sin(arc / 2)) / (arc + Math.sin(arc));

function isServo({ drumRadius, cylinderOffset, adjusterOffset, anchorOffset, liningArc }: ServoShoes): boolean {
  const arcs = liningArc > 0 && liningArc < Math.PI;
  return arcs && drumRadius > 0 && cylinderOffset > 0 && adjusterOffset > 0 && anchorOffset >= cylinderOffset;
}
