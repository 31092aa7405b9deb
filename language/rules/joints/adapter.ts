/** The edit that puts an adapter between two ends that do not fit each other. */
import { seatsFor } from '../../standards/mating.ts';
import { type Gender, type SeatName, seats, seatTakesThread } from '../../standards/seats.ts';
import type { Thread } from '../../standards/threads.ts';
import type { Connection } from '../../system/connection.ts';
import type { Joint } from '../../system/joint.ts';
import type { Edit, Mend } from '../../system/problem.ts';
import { outermost } from '../../system/system.ts';
import type { RuleContext } from '../rule.ts';
import { freeName } from './free-name.ts';
import { type Meeting, type Side, sidesOf } from './meeting.ts';
import { nutGender } from './misfit.ts';
import { isOwnStatement } from './own-statement.ts';

interface Face {
  readonly thread: Thread;
  readonly gender: Gender;
  readonly seat: SeatName;
}

/**
 * Declares an adapter to be fitted and leads the end over it, leaving the circuit as found as it is. Undefined in a
 * state that is past changing, where the threads and seats are not known, or where the words are shared with another joint.
 */
export function adapterMend(meeting: Meeting, context: RuleContext, shared: ReadonlySet<Joint>): Mend | undefined {
  const { reading, system } = context;
  const { joint } = meeting;
  if (meeting.kind === 'eye' || meeting.kind === 'unlike' || system.state !== 'planned') return undefined;
  const [end, port] = sidesOf(meeting);
  const line = faceFor(end.connection, meeting);
  const shank = faceFor(port.connection, meeting);
  if (line === undefined || shank === undefined || joint.a !== end.port.id) return undefined;
  if (!isOwnStatement(joint, end.part, system) || shared.has(joint)) return undefined;
  const home = outermost(system, end.part);
  if (home.origin.uri !== system.uri) return undefined;
  const name = freeName(`${port.port.id.replaceAll('.', '-')}-adapter`, reading);
  const declaration = [
    `to-fit adapter ${name} {`,
    `  port shank: ${faceText(shank)}`,
    `  port line: ${faceText(line)}`,
    '}',
    `to-fit screw ${name}.shank into ${port.port.id}`,
  ];
  const isScrew = joint.kind === 'screwed';
  if (isScrew) declaration.push(`to-fit screw ${end.port.id} into ${name}.line`);
  const after = isScrew ? joint.statement.end : home.origin.end;
  return {
    title: `Fit an adapter between ${port.port.id} and ${isScrew ? end.port.id : `the end of ${end.part.id}`}`,
    edits: [...leadOver(meeting, name, end), insert(system.uri, after, `\n\n${declaration.join('\n')}`)],
  };
}

/** The joint as it was goes to be removed; one that was only planned goes over the adapter instead. */
function leadOver({ joint }: Meeting, adapter: string, end: Side): readonly Edit[] {
  const { statement, origin } = joint;
  const { uri } = statement;
  if (joint.kind === 'screwed') {
    return joint.presence === 'to-fit' ? [{ ...statement, text: '' }] : [insert(uri, statement.start, 'to-remove ')];
  }
  if (joint.presence === 'to-fit') return [{ ...origin, text: `${adapter}.line` }];
  return [
    insert(uri, statement.start, 'to-remove '),
    insert(uri, statement.end, `\n  to-fit ${end.port.name} ${adapter}.line`),
  ];
}

/** The face of an adapter that fits this end; undefined where the end does not say enough. */
function faceFor(connection: Connection, meeting: Meeting): Face | undefined {
  switch (connection.kind) {
    case 'tube-end': {
      const { nut, flare } = connection;
      if (meeting.kind !== 'tube' || nut.kind !== 'known' || flare === undefined || flare === 'unknown')
        return undefined;
      // The nut is the one that was to go into this port: a nose needs another.
      const gender = nutGender(meeting.port.connection) ?? 'male';
      const seat = seatsFor(flare).find((name) => seats[name].nutGender === gender);
      return seat && suited({ thread: nut.thread, gender: opposite(gender), seat });
    }
    case 'threaded': {
      const { thread, gender, seat } = connection;
      if (thread.kind !== 'known' || gender === undefined || seat === undefined) return undefined;
      return suited({ thread: thread.thread, gender: opposite(gender), seat });
    }
    case 'banjo':
    case 'barb':
      return undefined;
  }
}

/** An end whose thread cannot carry its seat is written wrongly; no adapter is made for it. */
const suited = (face: Face): Face | undefined => (seatTakesThread(face.seat, face.thread) ? face : undefined);

const opposite = (gender: Gender): Gender => (gender === 'male' ? 'female' : 'male');

const faceText = ({ thread, gender, seat }: Face): string => `${thread.name} ${gender} ${seat}`;

const insert = (uri: string, at: number, text: string): Edit => ({ uri, start: at, end: at, text });
