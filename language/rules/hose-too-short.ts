/** hose-too-short: a hose shorter than its ends are apart. */
import { writtenOf } from '../figures/given.ts';
import {
  combineEstimates,
  type Estimate,
  estimateOf,
  exactly,
  isKnown,
  type Si,
  si,
  type WrittenUnit,
  writeEstimate,
} from '../quantity/index.ts';
import { commonPractice } from '../standards/source.ts';
import { estimateFact, factOrigin, measureOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part, Port } from '../system/part.ts';
import { motionBetween } from '../system/places.ts';
import type { Point } from '../system/route.ts';
import { allParts, partOf, type System } from '../system/system.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';
import { written } from './wording.ts';

const hose = (length: string, places: readonly [string, string] = ['frame', 'frame']) => `vehicle van {
  fixed frame
  sprung rear-axle on frame travel 200 mm
}
tee front on ${places[0]} { port out: 3/8-24 inverted-flare at (0 mm, 0 mm, 400 mm) }
tee rear on ${places[1]} { port in: 3/8-24 inverted-flare at (-200 mm, 0 mm, 400 mm) }
hose jumper {
  length ${length}
  from front.out: 3/8-24 male inverted-flare fixed
  to rear.in: 3/8-24 male inverted-flare swivel
}
`;

export const hoseTooShort: Rule = {
  code: 'hose-too-short',
  severity: 'error',
  acceptable: true,
  question: 'Does the hose reach from end to end?',
  why: 'A hose that is pulled tight is torn out of its fitting, at the bump where the brakes are needed.',
  source: commonPractice(
    'straight distance between the ends, and slack at full bump, full droop and both locks, as makers’ manuals ask',
  ),
  fires: [
    { title: 'a hose that does not reach', text: hose('150 mm') },
    {
      title: 'one that reaches at rest and not over the travel of the axle',
      text: hose('210 mm', ['frame', 'rear-axle']),
    },
  ],
  silent: [
    { title: 'a hose with slack', text: hose('260 mm') },
    { title: 'a hose that reaches over the travel', text: hose('260 mm', ['frame', 'rear-axle']) },
    { title: 'a length that may be enough within its limits', text: hose('195 mm ± 6 mm') },
    { title: 'a length that is not known', text: hose('?') },
  ],
  check: ({ system }) =>
    oncePerPlace(
      allParts(system)
        .filter(({ kind }) => kind === 'hose' || kind === 'feed-hose')
        .flatMap((part) => remarksOn(part, system)),
    ),
};

function remarksOn(part: Part, system: System): readonly Remark[] {
  const length = estimateFact(part, properties.length);
  const stated = measureOf(part, properties.length);
  const like = stated && writtenOf(stated);
  const [from, to] = part.ports.map((port) => endOf(port, system));
  if (length === undefined || like === undefined || from === undefined || to === undefined) return [];
  const resting = distance(from.point, to.point, exactly(si('length', 0)));
  if (resting === undefined) return [];
  const apart = overTravel(from, to, system) ?? { distance: resting, words: undefined };
  const short = si('length', apart.distance.low - length.high);
  if (!(short > 1e-4)) return [];
  const says = { part, length, like, short };
  return [
    length.high < resting.low - 1e-4 ? atRest(says, resting) : onTheMove(says, apart.distance, apart.words ?? ''),
  ];
}

interface Short {
  readonly part: Part;
  readonly length: Estimate<'length'>;
  readonly like: WrittenUnit;
  readonly short: Si<'length'>;
}

function atRest({ part, length, like }: Short, apart: Estimate<'length'>): Remark {
  const by = written(si('length', apart.low - length.high), like);
  return remark(
    part,
    `${part.label} is ${writeEstimate(length, { like })} long and its ends are ${writeEstimate(apart, { like })} apart: it is ${by} too short. Fit a longer one, with slack at full bump, full droop and both steering locks.`,
  );
}

function onTheMove({ part, length, like, short }: Short, apart: Estimate<'length'>, words: string): Remark {
  return remark(
    part,
    `${part.label} is ${writeEstimate(length, { like })} long. ${words} the ends of the hose get at least ${written(apart.low, like)} apart, even if the springs stand at the middle of their travel at rest: it is ${written(short, like)} too short. Fit a longer one, with slack at full bump, full droop and both steering locks.`,
  );
}

const remark = (part: Part, message: string): Remark => ({
  message,
  origin: factOrigin(part, properties.length) ?? part.nameOrigin,
  subject: part.id,
});

interface End {
  readonly point: Point;
  readonly place: string | undefined;
}

/** The point of the end itself, or of the port that it goes to. */
function endOf(port: Port, system: System): End | undefined {
  const joint = system.jointsAt.get(port.id)?.[0];
  const other = joint && system.portById.get(joint.a === port.id ? joint.b : joint.a);
  const position = port.position?.kind === 'point' ? port.position : other?.position;
  if (position?.kind !== 'point') return undefined;
  return { point: position.point, place: other && partOf(system, other.id)?.place };
}

/**
 * How far the ends get from each other at the least, in m, when springs move one of them up and down: half of the travel
 * is certain, whatever share of it is above the place at rest.
 */
function overTravel(
  from: End,
  to: End,
  system: System,
): { readonly distance: Estimate<'length'>; readonly words: string } | undefined {
  if (from.place === undefined || to.place === undefined) return undefined;
  const between = motionBetween(system.vehicle?.places ?? [], from.place, to.place);
  if (between?.motion !== 'sprung') return undefined;
  const travels = between.moving.map(({ travel }) => travel && estimateOf(travel));
  const whole = travels.reduce((sum, travel) => sum + (travel?.low ?? 0), 0);
  if (travels.includes(undefined) || !(whole > 0)) return undefined;
  const half = exactly(si('length', whole / 2));
  const apart = distance(from.point, to.point, half);
  return (
    apart && {
      distance: apart,
      words: `When ${between.moving.map(({ name }) => name).join(' and ')} moves over all of its travel`,
    }
  );
}

/** Between two points, in m; the difference in height counts as at least `rise`. */
function distance(a: Point, b: Point, rise: Estimate<'length'>): Estimate<'length'> | undefined {
  const gaps = (['x', 'y', 'z'] as const).map((axis) => gap(estimateOf(a[axis]), estimateOf(b[axis])));
  const [x, y, z] = gaps;
  if (x === undefined || y === undefined || z === undefined) return undefined;
  const across = (dx: number, dy: number, dz: number, up: number) => Math.hypot(dx, dy, Math.max(dz, up));
  const apart = combineEstimates('length', across, x, y, z, rise);
  return isKnown(apart) ? apart : undefined;
}

/** How far apart two coordinates are, without a sign. */
function gap(a: Estimate<'length'> | undefined, b: Estimate<'length'> | undefined): Estimate<'length'> | undefined {
  if (a === undefined || b === undefined) return undefined;
  const overlap = a.low <= b.high && b.low <= a.high;
  const ends = [Math.abs(a.low - b.high), Math.abs(a.high - b.low)];
  return {
    value: si('length', Math.abs(a.value - b.value)),
    low: si('length', overlap ? 0 : Math.min(...ends)),
    high: si('length', Math.max(...ends)),
    about: a.about || b.about,
    assumed: a.assumed || b.assumed,
  };
}
