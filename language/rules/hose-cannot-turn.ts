/** hose-cannot-turn: a hose of which both ends have to be turned with the hose, so that it is fitted twisted. */
import { hoseEndOf } from '../standards/hose-ends.ts';
import { commonPractice } from '../standards/source.ts';
import type { Part, Port } from '../system/part.ts';
import { allParts, type System } from '../system/system.ts';
import type { Remark, Rule } from './rule.ts';

const hose = (atWheel: string): string => `stock line {
  tube 3/16 in steel
  nut 3/8-24
  flare double-45
}

tee front {
  ports feed, left, right: 3/8-24 inverted-flare
}

hose left-hose {
  length 300 mm
  from front.left: 3/8-24 male inverted-flare fixed
  to left.cylinder.feed: ${atWheel}
}

drum-brake left {
  cylinder {
    port feed: 3/8-24 inverted-flare
    bleeder {}
  }
}
`;

export const hoseCannotTurn: Rule = {
  code: 'hose-cannot-turn',
  question: 'Can the hose be tightened at both ends without a twist?',
  why: 'A fixed end turns the whole hose as it is screwed in. When the other end is held already, the hose stays twisted, pulls at its own fittings and rubs where it should hang free.',
  severity: 'error',
  source: commonPractice('how the ends of brake hoses are made and tightened'),
  acceptable: true,
  fires: [
    { title: 'two fixed male ends', text: hose('3/8-24 male inverted-flare fixed') },
    { title: 'a male end that does not say whether it swivels', text: hose('3/8-24 male inverted-flare') },
  ],
  silent: [
    { title: 'a swivel at one end', text: hose('3/8-24 male inverted-flare swivel') },
    {
      title: 'a female end into which the nut of a tube goes',
      text: hose('3/8-24 male inverted-flare fixed')
        .replace('from front.left: 3/8-24 male inverted-flare fixed', 'from : 3/8-24 female inverted-flare fixed')
        .concat('\nrun left-line of line { from front.left to left-hose.from }\n'),
    },
    {
      title: 'a banjo at one end',
      text: `disc-brake left {
  caliper {
    mounting sliding
    port feed: M10x1 banjo
    bleeder {}
  }
}

tee front {
  ports feed, left, right: 3/8-24 inverted-flare
}

hose left-hose {
  length 300 mm
  from front.left: 3/8-24 male inverted-flare fixed
  to left.caliper.feed: banjo 10 mm
}
`,
    },
  ],
  check: ({ system }) =>
    allParts(system)
      .filter((part) => part.kind === 'hose')
      .map((part) => remarkOn(part, system))
      .filter((remark) => remark !== undefined),
};

/** `said`: the file calls the end fixed; `usual`: such ends turn with the hose as they are sold. */
type Turning = 'said' | 'usual' | undefined;

function remarkOn(part: Part, system: System): Remark | undefined {
  const ends = part.ports.map((port) => turningWithHose(port, system));
  const [from, to] = ends;
  if (from === undefined || to === undefined) return undefined;
  const places = part.ports.flatMap((port) => partnersOf(port, system).map(({ id }) => id));
  const isSaid = from === 'said' && to === 'said';
  const doubt = isSaid ? '' : ' If one of the two does swivel, write swivel behind it.';
  return {
    severity: isSaid ? 'error' : 'warning',
    message: `${part.id} turns as a whole when it is screwed into ${places.join(' and when it is screwed into ')}: the end that goes in last twists it. Take a hose with a swivel, a banjo, or a female end for a tube nut at one end.${doubt}`,
    origin: part.nameOrigin,
    subject: part.id,
    also: part.ports.map((port) => port.id),
    related: part.ports.map((port) => ({
      message: `the ${port.name} end, which turns with the hose`,
      origin: port.origin,
    })),
  };
}

function turningWithHose(port: Port, system: System): Turning {
  const { connection } = port;
  const partners = partnersOf(port, system);
  if (connection.kind !== 'threaded' || connection.turning === 'swivel' || partners.length === 0) return undefined;
  if (partners.some((partner) => turnsByItself(partner, system))) return undefined;
  if (connection.turning === 'fixed') return 'said';
  if (connection.gender !== 'male') return undefined;
  const row = connection.seat && hoseEndOf(connection.gender, connection.seat);
  return row?.tightening === 'free' ? undefined : 'usual';
}

/** The nut of a tube turns on its tube; a loose union or adapter whose other end is a tube can be turned onto the hose. */
function turnsByItself(partner: Port, system: System): boolean {
  const { connection } = partner;
  if (connection.kind === 'tube-end' || connection.kind === 'banjo') return true;
  if (connection.kind === 'threaded' && connection.turning === 'swivel') return true;
  const part = system.partById.get(partner.part);
  if (part?.kind !== 'union' && part?.kind !== 'adapter') return false;
  const others = part.ports.filter((port) => port.id !== partner.id).flatMap((port) => partnersOf(port, system));
  return others.every((other) => other.connection.kind === 'tube-end');
}

function partnersOf(port: Port, system: System): readonly Port[] {
  return (system.jointsAt.get(port.id) ?? [])
    .map((joint) => system.portById.get(joint.a === port.id ? joint.b : joint.a))
    .filter((partner) => partner !== undefined);
}
