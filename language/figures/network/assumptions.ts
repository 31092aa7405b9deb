/** What an answer of the network rests on beside the facts of the file, in sentences for its reader. */
import type { Si } from '../../quantity/index.ts';
import { properties } from '../../system/kinds/index.ts';
import type { ChamberUnder } from './chamber-results.ts';
import { essentialLacks } from './lacks.ts';
import type { PedalForces } from './pedal-forces.ts';
import type { PedalTrain } from './pedal-train.ts';
import { sizeOf } from './sizes.ts';

export interface Assumptions {
  /** What the pressures rest on. */
  readonly pressure: readonly string[];
  /** What strokes and travel rest on besides. */
  readonly travel: readonly string[];
}

export function assumptionsOf(
  train: PedalTrain,
  states: readonly ChamberUnder[],
  at: { readonly forces: PedalForces; readonly air: Si<'volume'> | undefined; readonly atFloor: boolean },
): Assumptions {
  const { pedal } = train;
  const pressed = states.filter(({ chamber }) => !chamber.open);
  const circuits = pressed.map(({ chamber }) => chamber.model.circuit);
  const noTravel = sizeOf(pedal, properties.travel) === undefined;
  return {
    pressure: eachOnce([
      'One application from fully released, slowly and held, with seals that slide freely.',
      ...train.assumptions,
      ...at.forces.assumptions,
      ...circuits.flatMap(({ valveAssumptions }) => valveAssumptions),
      ...pressed.flatMap(mayBottom),
      ...(at.atFloor ? [`${pedal.label} stands at the end of its travel, which takes the rest of the push.`] : []),
      ...(noTravel ? [`${pedal.label} does not meet the floor: its travel is not stated.`] : []),
    ]),
    travel: eachOnce([airIn(at.air), ...circuits.flatMap(({ assumptions }) => assumptions)]),
  };
}

function mayBottom({ chamber, state }: ChamberUnder): readonly string[] {
  const { part, stroke, circuit } = chamber.model;
  if (stroke === undefined) return [`The stroke of ${part.label} lasts: it is not stated.`];
  if (state.bottomed || essentialLacks(circuit.lacks).length === 0) return [];
  return [`${part.label} does not reach its stop: what its circuit takes up is not known in full.`];
}

const airIn = (air: Si<'volume'> | undefined): string =>
  air !== undefined && air > 0 ? 'The given free air is in each circuit.' : 'No free air is in the fluid.';

const eachOnce = (sentences: readonly string[]): readonly string[] => [...new Set(sentences)];
