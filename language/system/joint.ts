/** Where two parts meet: every joint holds exactly two ports together. */
import type { Origin } from './origin.ts';
import type { PartId, PortId } from './part.ts';
import type { Presence } from './presence.ts';

export interface Joint {
  /** `end`: a run's or hose's end in a port; `screwed`: part into part without a tube. */
  readonly kind: 'end' | 'screwed';
  /** For an end, the port of the run or hose; for a screwed joint, the part named first. */
  readonly a: PortId;
  readonly b: PortId;
  readonly presence: Presence;
  /** The reference to the port, or the whole statement of parts screwed together. */
  readonly origin: Origin;
  /** The whole statement that joins them. */
  readonly statement: Origin;
}

/** One part acts on another without a joint in the fluid: pedal on master, compartment over chamber, lever on brakes. */
export interface Link {
  readonly verb: 'feeds' | 'pushes' | 'acts-on';
  readonly from: PartId;
  readonly to: PartId;
  readonly origin: Origin;
}
