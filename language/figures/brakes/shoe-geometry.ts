/** The brake factor of a drum brake from what the file says of its shoes. */
import { combineEstimates, type Estimate, type Si, si } from '../../quantity/index.ts';
import { wordOf } from '../../system/fact-of.ts';
import { type MeasureRow, properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import { type Given, givenFact, needsOf } from '../given.ts';
import type { BrakeArm, Rotation } from './brake-arm.ts';
import { jams, type PivotedShoe, pivotedShoeSource, shoeFactor } from './pivoted-shoe.ts';
import { type ServoShoes, servoFactor, servoJams, servoSource } from './servo-shoes.ts';

export interface ShoeQuestion {
  readonly diameter: Given<'length'>;
  readonly friction: Given<'number'>;
  readonly rotation: Rotation;
}

const pivotRows = [properties.pivotRadius, properties.leverArm, properties.liningStart, properties.liningEnd];
const servoRows = [properties.cylinderOffset, properties.adjusterOffset, properties.anchorOffset, properties.liningArc];

/** Whether any fact of the geometry that its arrangement of shoes needs is stated. */
export function statesGeometry(brake: Part): boolean {
  return rowsFor(brake).some(({ key }) => brake.facts.has(key));
}

/** Waits for each size that is missing; undefined geometry (a shoe that jams) waits for sizes that work. */
export function geometryArm(brake: Part, question: ShoeQuestion): BrakeArm {
  switch (wordOf(brake, properties.shoes)) {
    case 'leading-trailing':
    case 'two-leading':
      return pivotedArm(brake, question);
    case 'servo':
      return servoArm(brake, question);
    default: {
      const need: Need = { name: `shoes of ${brake.label}`, origin: brake.nameOrigin };
      return { kind: 'waits', needs: [need], givens: [] };
    }
  }
}

function rowsFor(brake: Part): readonly MeasureRow[] {
  return wordOf(brake, properties.shoes) === 'servo' ? servoRows : pivotRows;
}

function pivotedArm(brake: Part, { diameter, friction, rotation }: ShoeQuestion): BrakeArm {
  const pivot = givenFact(brake, properties.pivotRadius);
  const lever = givenFact(brake, properties.leverArm);
  const start = givenFact(brake, properties.liningStart);
  const end = givenFact(brake, properties.liningEnd);
  const givens = [diameter, friction, pivot, lever, start, end];
  if (
    diameter.kind === 'missing' ||
    friction.kind === 'missing' ||
    pivot.kind === 'missing' ||
    lever.kind === 'missing' ||
    start.kind === 'missing' ||
    end.kind === 'missing'
  ) {
    return { kind: 'waits', needs: needsOf(givens), givens };
  }
  const { words, factorOf } = pairing(brake, rotation);
  const shoe = (across: number, a: Si<'length'>, c: Si<'length'>, from: Si<'angle'>, to: Si<'angle'>): PivotedShoe => ({
    drumRadius: si('length', across / 2),
    pivotRadius: a,
    leverArm: c,
    liningStart: from,
    liningEnd: to,
  });
  const from = [diameter.estimate, pivot.estimate, lever.estimate, start.estimate, end.estimate] as const;
  const factor = combineEstimates('number', (mu, ...sizes) => factorOf(shoe(...sizes), mu), friction.estimate, ...from);
  const arm = combineEstimates(
    'length',
    (mu, across, ...sizes) => (factorOf(shoe(across, ...sizes), mu) * across) / 2,
    friction.estimate,
    ...from,
  );
  if (Number.isNaN(factor.value)) {
    const nominal = shoe(
      diameter.estimate.value,
      pivot.estimate.value,
      lever.estimate.value,
      start.estimate.value,
      end.estimate.value,
    );
    return waitsForSound(brake, jams(nominal, friction.estimate.high), givens);
  }
  // The factor need not rise or fall throughout with an angle, so limits from its corners would claim too much.
  const about = hasWidth(start.estimate) || hasWidth(end.estimate);
  return {
    kind: 'ready',
    arm: { ...arm, about: arm.about || about },
    factor: { ...factor, about: factor.about || about },
    givens,
    formula: `${words}, each from friction, pivot, lever arm and arc of its lining`,
    source: pivotedShoeSource,
    notes: ['For bedded linings and rigid shoes; real shoes lie up to 15 % off.'],
  };
}

function servoArm(brake: Part, { diameter, friction }: ShoeQuestion): BrakeArm {
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

interface Pairing {
  readonly words: string;
  factorOf(shoe: PivotedShoe, friction: Si<'number'>): Si<'number'>;
}

/** Two cylinders with a piston each way let both shoes lead either way round. */
function pairing(brake: Part, rotation: Rotation): Pairing {
  if (wordOf(brake, properties.shoes) === 'leading-trailing') {
    return {
      words: 'leading shoe + trailing shoe',
      factorOf: (shoe, mu) => si('number', shoeFactor(shoe, 'leading', mu) + shoeFactor(shoe, 'trailing', mu)),
    };
  }
  const direction = rotation === 'forward' || leadsBothWays(brake) ? 'leading' : 'trailing';
  return {
    words: `2 × ${direction} shoe`,
    factorOf: (shoe, mu) => si('number', 2 * shoeFactor(shoe, direction, mu)),
  };
}

/** A two-leading brake whose cylinders have a piston at either end. */
export function leadsBothWays(brake: Part): boolean {
  const cylinders = brake.parts.filter(({ kind }) => kind === 'cylinder');
  return cylinders.length > 1 && cylinders.every((cylinder) => wordOf(cylinder, properties.ends) === 'double');
}

function waitsForSound(brake: Part, isJammed: boolean, givens: readonly Given[]): BrakeArm {
  const why = isJammed ? 'with which the shoes do not grab by themselves' : 'that make a shoe';
  const need: Need = { name: `sizes and friction of the shoes of ${brake.label} ${why}`, origin: brake.nameOrigin };
  return { kind: 'waits', needs: [need], givens };
}

const hasWidth = ({ low, high }: Estimate): boolean => low < high;
