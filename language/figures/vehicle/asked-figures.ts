/** `vehicle.service-deceleration-asked`, `vehicle.failed-deceleration-asked`: what standards ask, for information. */
import { exactly } from '../../quantity/index.ts';
import type { BrakingStandard, StopRule } from '../../standards/braking-standards.ts';
import type { FigureContext } from '../context.ts';
import type { Figure } from '../figure.ts';
import { inFamilyOf, millimetres } from '../writing.ts';
import { askedOf, sectionOf, standing } from './asked.ts';

/** In m/s²; undefined where class or year are unknown, or nothing is known to be asked of them. */
export function serviceDecelerationAsked(context: FigureContext): Figure<'acceleration'> | undefined {
  return askedFigure(context, ({ service }) => service, {
    id: 'vehicle.service-deceleration-asked',
    title: 'deceleration asked with everything working',
  });
}

/** In m/s², with one circuit leaking. */
export function failedDecelerationAsked(context: FigureContext): Figure<'acceleration'> | undefined {
  return askedFigure(context, ({ circuitFailed }) => circuitFailed, {
    id: 'vehicle.failed-deceleration-asked',
    title: 'deceleration asked with one circuit failed',
  });
}

function askedFigure(
  { system }: FigureContext,
  pick: (standard: BrakingStandard) => StopRule | undefined,
  about: Pick<Figure, 'id' | 'title'>,
): Figure<'acceleration'> | undefined {
  const [strictest, ...others] = askedOf(system, pick, ({ deceleration }) => deceleration);
  if (strictest === undefined) return undefined;
  const { rule, standard } = strictest;
  return {
    ...about,
    subject: 'system',
    written: inFamilyOf(millimetres, 'acceleration'),
    result: { kind: 'known', dimension: 'acceleration', estimate: exactly(rule.deceleration), leftOut: [] },
    formula: `the deceleration in ${rule.words}`,
    inputs: [],
    source: rule.source,
    notes: [
      standing(strictest),
      ...(standard.push
        ? [`With a push of at most ${Math.round(standard.push.most)} N (${sectionOf(standard.push.source)}).`]
        : []),
      ...others.map((other) => `${other.standard.name} asks ${other.rule.words} (${sectionOf(other.rule.source)}).`),
    ],
  };
}
