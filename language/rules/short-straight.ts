/** short-straight: too little straight tube behind a flare, or between two bends, for tools to hold. */
import { bendTable } from '../figures/bend-table.ts';
import { developmentOf, lengthWriting } from '../figures/run-route.ts';
import { type Estimate, estimateOf, type WrittenUnit, writeEstimate } from '../quantity/index.ts';
import { commonPractice } from '../standards/source.ts';
import { straightBehindFlare, straightBetweenBends } from '../standards/straight-needed.ts';
import type { Origin } from '../system/origin.ts';
import type { Part, Port } from '../system/part.ts';
import { allParts } from '../system/system.ts';
import type { Remark, Rule } from './rule.ts';
import { roundly } from './wording.ts';

const bent = (route: string, flare = 'double-45') => `run line {
  tube 3/16 in wall 0.028 in copper-nickel
  flare ${flare}
  bend-radius 25 mm
  route ${route}
}
`;

export const shortStraight: Rule = {
  code: 'short-straight',
  severity: 'warning',
  acceptable: true,
  question: 'Is there straight tube enough for the flaring bar, the nut and the bender?',
  why: 'Behind a flare the bar has to hold and the nut has to lie; between two bends the bender has to hold. Where they cannot, the line cannot be made as drawn.',
  source: commonPractice(
    'at least 25 mm, better 40 mm, of straight tube behind each flare; two outside diameters between bends, from memory',
  ),
  fires: [
    { title: 'a bend close behind the first flare', text: bent('straight 15 mm, bend 90 deg, straight 200 mm') },
    { title: 'a bend close before the last flare', text: bent('straight 200 mm, bend 90 deg, straight 18 mm') },
    {
      title: 'corners that leave little behind the flare',
      text: bent('corner 40 mm, bend 90 deg, corner 200 mm'),
    },
    {
      title: 'two bends in different planes with next to nothing between: information',
      text: bent('straight 100 mm, bend 90 deg, straight 5 mm, turn 90 deg, bend 90 deg, straight 100 mm'),
    },
  ],
  silent: [
    { title: 'room enough at both ends', text: bent('straight 40 mm, bend 90 deg, straight 60 mm') },
    { title: 'just enough', text: bent('straight 25 mm, bend 90 deg, straight 25 mm') },
    { title: 'an end that takes no flare', text: bent('straight 15 mm, bend 90 deg, straight 15 mm', 'none') },
    {
      title: 'a straight whose limits reach far enough',
      text: bent('straight 20 mm ± 8 mm, bend 90 deg, straight 60 mm'),
    },
    { title: 'a straight that is not known', text: bent('straight ?, bend 90 deg, straight 60 mm') },
    { title: 'a route that cannot be at all', text: bent('straight 0 mm, bend 90 deg, straight 200 mm') },
    { title: 'a short line without a bend', text: bent('straight 20 mm') },
    {
      title: 'a bend made in two goes in one plane',
      text: bent('straight 100 mm, bend 45 deg, bend 45 deg, straight 100 mm'),
    },
  ],
  check: ({ system }) =>
    allParts(system)
      .filter(({ kind }) => kind === 'run')
      .flatMap(remarksOn),
};

function remarksOn(run: Part): readonly Remark[] {
  const table = bendTable(run);
  // What cannot be bent at all is said elsewhere.
  if ((developmentOf(run)?.problems.length ?? 0) > 0) return [];
  // A coil may take the straight tube beside it, and the route does not say how much.
  if (table === undefined || table.bends.length === 0 || run.route?.steps.some(({ kind }) => kind === 'coil'))
    return [];
  const like = lengthWriting(run);
  const [first] = table.bends;
  return [
    ...behindFlare(run, 'from', first?.straight, like),
    ...behindFlare(run, 'to', table.lastStraight, like),
    ...betweenBends(run, like),
  ];
}

function behindFlare(
  run: Part,
  name: 'from' | 'to',
  straight: Estimate<'length'> | undefined,
  like: WrittenUnit,
): readonly Remark[] {
  const end = run.ports.find((port) => port.name === name);
  if (straight === undefined || (end !== undefined && isPlain(end))) return [];
  // Certain only if the longest that the limits allow is still too short.
  if (straight.about || !(straight.high < straightBehindFlare.least - 1e-6)) return [];
  const [least, ample] = [straightBehindFlare.least, straightBehindFlare.comfortable].map((length) =>
    roundly(length, like),
  );
  return [
    {
      message: `Only ${writeEstimate(straight, { like })} of straight tube lies between the ${name} end of ${run.label} and its ${name === 'from' ? 'first' : 'last'} bend. The flaring bar and the nut want ${least} to ${ample} (common practice). Move the bend; else flare that end before bending and see that the nut keeps room.`,
      origin: stepAt(run, name === 'from' ? 'first' : 'last'),
      subject: run.id,
    },
  ];
}

function betweenBends(run: Part, like: WrittenUnit): readonly Remark[] {
  const tube = run.tube && estimateOf(run.tube.diameter);
  if (tube === undefined || !(tube.low > 0)) return [];
  const { least } = straightBetweenBends(tube.low);
  return (bendTable(run)?.bends ?? []).slice(1).flatMap(({ number, straight, rotation }): readonly Remark[] => {
    if (straight === undefined || straight.about || !(straight.high < least - 1e-6)) return [];
    // Bends that follow one another in one plane are one long bend to the bender.
    if (rotation === undefined || Math.abs(rotation.value) < 1e-3) return [];
    return [
      {
        severity: 'information',
        message: `Only ${writeEstimate(straight, { like })} of straight tube lies between bends ${number - 1} and ${number} of ${run.label}. A bender wants about ${roundly(least, like)} to hold (two outside diameters, from memory). See whether yours can, or move the bends apart.`,
        origin: run.route?.origin ?? run.nameOrigin,
        subject: run.id,
      },
    ];
  });
}

const isPlain = ({ connection }: Port): boolean => connection.kind === 'tube-end' && connection.flare === 'none';

function stepAt(run: Part, which: 'first' | 'last'): Origin {
  const step = run.route?.steps.at(which === 'first' ? 0 : -1);
  return step?.origin ?? run.nameOrigin;
}
