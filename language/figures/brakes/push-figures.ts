/** `brake.torque-at-push` and `brake.force-at-push`: what a wheel brake does at the stated push on the pedal. */
import { fromMemory } from '../../standards/source.ts';
import type { Part } from '../../system/part.ts';
import { wheelOf } from '../../system/wheels.ts';
import type { FigureContext } from '../context.ts';
import type { Figure, Input } from '../figure.ts';
import type { AtPush } from '../pedal-push.ts';
import { unknownResult } from '../result.ts';
import { tyreRadius } from '../vehicle/axle-brakes.ts';
import { torqueAt, tyreForceAt } from '../vehicle/pushed-brakes.ts';
import { writeResult } from '../write-result.ts';
import { inFamilyOf, millimetres } from '../writing.ts';

const tyreSource = fromMemory(
  'Gillespie, Fundamentals of Vehicle Dynamics, chapter 3: brake force = torque / radius of the loaded tyre',
);

/** In N·m. Undefined where no fluid brakes, and where the file has no pedal. */
export function brakeTorqueAtPush(brake: Part, context: FigureContext): Figure<'torque'> | undefined {
  const pushed = context.braking.atPush();
  const law = context.braking.lawOf(brake);
  if (pushed === undefined || law === undefined) return undefined;
  const { push, applied, needs } = pushed;
  return {
    id: 'brake.torque-at-push',
    subject: brake.id,
    title: 'brake torque at the stated push',
    written: inFamilyOf(writingOf(pushed), 'torque'),
    result: (applied && torqueAt(brake, applied, context)) ?? unknownResult('torque', needs),
    formula: law.kind === 'ready' ? law.formula : '(pressure − push-out) × arm × area × efficiency',
    inputs: [push.input, ...pressureInputs(brake, pushed), ...law.inputs],
    source: law.source,
    notes: law.kind === 'ready' ? law.notes : [],
  };
}

/** In N at the tyre, as long as it does not lock. */
export function brakeForceAtPush(brake: Part, context: FigureContext): Figure<'force'> | undefined {
  const torque = brakeTorqueAtPush(brake, context);
  const pushed = context.braking.atPush();
  if (torque === undefined || pushed === undefined) return undefined;
  const { applied, needs } = pushed;
  const { axle } = wheelOf(brake);
  const tyres = axle === undefined ? [] : [tyreRadius(context.system, axle).input];
  const turning: Input = {
    name: `${torque.title} of ${brake.label}`,
    text: writeResult(torque),
    origin: brake.nameOrigin,
    source: undefined,
  };
  return {
    id: 'brake.force-at-push',
    subject: brake.id,
    title: 'brake force at the tyre at the stated push',
    written: inFamilyOf(writingOf(pushed), 'force'),
    result: (applied && tyreForceAt(brake, applied, context)) ?? unknownResult('force', needs),
    formula: 'brake torque / tyre radius',
    inputs: [turning, ...tyres],
    source: tyreSource,
    notes: ['As long as the wheel does not lock.'],
  };
}

/** The unit in which the push is written. */
const writingOf = ({ push }: AtPush) => (push.kind === 'given' ? push.written : millimetres);

function pressureInputs(brake: Part, { applied }: AtPush): readonly Input[] {
  const actuated = brake.parts.filter(({ kind }) => kind === 'cylinder' || kind === 'caliper');
  return actuated.flatMap((part): readonly Input[] => {
    const result = applied?.pressureAt(part.id);
    if (result === undefined) return [];
    const text = writeResult({ result, written: inFamilyOf(millimetres, 'pressure') });
    return [{ name: `pressure in ${part.label}`, text, origin: part.nameOrigin, source: undefined }];
  });
}
