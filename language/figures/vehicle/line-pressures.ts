/** Which pressure stands in each cylinder and caliper for a pressure in the master, through the valves on the way. */
import { type Estimate, si } from '../../quantity/index.ts';
import type { Volume } from '../../system/fluid-graph.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part, PartId } from '../../system/part.ts';
import { pressureBodiesOf } from '../../system/pressure-bodies.ts';
import type { System } from '../../system/system.ts';
import { chamberArea } from '../chamber.ts';
import type { FigureContext } from '../context.ts';
import type { Need } from '../figure.ts';
import { givenFigure } from '../given.ts';
import { type FeedModel, zonePressures } from '../network/circuit-model.ts';
import { type ValveCurve, valveCurve } from '../network/valve-curves.ts';
import { zonesOf } from '../network/zones.ts';

export interface LinePressures {
  /**
   * Gauge Pa by part for a gauge pressure in the first chamber of the master; nothing for a part that nothing presses
   * and for one behind a valve whose facts are missing. Rises with the pressure. Without head, and before any piston
   * meets its stop.
   */
  at(master: number): ReadonlyMap<PartId, number>;
  /** Facts of valves, bores and masters without which it cannot be told. */
  readonly needs: readonly Need[];
  readonly assumptions: readonly string[];
  readonly marks: readonly Pick<Estimate, 'about' | 'assumed'>[];
  /** Whether any valve between master and brakes lets through less than comes in. */
  readonly reduced: boolean;
}

export interface LineOptions {
  readonly context: FigureContext;
  /** Cylinders and calipers whose pressure matters. */
  readonly consumers: ReadonlySet<PartId>;
  /** In the place of these valves there is a plain tube. */
  readonly without: ReadonlySet<PartId>;
}

interface PressedCircuit {
  /** Of the chamber, for one Pa in the first chamber of its master. */
  readonly ratio: number;
  readonly zones: readonly { readonly feeds: readonly FeedModel[]; readonly takings: readonly [] }[];
  /** The consumers that matter, each with the zone that it lies in. */
  readonly wanted: readonly { readonly part: PartId; readonly zone: number }[];
}

export function linePressures({ context, consumers, without }: LineOptions): LinePressures {
  const { system } = context;
  const chambers = system.circuits
    .filter(({ reachOf }) => [...consumers].some((part) => reachOf.has(part)))
    .flatMap(({ chamber }) => system.partById.get(chamber) ?? []);
  const { meetings } = pressureBodiesOf(system);
  const curves: ValveCurve[] = [];
  const circuits: PressedCircuit[] = [];
  const needs: Need[] = [...mastersApart(chambers, system), ...pathsUnsaid(meetings, { system, consumers })];
  for (const chamber of chambers) {
    const ratio = pressureRatio(chamber, context);
    if (typeof ratio === 'number')
      circuits.push(pressedCircuit(chamber, ratio, { system, without, consumers, curves, meetings }));
    else needs.push(...ratio);
  }
  return {
    at: (master) => {
      const found = new Map<PartId, number>();
      for (const { ratio, zones, wanted } of circuits) {
        const pressures = zonePressures({ zones }, si('pressure', master * ratio), ({ curve }, inlet) =>
          curve.outlet(inlet, 'value'),
        );
        for (const { part, zone } of wanted) found.set(part, Math.max(found.get(part) ?? 0, pressures[zone] ?? 0));
      }
      return found;
    },
    needs: [...needs, ...curves.flatMap((curve) => curve.needs)],
    assumptions: [...new Set(curves.flatMap((curve) => curve.assumptions))],
    marks: curves.map(({ marks }) => marks),
    reduced: circuits.some(({ zones }) => zones.some(({ feeds }) => feeds.some(isReducing(system)))),
  };
}

const isReducing =
  (system: System) =>
  ({ valve }: FeedModel): boolean =>
    system.partById.get(valve)?.kind === 'proportioning-valve';

function pressedCircuit(
  chamber: Part,
  ratio: number,
  around: Omit<LineOptions, 'context'> & {
    readonly system: System;
    readonly curves: ValveCurve[];
    readonly meetings: readonly Volume[];
  },
): PressedCircuit {
  const { system, consumers, without, curves } = around;
  const { zones } = zonesOf(chamber, system, around.meetings);
  const wanted = zones.flatMap(({ volumes }, zone) =>
    volumes.filter(({ part }) => consumers.has(part)).map(({ part }) => ({ part, zone })),
  );
  const models = zones.map(({ feeds }) => ({
    takings: [] as const,
    feeds: feeds.map(({ from, valve, backwards }): FeedModel => {
      const curve = without.has(valve.id) ? plainTube : valveCurve(valve, { backwards, failed: false });
      curves.push(curve);
      return { from, valve: valve.id, curve, failedCurve: curve };
    }),
  }));
  return { ratio, zones: models, wanted };
}

const plainTube: ValveCurve = {
  outlet: (inlet) => inlet,
  needs: [],
  assumptions: [],
  marks: { about: false, assumed: false },
};

/** Pressure in a chamber over that in the first of its master: the piston between two bores balances their forces. */
function pressureRatio(chamber: Part, context: FigureContext): number | readonly Need[] {
  const master = chamber.parent === undefined ? undefined : context.system.partById.get(chamber.parent);
  const first = master?.parts.find(({ kind }) => kind === 'primary') ?? chamber;
  const stepped = master?.parts.some((part) => part.facts.has(properties.bore.key)) ?? false;
  if (first.id === chamber.id || !stepped) return 1;
  const areas = [first, chamber].map((each) => {
    const figure = chamberArea(each, context);
    return figure && givenFigure(figure, each);
  });
  const needs = areas.flatMap((area) => (area?.kind === 'missing' ? area.needs : []));
  const [before, here] = areas;
  return before?.kind === 'given' && here?.kind === 'given' ? before.estimate.value / here.estimate.value : needs;
}

/** Nothing in the notation says how a pedal shares its force between two masters. */
function mastersApart(chambers: readonly Part[], system: System): readonly Need[] {
  const masters = [...new Set(chambers.map(({ id, parent }) => (parent === undefined ? id : parent)))];
  const [first, second] = masters.flatMap((id) => system.partById.get(id) ?? []);
  if (first === undefined || second === undefined) return [];
  return [{ name: `how the push is shared between ${first.label} and ${second.label}`, origin: second.nameOrigin }];
}

/** In these the fluid of two chambers would meet, unless the part keeps it apart. */
function pathsUnsaid(
  meetings: readonly Volume[],
  { system, consumers }: { readonly system: System; readonly consumers: ReadonlySet<PartId> },
): readonly Need[] {
  const parts = new Set(meetings.filter(({ part }) => consumers.has(part)).map(({ part }) => part));
  return [...parts].flatMap((id) => {
    const part = system.partById.get(id);
    return part === undefined ? [] : [{ name: `path of ${part.label}`, origin: part.nameOrigin }];
  });
}
