/** port-used-twice: two ends in one port, or something in a port that is plugged. */
import { commonPractice } from '../standards/source.ts';
import type { Joint } from '../system/joint.ts';
import type { Port, PortId } from '../system/part.ts';
import type { Mend } from '../system/problem.ts';
import type { System } from '../system/system.ts';
import { isLine } from './joints/meeting.ts';
import { isOwnStatement } from './joints/own-statement.ts';
import type { Remark, Rule } from './rule.ts';

const twoLines = (second: string): string => `stock line {
  tube 3/16 in steel
  nut 3/8-24
  flare double-45
}

tee front {
  ports feed, left, right: 3/8-24 inverted-flare
}

run one of line { from front.left }
run two of line { from front.${second} }
`;

export const portUsedTwice: Rule = {
  code: 'port-used-twice',
  question: 'Does each port hold one end only?',
  why: 'One port takes one nut. Where two lines claim it, one of them is drawn wrongly, and the circuit that is checked is not the one on the vehicle.',
  severity: 'error',
  source: commonPractice('one port, one end'),
  acceptable: true,
  fires: [
    { title: 'two lines in one port', text: twoLines('left') },
    {
      title: 'a line in a plugged port',
      text: 'tee front {\n  ports feed, left: 3/8-24 inverted-flare\n  port right: 3/8-24 inverted-flare plugged\n}\n\nrun line {\n  tube 3/16 in\n  from front.right\n}\n',
    },
  ],
  silent: [
    { title: 'each line in its own port', text: twoLines('right') },
    {
      title: 'one line there now, another planned',
      text: twoLines('left').replace('run one', 'to-remove run one').replace('run two', 'to-fit run two'),
    },
  ],
  check: ({ system }) =>
    [...system.portById.values()].map((port) => remarkOn(port, system)).filter((remark) => remark !== undefined),
};

function remarkOn(port: Port, system: System): Remark | undefined {
  const joints = system.jointsAt.get(port.id) ?? [];
  const [first, second] = joints;
  if (first === undefined) return undefined;
  const others = joints.map((joint) => otherEnd(joint, port.id));
  const names = others.map((id) => nameAt(id, system));
  if (second === undefined) {
    const { connection } = port;
    const isPlugged = connection.kind === 'threaded' && connection.plugged && first.presence === 'kept';
    if (!isPlugged) return undefined;
    return {
      message: `${port.id} is marked plugged, but ${names[0]} is joined to it. Take out the word plugged, or the joint.`,
      origin: first.origin,
      subject: port.id,
      also: others,
      related: [{ message: 'said to be plugged here', origin: port.origin }],
    };
  }
  const related = joints.map((joint) => ({
    message: `${nameAt(otherEnd(joint, port.id), system)} is joined here`,
    origin: joint.origin,
  }));
  const place = { origin: second.origin, subject: port.id, also: others, related };
  if (joints.every((joint) => samePair(joint, first))) {
    return {
      ...place,
      severity: 'warning',
      message: `The joint of ${first.a} and ${first.b} is said ${joints.length} times; keep one of them.`,
    };
  }
  const free = freeNeighbour(port, system);
  const advice = free === undefined ? 'It needs a tee, or a port of its own.' : `${free.id} of the same part is free.`;
  return {
    ...place,
    message: `${port.id} takes one end, but ${names.join(' and ')} are joined to it. ${advice}`,
    mends: free === undefined ? [] : mendsWith(free, second, port, system),
  };
}

function mendsWith(free: Port, joint: Joint, port: Port, system: System): readonly Mend[] {
  const part = partAt(joint.a, system);
  if (joint.kind !== 'end' || joint.b !== port.id || part === undefined || !isOwnStatement(joint, part, system))
    return [];
  return [{ title: `Join it to ${free.id} instead`, edits: [{ ...joint.origin, text: free.id }] }];
}

/** A port of the same part that is cut alike and holds nothing. */
function freeNeighbour(port: Port, system: System): Port | undefined {
  return partAt(port.id, system)?.ports.find(
    (other) => other.id !== port.id && !system.jointsAt.has(other.id) && cutAlike(other, port),
  );
}

function cutAlike(a: Port, b: Port): boolean {
  const [one, other] = [a.connection, b.connection];
  if (one.kind !== 'threaded' || other.kind !== 'threaded' || one.plugged) return false;
  const name = (end: typeof one) => (end.thread.kind === 'known' ? end.thread.thread.name : end.thread.kind);
  return name(one) === name(other) && one.gender === other.gender && one.seat === other.seat;
}

function partAt(id: PortId, system: System) {
  const port = system.portById.get(id);
  return port && system.partById.get(port.part);
}

/** A line by its own name, a port by its path. */
function nameAt(id: PortId, system: System): string {
  const part = partAt(id, system);
  return part !== undefined && isLine(part) ? part.id : id;
}

const otherEnd = (joint: Joint, port: PortId): PortId => (joint.a === port ? joint.b : joint.a);

const samePair = (one: Joint, other: Joint): boolean =>
  (one.a === other.a && one.b === other.b) || (one.a === other.b && one.b === other.a);
