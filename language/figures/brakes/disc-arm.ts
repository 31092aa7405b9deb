/** The arm of a disc brake: two faces, the friction of the pads, the radius at which their force acts. */
import { combineEstimates, scaleEstimate } from '../../quantity/index.ts';
import { fromMemory, published, type Source } from '../../standards/source.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { type Given, needsOf } from '../given.ts';
import type { ArmQuestion, BrakeArm } from './brake-arm.ts';
import { givenFriction, givenWithin } from './facts-within.ts';

const discSource = published(
  'torque of a disc = 2 × friction × clamping force × radius, as handbooks and engineering tables print it',
);
const wearSource = fromMemory('uniform wear, as in Shigley and in Bhandari, Design of Machine Elements, chapter 12');

/** 2 µ × effective radius; the same either way round. */
export function discArm(brake: Part, { friction }: ArmQuestion): BrakeArm {
  const radius = effectiveRadius(brake);
  const rubbing = givenFriction(brake, friction);
  const givens = [rubbing, ...radius.givens];
  if (rubbing.kind === 'missing' || radius.given.kind === 'missing') {
    return { kind: 'waits', needs: needsOf([rubbing, radius.given]), givens };
  }
  return {
    kind: 'ready',
    arm: combineEstimates('length', (mu, at) => 2 * mu * at, rubbing.estimate, radius.given.estimate),
    factor: scaleEstimate(rubbing.estimate, 2),
    givens,
    formula: `2 × friction × ${radius.formula}`,
    source: radius.source,
    notes: radius.notes,
  };
}

interface Radius {
  readonly given: Given<'length'>;
  readonly givens: readonly Given[];
  readonly formula: string;
  readonly source: Source;
  readonly notes: readonly string[];
}

/** As stated, else the middle of the band that the pads rub. */
function effectiveRadius(brake: Part): Radius {
  const stated = givenWithin(brake, 'disc', properties.effectiveRadius);
  const asStated = { formula: 'effective radius', source: discSource, notes: [] };
  if (stated.kind === 'given') return { ...asStated, given: stated, givens: [stated] };
  const outer = givenWithin(brake, 'disc', properties.diameter);
  const inner = givenWithin(brake, 'disc', properties.innerDiameter);
  if (outer.kind === 'missing' || inner.kind === 'missing') return { ...asStated, given: stated, givens: [stated] };
  const middle = combineEstimates('length', (out, within) => (out + within) / 4, outer.estimate, inner.estimate);
  return {
    given: { ...outer, estimate: middle },
    givens: [outer, inner],
    formula: '(diameter + inner-diameter) / 4',
    source: wearSource,
    notes: ['The radius is that of evenly worn pads; new pads that press evenly act up to 2 % farther out.'],
  };
}
