/** The arm of a drum brake: its brake factor, as stated or from the geometry of the shoes, at the radius of the drum. */
import { combineEstimates, mapEstimate } from '../../quantity/index.ts';
import { commonPractice } from '../../standards/source.ts';
import { wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { givenFact, needsOf } from '../given.ts';
import type { ArmQuestion, BrakeArm } from './brake-arm.ts';
import { givenFriction, givenWithin } from './facts-within.ts';
import { geometryArm, statesGeometry } from './shoe-geometry.ts';

const statedSource = commonPractice(
  'the brake factor as stated: friction force at the drum over the force of one piston',
);

/** A stated factor counts before the geometry. */
export function drumArm(brake: Part, question: ArmQuestion): BrakeArm {
  const diameter = givenWithin(brake, 'drum', properties.diameter);
  const factor = givenFact(brake, properties.brakeFactor);
  const isGeometry = factor.kind === 'missing' && statesGeometry(brake);
  const knowsWay = question.rotation === 'forward' || wordOf(brake, properties.shoes) !== 'two-leading';
  if (isGeometry || (statesGeometry(brake) && !knowsWay)) {
    return geometryArm(brake, {
      diameter,
      friction: givenFriction(brake, question.friction),
      rotation: question.rotation,
    });
  }
  const givens = [factor, diameter];
  if (factor.kind === 'missing' || diameter.kind === 'missing') {
    return { kind: 'waits', needs: needsOf(givens), givens };
  }
  if (!knowsWay) {
    const name = `geometry of the shoes of ${brake.label}, for its brake factor in reverse`;
    return { kind: 'waits', needs: [{ name, origin: brake.nameOrigin }], givens };
  }
  return {
    kind: 'ready',
    arm: combineEstimates('length', (times, across) => (times * across) / 2, factor.estimate, diameter.estimate),
    factor: mapEstimate('number', (times) => times, factor.estimate),
    givens,
    formula: 'brake-factor × drum radius',
    source: statedSource,
    notes: [],
  };
}
