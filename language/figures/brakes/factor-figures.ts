/** `brake.factor` and `brake.factor-reverse`: friction force of a drum brake over the force of one piston. */
import { plainUnit, writtenIn } from '../../quantity/index.ts';
import { commonPractice } from '../../standards/source.ts';
import { wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { Figure } from '../figure.ts';
import { inputsOf } from '../given.ts';
import { knownResult, unknownResult } from '../result.ts';
import { brakeArm } from './brake-arm.ts';
import { statesGeometry } from './shoe-geometry.ts';
import { leadsBothWays } from './shoe-question.ts';

const unworked = commonPractice('brake factors of drum brakes are stated, or follow from the geometry of the shoes');

/** Undefined for a drum brake of which nothing says how strongly it works: its torque names what is missing. */
export function brakeFactor(brake: Part): Figure<'number'> | undefined {
  return factorFigure(brake, { id: 'brake.factor', title: 'brake factor', rotation: 'forward' });
}

/** Only for shoes that change their part when the wheel turns back, and where the geometry tells how much. */
export function brakeFactorReverse(brake: Part): Figure<'number'> | undefined {
  if (wordOf(brake, properties.shoes) !== 'two-leading' || !statesGeometry(brake) || leadsBothWays(brake)) {
    return undefined;
  }
  const figure = factorFigure(brake, {
    id: 'brake.factor-reverse',
    title: 'brake factor in reverse',
    rotation: 'reverse',
  });
  return figure && { ...figure, notes: [...figure.notes, 'Going back, both shoes trail.'] };
}

function factorFigure(
  brake: Part,
  { id, title, rotation }: { readonly id: string; readonly title: string; readonly rotation: 'forward' | 'reverse' },
): Figure<'number'> | undefined {
  if (!brake.facts.has(properties.brakeFactor.key) && !statesGeometry(brake)) return undefined;
  const arm = brakeArm(brake, { rotation, friction: 'rubbing' });
  if (arm === undefined) return undefined;
  // The radius of the drum is in the arm, but not in a factor that is stated.
  const isStated = !statesGeometry(brake);
  const givens = arm.givens.filter(({ input }) => !isStated || input.name.startsWith(properties.brakeFactor.key));
  const frame = { id, title, subject: brake.id, written: writtenIn(plainUnit), inputs: inputsOf(givens) };
  if (arm.kind === 'waits') {
    const formula = 'friction force at the drum / force of one piston';
    return { ...frame, formula, source: unworked, notes: [], result: unknownResult('number', arm.needs) };
  }
  return {
    ...frame,
    formula: arm.formula.replace(/ × drum radius$/, ''),
    source: arm.source,
    notes: [...arm.notes, ...(rotation === 'forward' ? wordsForReverse(brake) : [])],
    result: knownResult('number', arm.factor, brake),
  };
}

/** What going back changes, where no figure of its own says it. */
function wordsForReverse(brake: Part): readonly string[] {
  switch (wordOf(brake, properties.shoes)) {
    case 'leading-trailing':
      return ['The same in reverse: the shoes change parts.'];
    case 'servo':
      return ['The same in reverse where both linings are alike; a shorter primary lining brakes less going back.'];
    case 'two-leading':
      if (leadsBothWays(brake)) return ['The same in reverse: each cylinder has a piston for either way.'];
      return statesGeometry(brake)
        ? []
        : ['In reverse both shoes trail and brake a third to a half as much; the geometry of the shoes would tell.'];
    default:
      return [];
  }
}
