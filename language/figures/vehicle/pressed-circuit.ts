/** One circuit of a master as its wheel brakes see it: zones behind valves, and which valves lie on the way to them. */
import type { Estimate } from '../../quantity/index.ts';
import { estimateFact } from '../../system/fact-of.ts';
import type { Volume } from '../../system/fluid-graph.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part, PartId } from '../../system/part.ts';
import type { System } from '../../system/system.ts';
import type { FeedModel, ZoneModel } from '../network/circuit-model.ts';
import { type ValveCurve, valveCurve } from '../network/valve-curves.ts';
import { type Zone, zonesOf } from '../network/zones.ts';

export interface PressedCircuit {
  readonly zones: readonly ZoneModel[];
  /** The consumers that matter, each with the zone that it lies in. */
  readonly wanted: readonly { readonly part: PartId; readonly zone: number }[];
  /** On the way to them. */
  readonly valves: readonly { readonly valve: Part; readonly curve: ValveCurve }[];
}

export interface CircuitOptions {
  readonly system: System;
  readonly consumers: ReadonlySet<PartId>;
  /** In the place of these valves there is a plain tube. */
  readonly without: ReadonlySet<PartId>;
  readonly meetings: readonly Volume[];
}

export function pressedCircuit(chamber: Part, options: CircuitOptions): PressedCircuit {
  const { zones } = zonesOf(chamber, options.system, options.meetings);
  const wanted = zones.flatMap(({ volumes }, zone) =>
    volumes.filter(({ part }) => options.consumers.has(part)).map(({ part }) => ({ part, zone })),
  );
  const onTheWay = zonesTo(new Set(wanted.map(({ zone }) => zone)), zones);
  const valves: { valve: Part; curve: ValveCurve }[] = [];
  const models = zones.map(({ feeds }, index): ZoneModel => {
    if (!onTheWay.has(index)) return { takings: [], feeds: [] };
    return {
      takings: [],
      feeds: feeds.map(({ from, valve, backwards }): FeedModel => {
        const curve = options.without.has(valve.id) ? plainTube : valveCurve(valve, { backwards, failed: false });
        valves.push({ valve, curve });
        return { from, valve: valve.id, curve, failedCurve: curve };
      }),
    };
  });
  return { zones: models, wanted, valves };
}

/** The facts of a valve that bend its curve, for how sure the pressure behind it is. */
export function factsOf(valve: Part): readonly Estimate[] {
  const { splitPoint, slope, opensAt, fullAt, crackingPressure, gain, knee } = properties;
  return [
    ...[splitPoint, opensAt, fullAt, crackingPressure, knee].flatMap((row) => estimateFact(valve, row) ?? []),
    ...[slope, gain].flatMap((row) => estimateFact(valve, row) ?? []),
  ];
}

const plainTube: ValveCurve = {
  outlet: (inlet) => inlet,
  needs: [],
  assumptions: [],
  marks: { about: false, assumed: false },
};

/** These zones and all before them. */
function zonesTo(wanted: ReadonlySet<number>, zones: readonly Zone[]): ReadonlySet<number> {
  const found = new Set(wanted);
  for (let index = zones.length - 1; index >= 0; index--) {
    if (found.has(index)) for (const { from } of zones[index]?.feeds ?? []) found.add(from);
  }
  return found;
}
