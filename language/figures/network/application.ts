/** What is asked of the hydraulic network, one push on a pedal from fully released, and what it answers. */
import type { Estimate, Si } from '../../quantity/index.ts';
import type { Part, PartId, PortId } from '../../system/part.ts';
import type { Need, Result } from '../figure.ts';

export interface Application {
  /** Of the foot, at the pad. */
  readonly push: Si<'force'> | Estimate<'force'>;
  /** The brake pedal that stands first in the text, unless another is named; where there is none, a clutch pedal. */
  readonly pedal?: PartId;
  /**
   * Parts that leak: the fluid that they hold escapes, so that no pressure stands in it and the chamber runs to its
   * stop. A reservoir or a feed hose empties the chambers that it feeds. A booster only stops helping.
   */
  readonly failed?: ReadonlySet<PartId>;
  /** Free air, as it is at atmospheric pressure, in each circuit. */
  readonly air?: Si<'volume'>;
}

/** Where fluid goes that a master displaces. */
export type TakingKind = 'gap' | 'hose' | 'tube' | 'fluid' | 'air' | 'brake' | 'master' | 'leak';

export interface Contributor {
  readonly chamber: PartId;
  readonly part: PartId;
  readonly what: TakingKind;
  readonly volume: Estimate<'volume'>;
}

export interface ChamberState {
  readonly id: PartId;
  /** Gauge pressure in the chamber. */
  readonly pressure: Result<'pressure'>;
  /** Travel of its piston: of a primary one against the piston before it. What is not known of the circuit is left out. */
  readonly stroke: Result<'length'>;
  /** The piston has met its stop, or the one before it. */
  readonly bottomed: boolean;
  /** Facts without which the fluid that closes the gaps of its brakes is not known: the stroke then says little. */
  readonly gapsUnknown: readonly Need[];
  /** Something that failed lets its fluid out. */
  readonly open: boolean;
}

export interface Applied {
  /** The pedal that is pushed. */
  readonly pedal: PartId | undefined;
  /** Of the master that it works, the primary chamber first. */
  readonly chambers: readonly ChamberState[];
  /** The highest in the part; undefined where no chamber of this pedal presses it. */
  pressureAt(part: PartId): Result<'pressure'> | undefined;
  /** The same at one port: before and behind a valve, in either circuit of a part that belongs to two. */
  pressureAtPort(port: PortId): Result<'pressure'> | undefined;
  /** Travel at the pad, free play included. */
  readonly pedalTravel: Result<'length'>;
  /** The pedal has met the end of its travel, which takes what is left of the push. */
  readonly atFloor: boolean;
  /** In the push-rod of the pedal, before any booster. */
  readonly rodForce: Result<'force'>;
  /** On the piston of the master, behind a booster. */
  readonly pistonForce: Result<'force'>;
  /** Where the fluid went, circuit by circuit, outward from the chamber. */
  readonly contributors: readonly Contributor[];
  /** What the pressures rest on beside the facts of the file, in sentences. */
  readonly pressureAssumptions: readonly string[];
  /** What the whole answer rests on beside the facts of the file, in sentences. */
  readonly assumptions: readonly string[];
  /** What would have to be known for all of it, each once. */
  readonly waitsFor: readonly Need[];
}

/** A push that brings something about: `measure` has to rise with the push, or stay. */
export interface PushTarget extends Omit<Application, 'push'> {
  /** What is reached at a push, in any unit; undefined where it is not known. */
  measure(applied: Applied): number | undefined;
  readonly reach: number;
  /** Pushes above this are not tried; 3000 N unless said. */
  readonly most?: Si<'force'>;
}

export type PushAnswer =
  | { readonly kind: 'push'; readonly push: Si<'force'>; readonly applied: Applied }
  /** Not even with the greatest push. */
  | { readonly kind: 'out-of-reach'; readonly most: Si<'force'>; readonly reached: number }
  | { readonly kind: 'unknown'; readonly waitsFor: readonly Need[] };

/** The network of one system, prepared once. Held by the figures and by their context: `applied(figures, { push })`. */
export interface Network {
  applied(application: Application): Applied;
  pushFor(target: PushTarget): PushAnswer;
  /** The pedal whose push presses this part; the first of several. */
  pedalOf(part: PartId): Part | undefined;
  /** What the push comes to that the file states for a pedal; undefined where it states none. */
  atStatedPush(pedal: PartId): Applied | undefined;
}

/** One application from fully released; `of` is the figures of a system, or what its computations share. */
export function applied(of: { readonly network: Network }, application: Application): Applied {
  return of.network.applied(application);
}

/** The least push that reaches the target, to a millionth of the greatest one. */
export function pushFor(of: { readonly network: Network }, target: PushTarget): PushAnswer {
  return of.network.pushFor(target);
}
