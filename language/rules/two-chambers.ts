/** two-chambers: a way for fluid from one chamber to another, so that neither circuit stands alone. */
import { published } from '../standards/source.ts';
import type { FluidGraph, Volume } from '../system/fluid-graph.ts';
import type { Part, PartId } from '../system/part.ts';
import { isOpenWay, type PressureBodies, pressureBodiesOf } from '../system/pressure-bodies.ts';
import type { System } from '../system/system.ts';
import { run, splitCar } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { listed, listedUpTo, places } from './wording.ts';

const twinCaliper = (inside: string) => `disc-brake front-left {
  caliper { mounting fixed  ports upper, lower: 3/8-24 inverted-flare  ${inside}  bleeder {} }
}
run one { from main.primary.out to front-left.caliper.upper }
run two { from main.secondary.out to front-left.caliper.lower }
master main tandem {
  primary { port out: 3/8-24 inverted-flare }
  secondary { port out: 3/8-24 inverted-flare }
}
`;

export const twoChambers: Rule = {
  code: 'two-chambers',
  severity: 'error',
  acceptable: true,
  question: 'Does each circuit have one chamber of its own?',
  why: 'Where two chambers press the same fluid the circuits are one, and a leak in either empties both.',
  source: published('49 CFR 571.105 S4: a leak in one subsystem of a split system must not impair another'),
  fires: [
    {
      title: 'a tube from one circuit to the other',
      text: splitCar
        .replaceAll(/tee (front|rear)-tee \{ ports in, left, right:/g, 'cross $1-tee { ports in, left, right, extra:')
        .concat(run('across', 'front-tee.extra', 'rear-tee.extra')),
    },
    { title: 'a caliper that both chambers feed, and that does not say its paths: a question', text: twinCaliper('') },
  ],
  silent: [
    { title: 'a circuit for each axle', text: splitCar },
    { title: 'a caliper with two circuits that says its paths', text: twinCaliper('path upper  path lower') },
    {
      title: 'a warning valve with a spool between the circuits',
      text: `master main tandem {
  primary { port out: 3/8-24 inverted-flare }
  secondary { port out: 3/8-24 inverted-flare }
}
pressure-differential-valve warning {
  ports a, b: 3/8-24 inverted-flare
  path a
  path b
}
run one { from main.primary.out to warning.a }
run two { from main.secondary.out to warning.b }
`,
    },
  ],
  check: ({ system }) => {
    const bodies = pressureBodiesOf(system);
    return [...joined(bodies, system), ...mayBeJoined(bodies, system)];
  },
};

function joined({ bodies }: PressureBodies, system: System): readonly Remark[] {
  return bodies.flatMap(({ chambers }) => {
    const [first, second] = chambers;
    if (first === undefined || second === undefined) return [];
    const way = partsOf(wayBetween(first, second, system.graph), system);
    const middle = way[Math.floor(way.length / 2)];
    const names = listed(labels(chambers, system));
    const between = way.slice(1, -1).map(({ label }) => label);
    const over = between.length > 0 ? `, over ${listedUpTo(5, between)}` : '';
    return [
      {
        message: `${names} press the same fluid${over}: the circuits are one, and a leak in either empties both. Part them where they are joined.`,
        origin: (middle ?? system.partById.get(first))?.nameOrigin ?? { uri: system.uri, start: 0, end: 0 },
        subject: middle?.id ?? first,
        also: [...chambers, ...way.slice(1, -1).map(({ id }) => id)],
        related: places(way, 6, (part) => `on the way: ${part.label}`),
      },
    ];
  });
}

/** Both arrive at a cylinder or caliper; whether they meet in it the file does not say. */
function mayBeJoined({ meetings, at }: PressureBodies, system: System): readonly Remark[] {
  return meetings.flatMap((volume) => {
    const part = system.partById.get(volume.part);
    const chambers = (at.get(volume.id) ?? []).flatMap((body) => body.chambers);
    if (part === undefined) return [];
    const ports = part.ports.map(({ name }) => name);
    const paths = ports.map((name) => `path ${name}`).join(' and ');
    return [
      {
        severity: 'question' as const,
        message: `${listed(labels(chambers, system))} both arrive at ${part.label}. If each works pistons of its own in it, write ${paths} there; if not, the circuits are joined and a leak in either empties both.`,
        origin: part.nameOrigin,
        subject: part.id,
        also: chambers,
      },
    ];
  });
}

/** The parts on a shortest way, both ends included. */
function wayBetween(from: PartId, to: PartId, graph: FluidGraph): readonly PartId[] {
  const volumes = new Map(graph.volumes.map((volume) => [volume.id, volume]));
  const pressed = (part: PartId): Volume | undefined =>
    graph.volumes.find((volume) => volume.part === part && volume.side === 'pressure');
  const [start, goal] = [pressed(from), pressed(to)];
  if (start === undefined || goal === undefined) return [];
  const cameFrom = new Map<string, string | undefined>([[start.id, undefined]]);
  for (const here of cameFrom.keys()) {
    if (here === goal.id) break;
    for (const tie of (graph.tiesAt.get(here) ?? []).filter(isOpenWay)) {
      const next = tie.a === here ? tie.b : tie.a;
      if (!cameFrom.has(next) && volumes.get(next)?.side === 'pressure') cameFrom.set(next, here);
    }
  }
  const way: PartId[] = [];
  let here: string | undefined = cameFrom.has(goal.id) ? goal.id : undefined;
  while (here !== undefined) {
    const part = volumes.get(here)?.part;
    if (part !== undefined && way[0] !== part) way.unshift(part);
    here = cameFrom.get(here);
  }
  return way;
}

const partsOf = (ids: readonly PartId[], system: System): readonly Part[] =>
  ids.flatMap((id) => system.partById.get(id) ?? []);

const labels = (ids: readonly PartId[], system: System): readonly string[] =>
  partsOf(ids, system).map(({ label }) => label);
