/** rigid-over-sprung: rigid tube between places that move against each other. */
import { writeStated } from '../quantity/index.ts';
import { commonPractice } from '../standards/source.ts';
import type { Part, PartId } from '../system/part.ts';
import { motionBetween, type RelativeMotion } from '../system/places.ts';
import { partOf, type System } from '../system/system.ts';
import { drumBrake, run, stockLine } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { listed } from './wording.ts';

const van = `vehicle van {
  fixed frame
  rubber-mounted cab on frame
  sprung rear-axle on frame travel 160 mm
  sprung front-axle on frame travel 120 mm
}
`;
const teeOn = (place: string) => `tee split on ${place} { ports in, left, right: 3/8-24 inverted-flare }\n`;
const brakeOn = (name: string, place: string) =>
  drumBrake(name).replace(`drum-brake ${name}`, `drum-brake ${name} on ${place}`);

export const rigidOverSprung: Rule = {
  code: 'rigid-over-sprung',
  severity: 'error',
  acceptable: true,
  question: 'Is there a hose wherever the springs let two places move?',
  why: 'Rigid tube that is bent at every bump cracks, and the circuit empties.',
  source: commonPractice(
    'a hose wherever body, axle or wheel move against each other; on rubber mounts a coil or bend in the tube takes it up',
  ),
  fires: [
    {
      title: 'a tube from a tee on the frame to a cylinder on the axle',
      text: `${van}${stockLine}${teeOn('frame')}${brakeOn('rear-left', 'rear-axle')}${run('left-line', 'split.left', 'rear-left.cylinder.feed')}`,
    },
    {
      title: 'the same over a union that stands on nothing',
      text: `${van}${stockLine}${teeOn('frame')}union joint { ports a, b: 3/8-24 inverted-flare }
${brakeOn('rear-left', 'rear-axle')}${run('one', 'split.left', 'joint.a')}${run('two', 'joint.b', 'rear-left.cylinder.feed')}`,
    },
    {
      title: 'a straight tube between the frame and a cab on rubber',
      text: `${van}${stockLine}${teeOn('frame')}master main single on cab { port out: 3/8-24 inverted-flare }
run feed of line { from main.out to split.in route straight 300 mm }
`,
    },
  ],
  silent: [
    {
      title: 'a hose between them',
      text: `${van}${teeOn('frame')}${brakeOn('rear-left', 'rear-axle')}hose left-hose on frame {
  from split.left: 3/8-24 male inverted-flare fixed
  to rear-left.cylinder.feed: 3/8-24 male inverted-flare swivel
}
`,
    },
    {
      title: 'a tube along the axle',
      text: `${van}${stockLine}${teeOn('rear-axle')}${brakeOn('rear-left', 'rear-axle')}${run('left-line', 'split.left', 'rear-left.cylinder.feed')}`,
    },
    {
      title: 'a bent tube between the frame and a cab on rubber',
      text: `${van}${stockLine}${teeOn('frame')}master main single on cab { port out: 3/8-24 inverted-flare }
run feed of line { from main.out to split.in route straight 100 mm, bend 90 deg radius 25 mm, straight 300 mm }
`,
    },
    {
      title: 'parts of which nobody says what they ride on',
      text: `${van}${stockLine}${teeOn('frame')}${drumBrake('rear-left')}${run('left-line', 'split.left', 'rear-left.cylinder.feed')}`,
    },
  ],
  check: ({ system }) => [
    ...assemblies(system).flatMap((assembly) => overSprings(assembly, system)),
    ...onRubber(system),
  ],
};

/** Where an assembly of tube is held: by which part, on which place. */
interface Hold {
  readonly by: Part;
  readonly place: string;
  /** The part of the assembly that is held there. */
  readonly at: Part;
}

/** Tube with the unions and tees that nothing carries but the tube itself: one stiff thing. */
interface Assembly {
  readonly parts: readonly Part[];
  readonly holds: readonly Hold[];
}

const isRun = ({ kind }: Part): boolean => kind === 'run';
const isFlexible = ({ kind }: Part): boolean => kind === 'hose' || kind === 'feed-hose';

function assemblies(system: System): readonly Assembly[] {
  const isLoose = (part: Part): boolean => isRun(part) || (part.place === undefined && !isFlexible(part));
  const seen = new Set<PartId>();
  const found: Assembly[] = [];
  for (const start of system.partById.values()) {
    if (!isRun(start) || seen.has(start.id)) continue;
    seen.add(start.id);
    const parts = [start];
    const holds: Hold[] = [];
    for (const at of parts) {
      if (at.place !== undefined) holds.push({ by: at, place: at.place, at });
      for (const other of neighbours(at, system)) {
        if (isLoose(other)) {
          if (!seen.has(other.id)) parts.push(other);
          seen.add(other.id);
        } else if (!isFlexible(other) && other.place !== undefined) holds.push({ by: other, place: other.place, at });
      }
    }
    found.push({ parts, holds });
  }
  return found;
}

function overSprings({ parts, holds }: Assembly, system: System): readonly Remark[] {
  const [first, ...others] = onePerPlace(holds);
  const places = system.vehicle?.places ?? [];
  if (first === undefined) return [];
  const pairs = [first, ...others].flatMap((a, index) =>
    [first, ...others].slice(index + 1).map((b) => [a, b] as const),
  );
  for (const [a, b] of pairs) {
    const between = motionBetween(places, a.place, b.place);
    if (between?.motion !== 'sprung') continue;
    const runs = parts.filter(isRun);
    const tube = isRun(a.at) ? a.at : isRun(b.at) ? b.at : runs[0];
    if (tube === undefined) continue;
    const chain =
      parts.length > 1 ? `, with ${listed(parts.filter((part) => part !== tube).map(({ label }) => label))},` : '';
    return [
      {
        message: `${tube.label}${chain} is rigid from ${held(a)} to ${held(b)}, and ${moves(between)}. Rigid tube cracks there: put a brake hose between the two.`,
        origin: tube.nameOrigin,
        subject: tube.id,
        also: parts.filter((part) => part !== tube).map(({ id }) => id),
        related: [a, b].map((hold) => ({ message: `held here, ${held(hold)}`, origin: hold.by.nameOrigin })),
      },
    ];
  }
  return [];
}

/** A run between places that only rubber parts, without a coil or bend to take it up. */
function onRubber(system: System): readonly Remark[] {
  const places = system.vehicle?.places ?? [];
  return [...system.partById.values()].filter(isRun).flatMap((tube) => {
    const { route } = tube;
    if (route === undefined || takesUp(route.steps)) return [];
    const [a, b] = neighbours(tube, system).filter((other) => !isFlexible(other));
    if (a?.place === undefined || b?.place === undefined) return [];
    if (motionBetween(places, a.place, b.place)?.motion !== 'rubber-mounted') return [];
    return [
      {
        severity: 'information' as const,
        message: `${tube.label} runs straight from ${a.label} on ${a.place} to ${b.label} on ${b.place}, which move against each other on rubber. A coil or a bend in it takes that up.`,
        origin: tube.nameOrigin,
        subject: tube.id,
        related: [a, b].map((end) => ({ message: `on ${end.place ?? ''}`, origin: end.nameOrigin })),
      },
    ];
  });
}

/** A bend or coil; between three points there is a bend. */
const takesUp = (steps: readonly { readonly kind: string }[]): boolean =>
  steps.some(({ kind }) => kind === 'bend' || kind === 'coil') ||
  steps.filter(({ kind }) => kind === 'point').length > 2;

const held = ({ by, place, at }: Hold): string => (by === at ? place : `${by.label} on ${place}`);

function moves({ moving }: RelativeMotion): string {
  const travels = moving.map(({ name, travel }) => {
    const known = travel !== undefined && travel.kind !== 'unknown';
    return known ? `${name} moves ${writeStated(travel)} on its springs` : `${name} moves on its springs`;
  });
  return listed(travels);
}

function onePerPlace(holds: readonly Hold[]): readonly Hold[] {
  const byPlace = new Map<string, Hold>();
  for (const hold of holds) if (!byPlace.has(hold.place)) byPlace.set(hold.place, hold);
  return [...byPlace.values()];
}

function neighbours(part: Part, system: System): readonly Part[] {
  return part.ports.flatMap(({ id }) =>
    (system.jointsAt.get(id) ?? []).flatMap(({ a, b }) => partOf(system, a === id ? b : a) ?? []),
  );
}
