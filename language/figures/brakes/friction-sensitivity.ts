/** `brake.friction-sensitivity`: by how many per cent the torque changes for one per cent of friction. */
import { exactly, plainUnit, si, writtenIn } from '../../quantity/index.ts';
import { commonPractice } from '../../standards/source.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { Figure } from '../figure.ts';
import { type Given, inputsOf } from '../given.ts';
import { knownResult, unknownResult } from '../result.ts';
import { brakeArm } from './brake-arm.ts';
import { givenFriction, givenWithin } from './facts-within.ts';
import { geometryArm, statesGeometry } from './shoe-geometry.ts';

const source = commonPractice('relative change of the brake factor over relative change of friction');

/** How far friction is moved either way to see what the torque does. */
const step = 1e-4;

/** 1 for a disc; more the more a drum brake helps itself. Undefined for a drum brake without its geometry. */
export function frictionSensitivity(brake: Part): Figure<'number'> | undefined {
  const isDrum = brake.kind === 'drum-brake';
  if (isDrum && !statesGeometry(brake)) return undefined;
  const arm = isDrum ? fromGeometry(brake, 0) : brakeArm(brake, { rotation: 'forward', friction: 'rubbing' });
  if (arm === undefined) return undefined;
  const frame = {
    id: 'brake.friction-sensitivity',
    subject: brake.id,
    title: 'change of torque for a change of lining friction',
    written: writtenIn(plainUnit),
    formula: 'relative change of torque / relative change of friction',
    inputs: inputsOf(arm.givens),
    source,
    notes: [
      '1 means in proportion; at 3 a lining that has lost a tenth of its friction loses nearly a third of the torque.',
    ],
  };
  if (arm.kind === 'waits') return { ...frame, result: unknownResult('number', arm.needs) };
  const around = isDrum ? [fromGeometry(brake, -step), fromGeometry(brake, step)] : [];
  const [below, above] = around.flatMap((each) => (each.kind === 'ready' ? each.factor.value : []));
  // A disc goes in proportion; a drum that jams this close above has no figure.
  const slope =
    below === undefined || above === undefined
      ? isDrum
        ? Number.NaN
        : 1
      : Math.log(above / below) / Math.log((1 + step) / (1 - step));
  const { about, assumed } = arm.factor;
  const spread = arm.factor.low < arm.factor.high;
  const estimate = { ...exactly(si('number', slope)), about: about || spread, assumed };
  return { ...frame, result: knownResult('number', estimate, brake) };
}

/** The brake with its friction moved by a share. */
function fromGeometry(brake: Part, by: number) {
  return geometryArm(brake, {
    diameter: givenWithin(brake, 'drum', properties.diameter),
    friction: moved(givenFriction(brake, 'rubbing'), by),
    rotation: 'forward',
  });
}

function moved(friction: Given<'number'>, by: number): Given<'number'> {
  if (friction.kind === 'missing' || by === 0) return friction;
  const { value, about, assumed } = friction.estimate;
  return { ...friction, estimate: { ...exactly(si('number', value * (1 + by))), about, assumed } };
}
