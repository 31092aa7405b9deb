/** A circuit under pressure: what it takes up, and the pressure that a given displacement brings. */
import { type Si, si } from '../../quantity/index.ts';
import type { PartId } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import { type CircuitModel, type FeedModel, zonePressures } from './circuit-model.ts';
import { risingRoot } from './rising-root.ts';
import { type End, type Ends, endsOf } from './spread.ts';
import type { Taking } from './taking.ts';
import { type TakingLaw, volumeTaken } from './taking-law.ts';

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
  readonly taken: Ends;
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
  const laws = circuit.laws.map((each, zone) => (zone === 0 ? [...each, ...extra.map(({ law }) => law)] : each));
  const takes: Pressing['takes'] = (chamber, end) => {
    const pressures = zones(chamber, end);
    let sum = 0;
    laws.forEach((each, zone) => {
      for (const law of each) sum += takenAt(law, pressures[zone], end);
    });
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
      const takenIn = (takings: readonly Taking[], zone: number): readonly Taken[] =>
        takings.map((taking) => ({ taking, taken: endsOf((end) => takenAt(taking.law, reached[end][zone], end)) }));
      return circuit.zones.flatMap((model, zone) => [
        ...takenIn(model.takings, zone),
        ...(zone === 0 ? takenIn(extra, 0) : []),
      ]);
    },
    needsAt: (chamber) => {
      const reached = zones(chamber, 'value');
      return circuit.zones.flatMap(({ feeds }, index) =>
        reached[index] === undefined ? feeds.flatMap((feed) => curveOf(feed).needs) : [],
      );
    },
  };
}

/** Behind a valve that is not known nothing is counted. */
function takenAt(law: TakingLaw, pressure: Si<'pressure'> | undefined, end: End): number {
  return pressure === undefined ? 0 : volumeTaken(law, pressure, end);
}
