/** `pedal.rod-force`: the force in the push-rod for the stated push. */
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Figure } from './figure.ts';
import { givenFact, inputsOf } from './given.ts';
import { atPushOf } from './pedal-push.ts';
import { unknownResult } from './result.ts';
import { levers } from './sources.ts';
import { inFamilyOf, newtons } from './writing.ts';

/** In N, before any booster. */
export function pedalRodForce(pedal: Part, context: FigureContext): Figure<'force'> {
  const { push, applied, needs } = atPushOf(pedal, context);
  const ratio = givenFact(pedal, properties.ratio);
  const stated = [properties.efficiency, properties.returnForce].filter(({ key }) => pedal.facts.has(key));
  return {
    id: 'pedal.rod-force',
    subject: pedal.id,
    title: 'force in the push-rod at the push',
    written: push.kind === 'given' ? inFamilyOf(push.written, 'force') : newtons,
    result: applied?.rodForce ?? unknownResult('force', needs),
    formula: '(push − return-force) × ratio × efficiency',
    inputs: inputsOf([push, ratio, ...stated.map((row) => givenFact(pedal, row))]),
    source: levers,
    notes: pedal.facts.has(properties.efficiency.key)
      ? []
      : ['No loss in the linkage is counted: its efficiency is not stated.'],
  };
}
