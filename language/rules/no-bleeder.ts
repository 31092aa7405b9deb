/** no-bleeder: a cylinder or caliper that no bleeder vents. */
import { commonPractice } from '../standards/source.ts';
import type { Part, PartId } from '../system/part.ts';
import { allParts, outermost, partOf, type System } from '../system/system.ts';
import { wheelBrakesOf, within } from '../system/wheel-brakes.ts';
import { drumBrake, oneCircuit, run, singleMaster, stockLine } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { listed, listedUpTo } from './wording.ts';

const twoCylinders = (second: string) => `drum-brake front-left {
  cylinder lower { ports feed, bridge: 3/8-24 inverted-flare }
  cylinder upper { port bridge: 3/8-24 inverted-flare  ${second} }
  run bridge of line { from front-left.lower.bridge to front-left.upper.bridge }
}
${run('left-line', 'split.left', 'front-left.lower.feed')}`;

const bare = `drum-brake front-right { cylinder { port feed: 3/8-24 inverted-flare } }
${run('right-line', 'split.right', 'front-right.cylinder.feed')}`;

export const noBleeder: Rule = {
  code: 'no-bleeder',
  severity: 'warning',
  acceptable: true,
  question: 'Can the air get out of every cylinder and caliper?',
  why: 'Air that is shut in a cylinder is squeezed before the shoes move: the pedal is soft, or goes down.',
  source: commonPractice(
    'each wheel cylinder, or each pair joined by a bridge tube, has a bleed screw at its highest point',
  ),
  fires: [
    {
      title: 'a cylinder without a bleeder where the others have theirs',
      text: `${stockLine}${singleMaster}${drumBrake('front-left')}${run('left-line', 'split.left', 'front-left.cylinder.feed')}${bare}`,
    },
    {
      title: 'no bleeder in the whole file: a question, since nobody may have written them down',
      text: `${stockLine}${singleMaster}${bare}`,
    },
    {
      title: 'two cylinders of one brake that no bridge joins, and one bleeder',
      text: `${stockLine}${singleMaster}drum-brake front-left {
  cylinder lower { port feed: 3/8-24 inverted-flare }
  cylinder upper { port feed: 3/8-24 inverted-flare  bleeder {} }
}
${run('one', 'split.left', 'front-left.lower.feed')}${run('two', 'split.right', 'front-left.upper.feed')}`,
    },
  ],
  silent: [
    { title: 'a bleeder in each cylinder', text: oneCircuit },
    {
      title: 'one bleeder for two cylinders with a bridge tube',
      text: `${stockLine}${singleMaster}${twoCylinders('bleeder {}')}`,
    },
    {
      title: 'a bleeder named for the brake as a whole',
      text: `${stockLine}${singleMaster}drum-brake front-left { bleeder {}  cylinder { port feed: 3/8-24 inverted-flare } }
${run('one', 'split.left', 'front-left.cylinder.feed')}`,
    },
  ],
  check: ({ system }) => {
    const groups = groupsIn(system).filter((group) => !group.isVented);
    const anywhere = allParts(system).some(({ kind }) => kind === 'bleeder');
    return anywhere
      ? groups.map(({ parts }) => remarkOn(parts)).filter((remark) => remark !== undefined)
      : asked(groups);
  },
};

/** What one bleeder can vent together. */
interface Group {
  readonly parts: readonly Part[];
  readonly isVented: boolean;
}

function remarkOn(parts: readonly Part[]): Remark | undefined {
  const [first, ...others] = parts;
  if (first === undefined) return undefined;
  const names = listed(parts.map(({ label }) => label));
  const what =
    others.length === 0
      ? `${names} has no bleeder, and no bridge leads to a cylinder that has one: air cannot get out of it.`
      : `${names} are joined, and none of them has a bleeder: air cannot get out of them.`;
  const message = `${what} Write bleeder {} in it if it has one at its highest point; if it has none, fit a cylinder that has.`;
  return { message, origin: first.nameOrigin, subject: first.id, also: others.map(({ id }) => id) };
}

/** Where no bleeder is written at all, the writer may not write them: one question for all. */
function asked(groups: readonly Group[]): readonly Remark[] {
  const parts = groups.flatMap((group) => group.parts);
  const [first] = parts;
  if (first === undefined) return [];
  const names = listedUpTo(
    4,
    parts.map(({ label }) => label),
  );
  const message = `No bleeder is written in this circuit, so it cannot be told whether the air gets out of ${names}. Write bleeder {} in each one that has a bleed screw.`;
  return [
    { severity: 'question', message, origin: first.nameOrigin, subject: 'circuit', also: parts.map(({ id }) => id) },
  ];
}

function groupsIn(system: System): readonly Group[] {
  const slaves = system.parts.filter(({ kind }) => kind === 'clutch-slave');
  return [
    ...wheelBrakesOf(system).flatMap(({ brake, actuated }) => {
      const whole = brake.parts.some(({ kind }) => kind === 'bleeder');
      return bridged(brake, actuated, system).map((parts) => ({ parts, isVented: whole || parts.some(hasBleeder) }));
    }),
    ...slaves.map((slave) => ({ parts: [slave], isVented: hasBleeder(slave) })),
  ].map(({ parts, isVented }) => ({ parts: parts.filter(({ kind }) => holdsPiston.has(kind)), isVented }));
}

const holdsPiston: ReadonlySet<string> = new Set(['cylinder', 'caliper', 'clutch-slave']);
const hasBleeder = (part: Part): boolean => within(part).some(({ kind }) => kind === 'bleeder');

/** The parts of a brake in groups that tubes inside the brake, or from one of its cylinders to another, join. */
function bridged(brake: Part, actuated: readonly Part[], system: System): readonly (readonly Part[])[] {
  const inside = within(brake).filter(({ kind }) => kind !== 'bleeder' && kind !== brake.kind);
  const bridges = linesFrom(actuated, system).filter((line) => endsIn(line, system).every((end) => end === brake.id));
  const all = new Map([...inside, ...bridges].map((part) => [part.id, part]));
  const groups: Part[][] = [];
  const left = new Set(all.keys());
  for (const start of actuated) {
    if (!left.delete(start.id)) continue;
    const group = [start];
    for (const part of group) {
      for (const next of neighbours(part, system)) {
        const other = all.get(next);
        if (other !== undefined && left.delete(next)) group.push(other);
      }
    }
    groups.push(group);
  }
  return groups;
}

/** Lines outside the brake that begin or end at one of its cylinders. */
function linesFrom(actuated: readonly Part[], system: System): readonly Part[] {
  const near = new Set(actuated.flatMap((part) => neighbours(part, system)));
  return [...near]
    .flatMap((id) => system.partById.get(id) ?? [])
    .filter(({ kind }) => kind === 'run' || kind === 'hose');
}

/** The outermost parts at the two ends of a line. */
function endsIn(line: Part, system: System): readonly (PartId | undefined)[] {
  return line.ports.map(({ id }) => {
    const joint = system.jointsAt.get(id)?.[0];
    const part = joint && partOf(system, joint.a === id ? joint.b : joint.a);
    return part && outermost(system, part).id;
  });
}

function neighbours(part: Part, system: System): readonly PartId[] {
  return part.ports
    .flatMap(({ id }) => (system.jointsAt.get(id) ?? []).map(({ a, b }) => (a === id ? b : a)))
    .flatMap((port) => partOf(system, port)?.id ?? []);
}
