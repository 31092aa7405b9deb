/** The arm on which the force of a piston acts in a wheel brake: its torque over that force. */
import type { Estimate } from '../../quantity/index.ts';
import type { Source } from '../../standards/source.ts';
import type { Part } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import type { Given } from '../given.ts';
import { discArm } from './disc-arm.ts';
import { drumArm } from './drum-arm.ts';

export type Rotation = 'forward' | 'reverse';

export interface ArmQuestion {
  /** Which way the wheel turns, or would turn. */
  readonly rotation: Rotation;
  readonly friction: 'rubbing' | 'at rest';
}

export interface ReadyArm {
  readonly kind: 'ready';
  /** In m: N·m of brake torque for each N of one piston, or of the pistons on one side of the disc. */
  readonly arm: Estimate<'length'>;
  /** Friction force over piston force: the brake factor of a drum, 2 µ of a disc. */
  readonly factor: Estimate<'number'>;
  readonly givens: readonly Given[];
  readonly formula: string;
  readonly source: Source;
  readonly notes: readonly string[];
}

export type BrakeArm =
  | ReadyArm
  | { readonly kind: 'waits'; readonly needs: readonly Need[]; readonly givens: readonly Given[] };

/** Undefined for a part that is no wheel brake. */
export function brakeArm(brake: Part, question: ArmQuestion): BrakeArm | undefined {
  if (brake.kind === 'drum-brake') return drumArm(brake, question);
  if (brake.kind === 'disc-brake') return discArm(brake, question);
  return undefined;
}
