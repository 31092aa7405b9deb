/** What an answer of the network rests on beside the facts of the file, in sentences for its reader. */
import type { Si } from '../../quantity/index.ts';
import { estimateFact } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { PushedChamber } from './chamber-push.ts';
import type { PedalForces } from './pedal-forces.ts';
import type { PedalTrain } from './pedal-train.ts';

export function assumptionsOf(
  train: PedalTrain,
  chambers: readonly PushedChamber[],
  at: { readonly forces: PedalForces; readonly air: Si<'volume'> | undefined; readonly atFloor: boolean },
): readonly string[] {
  const { pedal } = train;
  const pressed = chambers.filter(({ open }) => !open);
  const unsure = pressed.filter(({ model }) => model.circuit.lacks.length > 0 && model.stroke !== undefined);
  const endless = chambers.filter(({ model }) => model.stroke === undefined);
  return [
    ...new Set([
      `One application from fully released, slowly and held, with seals that slide freely and ${airIn(at.air)}.`,
      ...train.assumptions,
      ...at.forces.assumptions,
      ...pressed.flatMap(({ model }) => model.circuit.assumptions),
      ...unsure.map(
        ({ model }) => `${model.part.label} does not reach its stop: what its circuit takes is not known in full.`,
      ),
      ...endless.map(({ model }) => `The stroke of ${model.part.label} lasts: it is not stated.`),
      ...(at.atFloor ? [`${pedal.label} stands at the end of its travel, which takes the rest of the push.`] : []),
      ...(estimateFact(pedal, properties.travel) === undefined
        ? [`${pedal.label} does not meet the floor: its travel is not stated.`]
        : []),
    ]),
  ];
}

const airIn = (air: Si<'volume'> | undefined): string =>
  air !== undefined && air > 0 ? 'the given free air in each circuit' : 'no free air in the fluid';
