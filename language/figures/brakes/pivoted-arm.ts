/** The arm of a drum brake with pivoted shoes: leading and trailing, or two leading. */
import { combineEstimates, type Estimate, type Si, si } from '../../quantity/index.ts';
import { wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { givenFact, givenFromZero, needsOf } from '../given.ts';
import type { BrakeArm, Rotation } from './brake-arm.ts';
import { jams, type PivotedShoe, pivotedShoeSource, shoeFactor } from './pivoted-shoe.ts';
import { leadsBothWays, type ShoeQuestion, waitsForSound } from './shoe-question.ts';

/** Waits for each size that is missing, and for sizes that work where these give no brake. */
export function pivotedArm(brake: Part, { diameter, friction, rotation }: ShoeQuestion): BrakeArm {
  const pivot = givenFact(brake, properties.pivotRadius);
  const lever = givenFact(brake, properties.leverArm);
  const start = givenFromZero(brake, properties.liningStart);
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

const hasWidth = ({ low, high }: Estimate): boolean => low < high;
