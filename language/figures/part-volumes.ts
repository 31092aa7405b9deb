/** The table of figures for the fluid in each kind of part; what the totals add up. */
import type { PartKind } from '../system/kinds/index.ts';
import { chamberVolume } from './chamber.ts';
import type { PartComputation } from './computation.ts';
import { cylinderVolumeAtRest } from './cylinder-volume.ts';
import { hoseVolume } from './hose-volume.ts';
import { reservoirVolume } from './reservoir-volume.ts';
import { runVolume } from './run-volume.ts';
import { statedVolume } from './stated-volume.ts';

/** Every kind stands in one row at most. A compartment is counted with its reservoir; a plug and a bleeder hold nothing. */
export const partVolumes: readonly PartComputation<'volume'>[] = [
  { kinds: ['run'], compute: runVolume },
  { kinds: ['hose', 'feed-hose'], compute: hoseVolume },
  stated('junction', ['tee', 'wye', 'cross', 'block', 'union', 'bulkhead', 'adapter', 'banjo-bolt']),
  { kinds: ['cylinder'], compute: cylinderVolumeAtRest },
  stated('caliper', ['caliper']),
  stated('clutch-slave', ['clutch-slave']),
  stated('actuator', ['actuator']),
  stated('valve', [
    'residual-valve',
    'proportioning-valve',
    'metering-valve',
    'check-valve',
    'pressure-differential-valve',
    'modulator',
  ]),
  stated('switch', ['pressure-switch']),
  { kinds: ['booster'], compute: (part) => (part.ports.length > 0 ? statedVolume(part, 'booster') : undefined) },
  { kinds: ['master', 'primary', 'secondary'], compute: chamberVolume },
  { kinds: ['reservoir'], compute: reservoirVolume },
];

function stated(family: string, kinds: readonly PartKind[]): PartComputation<'volume'> {
  return { kinds, compute: (part) => statedVolume(part, family) };
}
