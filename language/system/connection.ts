/** What an opening looks like to a spanner and to the fluid: the types by which joints are judged. */
import type { Stated } from '../quantity/index.ts';
import type { FlareForm } from '../standards/flare-forms.ts';
import type { Gender, SeatName } from '../standards/seats.ts';
import type { Thread } from '../standards/threads.ts';
import type { Origin } from './origin.ts';

/** `unknown` was written as `?`; `unstated` was not written. */
export type ThreadFact =
  | { readonly kind: 'known'; readonly thread: Thread }
  | { readonly kind: 'unknown' }
  | { readonly kind: 'unstated' };

/** A port in a part or the end of a hose: a thread with its sealing face. */
export interface Threaded {
  readonly kind: 'threaded';
  readonly thread: ThreadFact;
  readonly gender: Gender | undefined;
  readonly seat: SeatName | undefined;
  readonly turning: 'swivel' | 'fixed' | undefined;
  readonly plugged: boolean;
}

/** The end of a rigid tube: a nut over a flare. The nut turns on the tube. */
export interface TubeEnd {
  readonly kind: 'tube-end';
  readonly nut: ThreadFact;
  readonly nutLength: 'long' | 'short' | undefined;
  readonly flare: FlareForm | 'unknown' | undefined;
  readonly tube: Stated<'length'> | undefined;
  /** Where nut and flare are said: at the end itself, for the whole run, or in the stock that it is made of. */
  readonly nutOrigin: Origin | undefined;
  readonly flareOrigin: Origin | undefined;
}

/** The eye of a banjo fitting, clamped by a banjo bolt between two washers. */
export interface BanjoEye {
  readonly kind: 'banjo';
  readonly hole: Stated<'length'> | undefined;
}

/** A spigot for a low-pressure hose, on the reservoir's side of the seals. */
export interface Barb {
  readonly kind: 'barb';
  readonly size: Stated<'length'> | undefined;
}

export type Connection = Threaded | TubeEnd | BanjoEye | Barb;
