/** mixed-fluid: fluids that must not meet in one circuit. */
import { type FluidName, fluidNames, fluids, fluidsMix } from '../standards/fluids.ts';
import { published } from '../standards/source.ts';
import { wordOf } from '../system/fact-of.ts';
import { isChamber } from '../system/fluid-graph.ts';
import { properties } from '../system/kinds/index.ts';
import type { Origin } from '../system/origin.ts';
import type { Part, PartId } from '../system/part.ts';
import { outermost, type System } from '../system/system.ts';
import type { Remark, Rule } from './rule.ts';
import { listed } from './wording.ts';

const twoReservoirs = (first: string, second: string) => `fluid dot-4
master main tandem {
  primary { ports in: barb  port out: 3/8-24 inverted-flare plugged }
  secondary { ports in: barb  port out: 3/8-24 inverted-flare plugged }
}
reservoir one { ${first}  feeds main.primary }
reservoir two { ${second}  feeds main.secondary }
`;

export const mixedFluid: Rule = {
  code: 'mixed-fluid',
  severity: 'error',
  acceptable: false,
  question: 'Is there one kind of fluid in each circuit?',
  why: 'The wrong fluid swells or eats the rubber of every seal that it reaches, and the brakes fail some days later.',
  source: published('49 CFR 571.116 S5.1.10 and S5.2.2.3(e)'),
  fires: [
    {
      title: 'mineral oil and a glycol fluid in one file, and no word of where each is',
      text: 'fluid dot-4 {}\nfluid mineral {}\n',
    },
    {
      title: 'two reservoirs of one master with fluids that must not meet',
      text: twoReservoirs('fluid dot-4', 'fluid dot-5'),
    },
    {
      title: 'a fluid of the file that none of its reservoirs holds',
      text: twoReservoirs('fluid mineral', 'fluid mineral'),
    },
    { title: 'one reservoir apart from the rest of the same master', text: twoReservoirs('', 'fluid mineral') },
  ],
  silent: [
    { title: 'one fluid', text: 'fluid dot-4\n' },
    { title: 'two glycol fluids, which mix', text: 'fluid dot-3 {}\nfluid dot-4 {}\n' },
    {
      title: 'a clutch with mineral oil in a reservoir of its own',
      text: `fluid dot-4
master main single { port out: 3/8-24 inverted-flare plugged  reservoir { feeds main } }
master clutch single { port out: 3/8-24 inverted-flare plugged  reservoir { fluid mineral  feeds clutch } }
`,
    },
    { title: 'two reservoirs with fluids that mix', text: twoReservoirs('fluid dot-4', 'fluid dot-5.1') },
  ],
  check: ({ system }) => [...declaredTogether(system), ...meetingInCircuit(system), ...nowhere(system)],
};

interface Fill {
  readonly grade: FluidName;
  readonly origin: Origin;
  /** The reservoir that says so; undefined for the fluid of the file. */
  readonly reservoir: Part | undefined;
}

function declaredTogether({ fluids: declared }: System): readonly Remark[] {
  const fills = declared.flatMap(({ grade, origin }) => {
    const known = fluidNames.find((name) => name === grade);
    return known ? [{ grade: known, origin, reservoir: undefined }] : [];
  });
  return clashIn(
    fills,
    'circuit',
    'The file names two fluids for the vehicle.',
    'Keep one; a reservoir that holds another says so itself with its own fluid.',
  );
}

/** Reservoirs whose fluid meets: over a line, over a chamber that both feed, or at the piston between two chambers. */
function meetingInCircuit(system: System): readonly Remark[] {
  const bodies = shared(system);
  const general = system.fluids.length === 1 ? system.fluids[0] : undefined;
  const usual = fluidNames.find((name) => name === general?.grade);
  const byBody = new Map<string, Fill[]>();
  for (const part of system.partById.values()) {
    if (part.kind !== 'reservoir') continue;
    const own = ownFill(part);
    const origin = own ? own.origin : general?.origin;
    const grade = own?.grade ?? usual;
    if (grade === undefined || origin === undefined) continue;
    const body = bodies(part.id);
    byBody.set(body, [...(byBody.get(body) ?? []), { grade, origin, reservoir: part }]);
  }
  return [...byBody.values()].flatMap((fills) => {
    const names = listed(fills.flatMap(({ reservoir }) => reservoir?.label ?? []));
    const first = fills[0]?.reservoir?.id ?? 'circuit';
    return clashIn(
      fills,
      first,
      `The fluids of ${names} meet.`,
      'Find out what is in there; if both have been in it, every seal and hose is suspect and has to be replaced.',
    );
  });
}

/** The file says what the vehicle is filled with, and all its reservoirs hold something that must not meet it. */
function nowhere(system: System): readonly Remark[] {
  const [general, ...others] = system.fluids;
  const grade = fluidNames.find((name) => name === general?.grade);
  if (general === undefined || grade === undefined || others.length > 0) return [];
  const parts = [...system.partById.values()];
  const fills = parts
    .filter(({ kind }) => kind === 'reservoir')
    .map((reservoir) => ({ reservoir, own: ownFill(reservoir) }));
  const [first] = fills;
  if (
    first?.own === undefined ||
    fills.some(({ own }) => own === undefined || fluidsMix(grade, own.grade).kind === 'mixes')
  )
    return [];
  // A chamber without a reservoir in the file may hold what the file names.
  const bodies = shared(system);
  const filled = new Set(fills.map(({ reservoir }) => bodies(reservoir.id)));
  if (parts.some((part) => isChamber(part) && !filled.has(bodies(part.id)))) return [];
  return clashIn(
    [
      { grade, origin: general.origin, reservoir: undefined },
      { ...first.own, reservoir: first.reservoir },
    ],
    first.reservoir.id,
    `The file fills the vehicle with ${fluids[grade].words}, and ${first.reservoir.label} holds ${fluids[first.own.grade].words}.`,
    'Find out which of the two is in there, and write that one only.',
  );
}

function ownFill(reservoir: Part): Pick<Fill, 'grade' | 'origin'> | undefined {
  const grade = fluidNames.find((name) => name === wordOf(reservoir, properties.fluidGrade));
  const origin = reservoir.facts.get(properties.fluidGrade.key)?.origin;
  return grade && origin ? { grade, origin } : undefined;
}

function clashIn(fills: readonly Fill[], subject: string, where: string, next: string): readonly Remark[] {
  for (const [index, a] of fills.entries()) {
    for (const b of fills.slice(index + 1)) {
      const mixing = fluidsMix(a.grade, b.grade);
      if (mixing.kind === 'mixes') continue;
      return [
        {
          message: `${where} ${fluids[a.grade].words} and ${fluids[b.grade].words} must not meet: ${mixing.why}. ${next}`,
          origin: b.origin,
          subject: b.reservoir?.id ?? subject,
          also: fills.flatMap(({ reservoir }) => reservoir?.id ?? []),
          related: [{ message: `${fluids[a.grade].words} here`, origin: a.origin }],
        },
      ];
    }
  }
  return [];
}

/** Names the body of fluid that a part belongs to, reserve side and all. */
function shared(system: System): (part: PartId) => string {
  const { volumes, ties } = system.graph;
  const partOfVolume = new Map(volumes.map(({ id, part }) => [id, part]));
  const beside = new Map<string, string[]>();
  const join = (a: string | undefined, b: string | undefined) => {
    if (a === undefined || b === undefined || a === b) return;
    beside.set(a, [...(beside.get(a) ?? []), b]);
    beside.set(b, [...(beside.get(b) ?? []), a]);
  };
  for (const { a, b } of ties) join(partOfVolume.get(a), partOfVolume.get(b));
  for (const { verb, from, to } of system.links) if (verb === 'feeds') join(from, to);
  for (const part of system.partById.values()) {
    const isHeld = isChamber(part) || part.kind === 'compartment' || part.kind === 'reservoir';
    if (isHeld && part.parent !== undefined) join(part.id, outermost(system, part).id);
  }
  const bodyOf = new Map<string, string>();
  for (const start of system.partById.keys()) {
    if (bodyOf.has(start)) continue;
    bodyOf.set(start, start);
    const body: string[] = [start];
    for (const here of body) {
      for (const next of beside.get(here) ?? []) {
        if (bodyOf.has(next)) continue;
        bodyOf.set(next, start);
        body.push(next);
      }
    }
  }
  return (part) => bodyOf.get(part) ?? part;
}
