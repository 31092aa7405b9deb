/** `load.push-for-service-stop`: the push on the pedal that brings the deceleration asked with everything working. */
import { exactly, si } from '../../quantity/index.ts';
import { standardGravity } from '../../standards/gravity.ts';
import { commonPractice } from '../../standards/source.ts';
import type { FigureContext } from '../context.ts';
import type { Figure, Result } from '../figure.ts';
import type { Applied } from '../network/application.ts';
import { unknownResult } from '../result.ts';
import { newtons } from '../writing.ts';
import { askedOf, sectionOf, standing } from './asked.ts';
import { type LoadFacts, loadedCase } from './load-case.ts';
import { axleForcesAt } from './pushed-brakes.ts';
import { loadSubject, roughly } from './rough.ts';
import { brakedBy } from './statics.ts';

const source = commonPractice('the push raised until the brake forces of all wheels over the mass reach what is asked');

const trialPush = si('force', 300);
/** No leg pushes harder (common practice: about 300 lbf is the limit of a strong adult). */
const hardestPush = si('force', 1300);

/** In N. Undefined where class and year are unknown, where there is no brake pedal, and where no fluid brakes. */
export function pushForServiceStop(facts: LoadFacts, context: FigureContext): Figure<'force'> | undefined {
  const [asked] = askedOf(
    context.system,
    ({ service }) => service,
    ({ deceleration }) => deceleration,
  );
  const pushed = context.braking.atPush();
  if (asked === undefined || pushed === undefined || context.braking.axles() === undefined) return undefined;
  const { rule, standard } = asked;
  const loaded = loadedCase(facts);
  const frame = {
    id: 'load.push-for-service-stop',
    subject: loadSubject(facts),
    title: `push for ${rule.deceleration.toFixed(2)} m/s²`,
    written: pushed.push.kind === 'given' ? pushed.push.written : newtons,
    formula: `the least push with which the brakes give the deceleration in ${rule.words}`,
    inputs: loaded.inputs,
    source,
  };
  const limit = standard.push;
  const notes = [
    `${rule.words} is asked by ${sectionOf(rule.source)}${limit ? `, with a push of at most ${Math.round(limit.most)} N (${sectionOf(limit.source)})` : ''}.`,
    standing(asked),
  ];
  if (loaded.kind === 'waits') return { ...frame, notes, result: unknownResult('force', loaded.needs) };
  const { weight } = loaded.loaded;
  const measure = (applied: Applied): number | undefined => {
    const axles = axleForcesAt(applied, context);
    if (axles.kind === 'waits') return undefined;
    return ((axles.forces.front.value + axles.forces.rear.value) / weight) * standardGravity;
  };
  // Any push tells what the brakes wait for.
  const trial = axleForcesAt(context.network.applied({ push: trialPush, pedal: pushed.pedal.id }), context);
  if (trial.kind === 'waits') return { ...frame, notes, result: unknownResult('force', trial.needs) };
  const answer = context.network.pushFor({
    pedal: pushed.pedal.id,
    measure,
    reach: rule.deceleration,
    most: hardestPush,
  });
  if (answer.kind === 'unknown') return { ...frame, notes, result: unknownResult('force', answer.waitsFor) };
  if (answer.kind === 'out-of-reach') {
    const words = `${Math.round(answer.most)} N of push, which bring ${answer.reached.toFixed(2)} m/s²`;
    const need = { name: `more than ${words}`, origin: facts.load.origin };
    return { ...frame, notes, result: unknownResult('force', [need]) };
  }
  const axles = axleForcesAt(answer.applied, context);
  const from = axles.kind === 'ready' ? [axles.forces.front, axles.forces.rear, ...loaded.from] : loaded.from;
  const result: Result<'force'> = {
    kind: 'known',
    dimension: 'force',
    estimate: roughly(answer.push, [exactly(answer.push), ...from]),
    leftOut: [],
  };
  if (axles.kind === 'waits') return { ...frame, notes, result };
  const { front, rear } = axles.forces;
  const { adhesion } = brakedBy({ front: front.value, rear: rear.value }, loaded.loaded);
  const most = Math.max(adhesion.front, adhesion.rear);
  const first = adhesion.front >= adhesion.rear ? 'front' : 'rear';
  return {
    ...frame,
    notes: [
      Number.isFinite(most)
        ? `The ${first} axle then uses an adhesion of ${most.toFixed(2)}; on a road that gives less its wheels lock before.`
        : 'Before that the rear wheels lift, so no road gives it.',
      ...notes,
    ],
    result,
  };
}
