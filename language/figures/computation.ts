/** The shape of a row in the table of computations. */
import type { Dimension } from '../quantity/index.ts';
import type { Circuit } from '../system/circuits.ts';
import type { PartKind } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Figure } from './figure.ts';
import type { LoadFacts } from './vehicle/load-case.ts';

/** A figure of each part of some kinds; undefined for a part that it says nothing of. */
export interface PartComputation<D extends Dimension = Dimension> {
  readonly kinds: readonly PartKind[];
  compute(part: Part, context: FigureContext): Figure<D> | undefined;
}

/** A figure of a circuit; its subject is the chamber that presses it. */
export interface CircuitComputation {
  compute(circuit: Circuit, context: FigureContext): Figure;
}

/** Figures of a load case of the vehicle; their subject is `load` and its name. */
export interface LoadComputation {
  compute(facts: LoadFacts, context: FigureContext): readonly Figure[] | Figure | undefined;
}

/** A figure of the whole; its subject is `system`. */
export interface SystemComputation {
  compute(context: FigureContext): Figure | undefined;
}
