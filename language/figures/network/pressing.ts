/** A circuit under pressure: what it takes up, and the pressure that a given displacement brings. */
import { type Si, si } from '../../quantity/index.ts';
import type { PartId } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import { type CircuitModel, type FeedModel, zonePressures } from './circuit-model.ts';
import { risingRoot } from './rising-root.ts';
import type { End } from './spread.ts';
import type { Taking } from './taking.ts';

export interface Pressing {
  /** Gauge pressure by zone with this much in the chamber; undefined behind a valve that is not known. */
  zones(chamber: Si<'pressure'>, end: End): readonly (Si<'pressure'> | undefined)[];
  /** m³ that the circuit takes up, as far as it is known. Rises with the pressure. */
  takes(chamber: Si<'pressure'>, end: End): number;
  /** The pressure in the chamber, up to `most`, at which the circuit takes `volume` (m³). */
  pressureFor(volume: number, most: Si<'pressure'>, end: End): Si<'pressure'>;
  /** m³ that each thing takes up, with these pressures in the chamber. */
  each(chamber: Readonly<Record<End, Si<'pressure'>>>): readonly Taken[];
  /** Facts of valves that are needed at this pressure. */
  needsAt(chamber: Si<'pressure'>): readonly Need[];
}

export interface Taken {
  readonly taking: Taking;
  readonly taken: Readonly<Record<End, number>>;
}

export interface PressingOptions {
  readonly failed: ReadonlySet<PartId>;
  /** Beside what the file states, in the zone of the chamber: free air. */
  readonly extra: readonly Taking[];
}

export function pressingOf(circuit: CircuitModel, { failed, extra }: PressingOptions): Pressing {
  const curveOf = (feed: FeedModel) => (failed.has(feed.valve) ? feed.failedCurve : feed.curve);
  const zones: Pressing['zones'] = (chamber, end) =>
    zonePressures(circuit, chamber, (feed, inlet) => curveOf(feed).outlet(inlet, end));
  const placed = [
    ...extra.map((taking) => ({ taking, zone: 0 })),
    ...circuit.zones.flatMap(({ takings }, zone) => takings.map((taking) => ({ taking, zone }))),
  ];
  const takes: Pressing['takes'] = (chamber, end) => {
    const pressures = zones(chamber, end);
    let sum = 0;
    for (const { taking, zone } of placed) sum += takenAt(taking, pressures[zone], end);
    return sum;
  };
  return {
    zones,
    takes,
    pressureFor: (volume, most, end) =>
      si(
        'pressure',
        risingRoot((at) => takes(si('pressure', at), end), Math.max(0, volume), { low: 0, high: most }),
      ),
    each: (chamber) => {
      const at = (end: End) => zones(chamber[end], end);
      const reached = { low: at('low'), value: at('value'), high: at('high') };
      return placed.map(({ taking, zone }) => {
        const taken = (end: End) => takenAt(taking, reached[end][zone], end);
        return { taking, taken: { low: taken('low'), value: taken('value'), high: taken('high') } };
      });
    },
    needsAt: (chamber) => {
      const reached = zones(chamber, 'value');
      return circuit.zones.flatMap(({ feeds }, index) =>
        reached[index] === undefined ? feeds.flatMap((feed) => curveOf(feed).needs) : [],
      );
    },
  };
}

function takenAt(taking: Taking, pressure: Si<'pressure'> | undefined, end: End): number {
  return pressure === undefined || pressure <= 0 ? 0 : taking.volume(pressure, end);
}
