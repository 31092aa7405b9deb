/** The arm of a servo drum brake. */
import { si } from '../../quantity/index.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { givenFact, needsOf } from '../given.ts';
import type { BrakeArm } from './brake-arm.ts';
import { type ServoShoes, servoFactor, servoJams, servoSource } from './servo-shoes.ts';
import { type ShoeQuestion, waitsForSound } from './shoe-question.ts';

/** Waits for each size that is missing, and for sizes that work where these give no brake. */
export function servoArm(brake: Part, { diameter, friction }: ShoeQuestion): BrakeArm {
  const cylinder = givenFact(brake, properties.cylinderOffset);
  const adjuster = givenFact(brake, properties.adjusterOffset);
  const anchor = givenFact(brake, properties.anchorOffset);
  const arc = givenFact(brake, properties.liningArc);
  const givens = [diameter, friction, cylinder, adjuster, anchor, arc];
  if (
    diameter.kind === 'missing' ||
    friction.kind === 'missing' ||
    cylinder.kind === 'missing' ||
    adjuster.kind === 'missing' ||
    anchor.kind === 'missing' ||
    arc.kind === 'missing'
  ) {
    return { kind: 'waits', needs: needsOf(givens), givens };
  }
  const shoes: ServoShoes = {
    drumRadius: si('length', diameter.estimate.value / 2),
    cylinderOffset: cylinder.estimate.value,
    adjusterOffset: adjuster.estimate.value,
    anchorOffset: anchor.estimate.value,
    liningArc: arc.estimate.value,
  };
  const mu = friction.estimate.value;
  const times = servoFactor(shoes, mu);
  if (Number.isNaN(times)) return waitsForSound(brake, servoJams(shoes, mu), givens);
  const marks = {
    // The method itself is some per cent high, so that no limits can be given.
    about: true,
    assumed: givens.some((given) => given.kind === 'given' && given.estimate.assumed),
  };
  const arm = si('length', times * shoes.drumRadius);
  return {
    kind: 'ready',
    arm: { value: arm, low: arm, high: arm, ...marks },
    factor: { value: times, low: times, high: times, ...marks },
    givens,
    formula: 'primary shoe between pistons and adjuster, secondary shoe between adjuster and anchor',
    source: servoSource,
    notes: ['The secondary shoe gives about three quarters of the torque; the factor comes out 3 % to 10 % high.'],
  };
}
