/** What closes the running clearance of a wheel brake: shoes to the drum, pads to the disc. */
import { combineEstimates, type Estimate, isKnown, type Si, scaleEstimate, si } from '../../quantity/index.ts';
import { estimateFact, wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { caliperArea } from '../caliper-area.ts';
import { cylinderTotalArea } from '../cylinder-area.ts';
import type { Need } from '../figure.ts';
import { givenFact, givenFigure, needsOf } from '../given.ts';
import { closingPressure } from './displacement-laws.ts';
import { amountOf, sizeOf } from './sizes.ts';
import { against, type Ends, endsOf, marksOf } from './spread.ts';
import type { Takings } from './taking.ts';

/** m³: area of all pistons × travel of the shoe’s tip. */
export function shoeGap(cylinder: Part, brake: Part | undefined): Takings {
  const area = givenFigure(cylinderTotalArea(cylinder), cylinder);
  const clearance = givenFact(brake ?? cylinder, properties.shoeClearance);
  if (area.kind === 'missing' || clearance.kind === 'missing') return lacking(needsOf([area, clearance]));
  const tip = tipTravel(brake ?? cylinder);
  const parts = [area.estimate, clearance.estimate, tip.perGap];
  const volume = product(area.estimate, clearance.estimate, tip.perGap);
  return gap(cylinder, volume, { parts, brake, assumptions: tip.assumptions });
}

/** m³: area of the pistons × their travel; twice that where there are pistons on both sides of the disc. */
export function padGap(caliper: Part, brake: Part | undefined): Takings {
  const area = givenFigure(caliperArea(caliper), caliper);
  const clearance = givenFact(caliper, properties.clearance);
  const mounting = wordOf(caliper, properties.mounting);
  const unsaid: readonly Need[] =
    mounting === undefined ? [{ name: `mounting of ${caliper.label}`, origin: caliper.nameOrigin }] : [];
  if (area.kind === 'missing' || clearance.kind === 'missing' || mounting === undefined) {
    return lacking([...needsOf([area, clearance]), ...unsaid]);
  }
  const sides = mounting === 'fixed' ? 2 : 1;
  const both = scaleEstimate(area.estimate, sides);
  const parts = [area.estimate, clearance.estimate];
  return gap(caliper, product(both, clearance.estimate), { parts, brake, assumptions: [] });
}

interface GapFrame {
  readonly parts: readonly Estimate[];
  readonly brake: Part | undefined;
  readonly assumptions: readonly string[];
}

/** Closed at the pressure that overcomes the return springs where it is stated, else at once. */
function gap(part: Part, volume: Ends, { parts, brake, assumptions }: GapFrame): Takings {
  const pushOut = brake && amountOf(brake, properties.pushOut);
  const closes = endsOf((end) => Math.max(closingPressure, pushOut?.[against[end]] ?? 0));
  const sudden =
    pushOut === undefined
      ? ['Running clearances close before pressure rises where the push-out of a brake is not stated.']
      : [];
  return {
    takings: [
      {
        part: part.id,
        what: 'gap',
        marks: marksOf(pushOut === undefined ? parts : [...parts, pushOut]),
        law: { kind: 'gap', volume, closes },
      },
    ],
    lacks: [],
    assumptions: [...assumptions, ...sudden],
  };
}

function lacking(needs: readonly Need[]): Takings {
  return { takings: [], lacks: needs.map((need) => ({ weight: 'gap', need })), assumptions: [] };
}

/**
 * Travel of a shoe’s tip over the gap at the middle of its lining: lever-arm / (pivot-radius × sin θ) for a shoe that
 * turns about a pivot, θ the middle of the lining counted from it. Without that geometry 2, which a pivot about half the
 * radius out of the middle gives, within 1 (a shoe that floats) and 2.2. Source: geometry of a turning shoe.
 */
function tipTravel(brake: Part): {
  readonly perGap: Estimate<'number'>;
  readonly assumptions: readonly string[];
} {
  const arm = sizeOf(brake, properties.leverArm);
  const radius = sizeOf(brake, properties.pivotRadius);
  const start = estimateFact(brake, properties.liningStart);
  const end = estimateFact(brake, properties.liningEnd);
  if (arm === undefined || radius === undefined || start === undefined || end === undefined) return usualTipTravel;
  const perGap = combineEstimates('number', tipTravelPerGap, arm, radius, start, end);
  return isKnown(perGap) && perGap.low > 0 ? { perGap, assumptions: [] } : usualTipTravel;
}

function tipTravelPerGap(arm: Si<'length'>, radius: Si<'length'>, start: Si<'angle'>, end: Si<'angle'>): number {
  return arm / (radius * Math.sin((start + end) / 2));
}

const ratio = (value: number): Si<'number'> => si('number', value);

function product(...estimates: readonly Estimate[]): Ends {
  return endsOf((end) => estimates.reduce((so, each) => so * each[end], 1));
}

const usualTipTravel: ReturnType<typeof tipTravel> = {
  perGap: { value: ratio(2), low: ratio(1), high: ratio(2.2), about: false, assumed: false },
  assumptions: [
    'Shoe tips travel twice the gap at the middle of the lining (1 to 2.2 times) where the place of the pivots is not stated.',
  ],
};
