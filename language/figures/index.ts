/** All that a system comes to: its figures, worked out when they are asked for and only once. */
import type { Circuit } from '../system/circuits.ts';
import type { PartKind } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { allParts, type System } from '../system/system.ts';
import type { PartComputation } from './computation.ts';
import { circuitComputations, loadComputations, partComputations, systemComputations } from './computations.ts';
import { contextOf } from './context.ts';
import type { Figure } from './figure.ts';
import type { Network } from './network/application.ts';
import { once, remembered } from './remembered.ts';
import type { Braking } from './vehicle/braking.ts';
import { loadPrefix } from './vehicle/rough.ts';

export { type ExplainedLine, explainFigure, sayFigure } from './explain.ts';
export type { Figure, Input, Need, Result } from './figure.ts';
export {
  type Application,
  type Applied,
  applied,
  type ChamberState,
  type Contributor,
  type Network,
  type PushAnswer,
  type PushTarget,
  pushFor,
} from './network/application.ts';
export type { DevelopedBend, Development } from './route-geometry.ts';
export { type LengthsApart, lengthsApart } from './run-centreline-length.ts';
export { bendsOf, developmentOf } from './run-route.ts';
export { writeResult } from './write-result.ts';

export interface Figures {
  /** In the order of the text; those of a part together, what is of the whole last. */
  readonly all: readonly Figure[];
  /** Those of the part, port or chamber with this path, of a load case (`load empty`), or of `system`. */
  of(subject: string): readonly Figure[];
  find(subject: string, id: string): Figure | undefined;
  /** Pressures, strokes and pedal travel for a push: `applied(figures, { push })`. */
  readonly network: Network;
  /** Brakes, axles and load cases: brake forces over pressure, for balances and charts. */
  readonly braking: Braking;
}

/** Prepares the figures of a system; works out nothing yet. */
export function figuresOf(system: System): Figures {
  const context = contextOf(system);
  const parts: ReadonlyMap<string, Part> = system.partById;
  const circuits = new Map<string, Circuit>(system.circuits.map((circuit) => [circuit.chamber, circuit]));
  const rows = rowsByKind();
  const ofWhole = once(() => systemComputations.flatMap((row) => row.compute(context) ?? []));
  const ofLoads = once(() =>
    context.braking.loads().flatMap((facts) => loadComputations.flatMap((row) => row.compute(facts, context) ?? [])),
  );
  const ofPart = remembered((part: Part): readonly Figure[] => {
    const circuit = circuits.get(part.id);
    return [
      ...(rows.get(part.kind) ?? []).flatMap((row) => row.compute(part, context) ?? []),
      ...(circuit ? circuitComputations.map((row) => row.compute(circuit, context)) : []),
    ];
  });
  const all = once(() => [...allParts(system).flatMap(ofPart), ...ofLoads(), ...ofWhole()]);
  const of = (subject: string): readonly Figure[] => {
    const part = parts.get(subject);
    return [
      ...(part ? ofPart(part) : []),
      ...(subject.startsWith(loadPrefix) ? ofLoads().filter((figure) => figure.subject === subject) : []),
      ...(subject === 'system' ? ofWhole() : []),
    ];
  };
  return {
    get all() {
      return all();
    },
    of,
    get network() {
      return context.network;
    },
    get braking() {
      return context.braking;
    },
    find: (subject, id) => of(subject).find((figure) => figure.id === id),
  };
}

function rowsByKind(): ReadonlyMap<PartKind, readonly PartComputation[]> {
  const rows = new Map<PartKind, PartComputation[]>();
  for (const row of partComputations) {
    for (const kind of row.kinds) {
      const list = rows.get(kind);
      if (list) list.push(row);
      else rows.set(kind, [row]);
    }
  }
  return rows;
}
