/** What the arm of a drum brake with its geometry stated is worked out from, and what it says where that makes no brake. */
import { wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import type { Given } from '../given.ts';
import type { BrakeArm, Rotation } from './brake-arm.ts';

export interface ShoeQuestion {
  readonly diameter: Given<'length'>;
  readonly friction: Given<'number'>;
  readonly rotation: Rotation;
}

/** A two-leading brake whose cylinders have a piston at either end. */
export function leadsBothWays(brake: Part): boolean {
  const cylinders = brake.parts.filter(({ kind }) => kind === 'cylinder');
  return cylinders.length > 1 && cylinders.every((cylinder) => wordOf(cylinder, properties.ends) === 'double');
}

export function waitsForSound(brake: Part, isJammed: boolean, givens: readonly Given[]): BrakeArm {
  const why = isJammed ? 'with which the shoes do not grab by themselves' : 'that make a shoe';
  const need: Need = { name: `sizes and friction of the shoes of ${brake.label} ${why}`, origin: brake.nameOrigin };
  return { kind: 'waits', needs: [need], givens };
}
