/** How the load on the axles moves while a vehicle brakes, and how much adhesion each axle then uses. */
import { type Si, si } from '../../quantity/index.ts';
import { standardGravity } from '../../standards/gravity.ts';
import { fromMemory } from '../../standards/source.ts';

/** A vehicle in one load case, on two axles; m and N. */
export interface Loaded {
  readonly weight: Si<'force'>;
  readonly wheelbase: Si<'length'>;
  /** Of the centre of gravity: behind the front axle, and above the ground. */
  readonly behindFront: Si<'length'>;
  readonly gravityHeight: Si<'length'>;
}

export interface AxleForces {
  readonly front: Si<'force'>;
  readonly rear: Si<'force'>;
}

export const staticsSource = fromMemory(
  'statics of a rigid vehicle on a level road, as in Gillespie, Fundamentals of Vehicle Dynamics, chapter 3, and Wong, Theory of Ground Vehicles, chapter 3',
);

/**
 * Loads on the axles (N) at a braking ratio z, the deceleration over standard gravity. Without air drag, pitch and
 * grade; the rear load is below zero where the rear wheels have lifted.
 */
export function axleLoads({ weight, wheelbase, behindFront, gravityHeight }: Loaded, z: number): AxleForces {
  const rear = (weight * (behindFront - z * gravityHeight)) / wheelbase;
  return { front: si('force', weight - rear), rear: si('force', rear) };
}

/** What the brake forces (N) come to, as long as no wheel locks. */
export interface Braked {
  /** Deceleration over standard gravity. */
  readonly z: number;
  readonly deceleration: Si<'acceleration'>;
  /** Brake force over load; infinite on an axle that carries nothing. */
  readonly adhesion: { readonly front: number; readonly rear: number };
}

export function brakedBy(forces: AxleForces, loaded: Loaded): Braked {
  const z = (forces.front + forces.rear) / loaded.weight;
  const loads = axleLoads(loaded, z);
  const used = (force: number, load: number): number =>
    load > 0 ? force / load : force > 0 ? Number.POSITIVE_INFINITY : 0;
  return {
    z,
    deceleration: si('acceleration', z * standardGravity),
    adhesion: { front: used(forces.front, loads.front), rear: used(forces.rear, loads.rear) },
  };
}

/** The brake forces with which both axles use the same adhesion at a braking ratio. */
export function idealForces(loaded: Loaded, z: number): AxleForces {
  const loads = axleLoads(loaded, z);
  return { front: si('force', z * loads.front), rear: si('force', z * loads.rear) };
}

/**
 * Braking ratio at which an axle locks on a road of some adhesion, with a fixed share (0 to 1) of the brake force in
 * front. Infinite for an axle without brakes and one that never comes to use that much.
 */
export function lockRatio(loaded: Loaded, axle: 'front' | 'rear', frontShare: number, adhesion: number): number {
  const { wheelbase, behindFront, gravityHeight } = loaded;
  const [arm, share, lift] =
    axle === 'front'
      ? [wheelbase - behindFront, frontShare, -gravityHeight]
      : [behindFront, 1 - frontShare, gravityHeight];
  const resisting = share * wheelbase + adhesion * lift;
  return share > 0 && resisting > 0 ? (adhesion * arm) / resisting : Number.POSITIVE_INFINITY;
}

/** Braking ratio, and adhesion, at which both axles lock together with a fixed front share: above it the rear is first. */
export function criticalRatio({ wheelbase, behindFront, gravityHeight }: Loaded, frontShare: number): number {
  return (frontShare * wheelbase - (wheelbase - behindFront)) / gravityHeight;
}
