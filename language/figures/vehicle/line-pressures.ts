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
import { zonePressures } from '../network/circuit-model.ts';
import { factsOf, type PressedCircuit, pressedCircuit } from './pressed-circuit.ts';

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
  /** What all this rests on, for how sure it is. */
  readonly from: readonly Estimate[];
  /** The consumers that some chamber presses. */
  readonly pressed: ReadonlySet<PartId>;
  /** Proportioning valves on the way, each once. */
  readonly proportioning: readonly Part[];
}

export interface LineOptions {
  readonly context: FigureContext;
  /** Cylinders and calipers whose pressure matters. */
  readonly consumers: ReadonlySet<PartId>;
  /** In the place of these valves there is a plain tube. */
  readonly without: ReadonlySet<PartId>;
}

export function linePressures({ context, consumers, without }: LineOptions): LinePressures {
  const { system } = context;
  const chambers = system.circuits
    .filter(({ reaches }) => reaches.some(({ part }) => consumers.has(part)))
    .flatMap(({ chamber }) => system.partById.get(chamber) ?? []);
  const { meetings } = pressureBodiesOf(system);
  const circuits = chambers.map((chamber) => ({
    ratio: pressureRatio(chamber, context),
    circuit: pressedCircuit(chamber, { system, consumers, without, meetings }),
  }));
  const ratios = circuits.map(({ ratio }) => ratio);
  const passed = circuits.flatMap(({ circuit }) => circuit.valves);
  const valves = [...new Set(passed.map(({ valve }) => valve))];
  return {
    at: (master) => {
      const found = new Map<PartId, number>();
      for (const { ratio, circuit } of circuits) {
        if (ratio.kind === 'ratio') press(circuit, master * ratio.of, found);
      }
      return found;
    },
    needs: [
      ...mastersApart(chambers, system),
      ...pathsUnsaid(meetings, { system, consumers }),
      ...ratios.flatMap((ratio) => (ratio.kind === 'waits' ? ratio.needs : [])),
      ...passed.flatMap(({ curve }) => curve.needs),
    ],
    assumptions: [...new Set(passed.flatMap(({ curve }) => curve.assumptions))],
    from: [...valves.flatMap(factsOf), ...ratios.flatMap((ratio) => (ratio.kind === 'ratio' ? ratio.from : []))],
    pressed: new Set(circuits.flatMap(({ circuit }) => circuit.wanted.map(({ part }) => part))),
    proportioning: valves.filter(({ kind }) => kind === 'proportioning-valve'),
  };
}

function press({ zones, wanted }: PressedCircuit, chamber: number, found: Map<PartId, number>): void {
  const pressures = zonePressures({ zones }, si('pressure', chamber), ({ curve }, inlet) =>
    curve.outlet(inlet, 'value'),
  );
  for (const { part, zone } of wanted) found.set(part, Math.max(found.get(part) ?? 0, pressures[zone] ?? 0));
}

/** Pressure in a chamber over that in the first of its master. */
type Ratio =
  | { readonly kind: 'ratio'; readonly of: number; readonly from: readonly Estimate[] }
  | { readonly kind: 'waits'; readonly needs: readonly Need[] };

/** The piston between two bores balances their forces. */
function pressureRatio(chamber: Part, context: FigureContext): Ratio {
  const master = chamber.parent === undefined ? undefined : context.system.partById.get(chamber.parent);
  const first = master?.parts.find(({ kind }) => kind === 'primary') ?? chamber;
  const isStepped = master?.parts.some((part) => part.facts.has(properties.bore.key)) ?? false;
  if (first.id === chamber.id || !isStepped) return { kind: 'ratio', of: 1, from: [] };
  const areas = [first, chamber].map((each) => {
    const figure = chamberArea(each, context);
    return figure && givenFigure(figure, each);
  });
  const [before, here] = areas;
  if (before?.kind !== 'given' || here?.kind !== 'given') {
    return { kind: 'waits', needs: areas.flatMap((area) => (area?.kind === 'missing' ? area.needs : [])) };
  }
  const from = [before.estimate, here.estimate];
  return { kind: 'ratio', of: before.estimate.value / here.estimate.value, from };
}

/** Nothing in the notation says how a pedal shares its force between two masters. */
function mastersApart(chambers: readonly Part[], system: System): readonly Need[] {
  const masters = [...new Set(chambers.map(({ id, parent }) => parent ?? id))];
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
