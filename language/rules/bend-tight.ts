/** bend-tight: a bend tighter than the tube allows, by the limit that it breaks. */
import { bendsOf } from '../figures/index.ts';
import { lengthWriting } from '../figures/run-route.ts';
import { type Estimate, estimateOf, scaleEstimate, writeEstimate } from '../quantity/index.ts';
import { type BendLevel, type BendLimit, bendLimitBroken } from '../standards/bend-radius.ts';
import { commonPractice } from '../standards/source.ts';
import { factOrigin } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Origin } from '../system/origin.ts';
import type { Part } from '../system/part.ts';
import type { RouteStep } from '../system/route.ts';
import { allParts } from '../system/system.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule, Severity } from './rule.ts';
import { atLeast, counted } from './wording.ts';

const bent = (radius: string) => `run line {
  tube 3/16 in wall 0.028 in copper-nickel
  route straight 100 mm, bend 90 deg radius ${radius}, straight 100 mm
}
`;

export const bendTight: Rule = {
  code: 'bend-tight',
  severity: 'warning',
  acceptable: true,
  question: 'Is any bend tighter than the tube allows?',
  why: 'A bend that is too tight flattens or kinks, and the wall on its outside is drawn thin.',
  source: commonPractice(
    'levels, each with its source: a vehicle maker’s least radius, three times the outside diameter, a maker’s and a DIN guide’s recommendation',
  ),
  fires: [
    { title: 'a bend that will kink', text: bent('8 mm') },
    { title: 'a bend under three diameters', text: bent('13 mm') },
    { title: 'a bend that a guide would make wider: information', text: bent('22 mm') },
    {
      title: 'a coil wound too tightly',
      text: 'run line {\n  tube 6 mm\n  route straight 50 mm, coil 2 turns diameter 30 mm, straight 50 mm\n}\n',
    },
  ],
  silent: [
    { title: 'a bend of 25 mm', text: bent('25 mm') },
    { title: 'a radius that is not known', text: bent('?') },
    { title: 'a tube that is not known', text: bent('8 mm').replace('3/16 in wall 0.028 in', '?') },
  ],
  check: ({ system }) =>
    oncePerPlace(
      allParts(system)
        .filter(({ kind }) => kind === 'run')
        .flatMap((run) => remarksOn(run)),
    ),
};

/** What a level is worth to the person at the bench. */
const severities: Readonly<Record<BendLevel, Severity>> = {
  stop: 'warning',
  rule: 'warning',
  avoid: 'information',
  guide: 'information',
};
const worstFirst: readonly BendLevel[] = ['stop', 'rule', 'avoid', 'guide'];

interface Tight {
  readonly step: RouteStep;
  readonly radius: Estimate<'length'>;
  readonly limit: BendLimit;
  /** Where the radius is said: at the bend, or once for the whole run. */
  readonly origin: Origin;
}

function remarksOn(run: Part): readonly Remark[] {
  const tube = run.tube && estimateOf(run.tube.diameter);
  if (tube === undefined || !(tube.value > 0)) return [];
  const tight = curvesOf(run).flatMap(({ step, radius, origin }): Tight[] => {
    // Certain only if the widest that the limits allow is still too tight.
    const limit = radius.value > 0 ? bendLimitBroken(radius.high, tube.low) : undefined;
    return limit ? [{ step, radius, limit, origin }] : [];
  });
  const rank = ({ limit }: Tight): number => worstFirst.indexOf(limit.level);
  const [worst, ...others] = [...tight].sort((a, b) => rank(a) - rank(b) || a.radius.value - b.radius.value);
  if (worst === undefined || run.tube === undefined) return [];
  const like = lengthWriting(run);
  const { step, radius, limit, origin } = worst;
  const what = step.kind === 'coil' ? 'A coil' : 'A bend';
  const more =
    others.length > 0 ? ` So ${others.length === 1 ? 'is' : 'are'} ${counted(others.length, 'more bend')}.` : '';
  return [
    {
      severity: severities[limit.level],
      message: `${what} of ${run.label} has a centre-line radius of ${writeEstimate(radius, { like })}, ${limit.words} (${limit.source.text}).${more} Make it at least ${atLeast(limit.radius, like)}.`,
      origin,
      subject: run.id,
      related: others.slice(0, 5).map((other) => ({
        message: `radius ${writeEstimate(other.radius, { like })}`,
        origin: other.step.origin,
      })),
    },
  ];
}

/** Bends and coils with their known radii, in the order of the route. */
function curvesOf(run: Part): readonly Omit<Tight, 'limit'>[] {
  const steps = run.route?.steps ?? [];
  const bends = bendsOf(run).flatMap(({ item, radius, radiusFrom }) => {
    const step = steps[item];
    if (step === undefined || radius === undefined) return [];
    const whole = radiusFrom === 'default' ? factOrigin(run, properties.bendRadius) : undefined;
    return [{ step, radius, origin: whole ?? step.origin }];
  });
  const coils = steps.flatMap((step) => {
    const diameter = step.kind === 'coil' ? estimateOf(step.diameter) : undefined;
    return diameter ? [{ step, radius: scaleEstimate(diameter, 0.5), origin: step.origin }] : [];
  });
  return [...bends, ...coils];
}
