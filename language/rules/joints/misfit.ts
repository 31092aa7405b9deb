/** Judges a joint: what is wrong with it first of all, how that shows at the bench, and what is wrong with it besides. */
import { flareWords } from '../../standards/flare-forms.ts';
import { flareInSeat, flaresFor, seatOnSeat } from '../../standards/mating.ts';
import { type Gender, gendersJoin, seats, seatTakesThread } from '../../standards/seats.ts';
import { startsAndStrips } from '../../standards/threads.ts';
import type { Connection, Threaded, TubeEnd } from '../../system/connection.ts';
import { type Meeting, nameOf, type Side, sidesOf } from './meeting.ts';
import { atTheBench, differing, threadWords } from './threads.ts';

/** What is wrong, in the order in which it stops a fitter: one cause for each joint. */
export type Cause = 'gender' | 'thread' | 'taper' | 'seat' | 'flare';

export interface Fault {
  readonly cause: Cause;
  /** Whole sentences: what is wrong, and how it shows. */
  readonly message: string;
  /** The same as the rest of a sentence that begins "Besides, ". */
  readonly besides: string;
}

export interface Misfit {
  readonly meeting: Meeting;
  readonly fault: Fault;
  /** What else would be wrong were the first fault put right. */
  readonly besides: readonly Fault[];
}

/** The misfit of a joint; undefined where it fits, or where too little is known to say that it does not. */
export function misfitOf(meeting: Meeting): Misfit | undefined {
  // A port that contradicts itself is spoken of by itself; what meets it cannot be judged before that is put right.
  if (sidesOf(meeting).some(({ connection }) => contradictsItself(connection))) return undefined;
  const faults = [genderFault(meeting), threadFault(meeting), sealFault(meeting)].filter(
    (fault) => fault !== undefined,
  );
  const [fault, ...others] = faults;
  // Whoever changes a tapered end for a straight one changes its seat with it.
  const besides = fault?.cause === 'taper' ? [] : others;
  return fault && { meeting, fault, besides };
}

function genderFault(meeting: Meeting): Fault | undefined {
  switch (meeting.kind) {
    case 'tube': {
      const { tube, port } = meeting;
      const nut = nutGender(port.connection);
      const { gender } = port.connection;
      if (nut === undefined || gender === undefined || gendersJoin(nut, gender)) return undefined;
      return fault(
        'gender',
        `The nut of ${tube.part.id} is ${nut}, as nuts for ${seatWords(port.connection)} are, and ${port.port.id} is ${gender} too.`,
        'A nut and a port go together when one is male and the other female.',
      );
    }
    case 'threads': {
      const { first, second } = meeting;
      const [a, b] = [first.connection.gender, second.connection.gender];
      if (a === undefined || b === undefined || gendersJoin(a, b)) return undefined;
      const names = `${upper(nameOf(first, second))} and ${nameOf(second, first)}`;
      return fault('gender', `${names} are both ${a}, so neither screws into the other.`, '');
    }
    case 'eye':
      return undefined;
    case 'unlike': {
      const { first, second } = meeting;
      const kinds = [first.connection.kind, second.connection.kind];
      if (kinds.every((kind) => kind === 'tube-end')) {
        return fault(
          'gender',
          `${first.part.id} and ${second.part.id} meet end to end, nut against nut.`,
          'A union has to go between them.',
        );
      }
      const hasBolt = [first, second].some(({ part }) => part.kind === 'banjo-bolt');
      if (hasBolt || !kinds.every((kind) => kind === 'banjo')) return undefined;
      return fault(
        'gender',
        `${upper(nameOf(first, second))} and ${nameOf(second, first)} are both banjo eyes.`,
        'A banjo bolt has to go through them into a port, with a washer on each side of each eye.',
      );
    }
  }
}

function threadFault(meeting: Meeting): Fault | undefined {
  if (meeting.kind === 'unlike') return withoutThread(meeting.first, meeting.second);
  if (meeting.kind === 'eye') return undefined;
  const [one, other] = meeting.kind === 'tube' ? [meeting.tube, meeting.port] : [meeting.first, meeting.second];
  const pair = differing(threadOf(one.connection), threadOf(other.connection));
  if (pair === undefined) return undefined;
  const [a, b] = pair;
  // What is said of a pair that strips tells the sizes itself.
  const [mine, theirs] = startsAndStrips(a, b) ? [a.name, b.name] : threadWords(pair);
  const subject = meeting.kind === 'tube' ? `the nut of ${one.part.id}` : nameOf(one, other);
  const object = nameOf(other, one);
  if (a.taper !== b.taper) {
    const [tapered, straight] = a.taper === 'tapered' ? [a, b] : [b, a];
    return fault(
      'taper',
      `${upper(subject)} is ${mine} and ${object} is ${theirs}: ${tapered.name} is a tapered pipe thread, ${straight.name} is straight.`,
      'A taper in a straight thread bears on its first turns only: it leaks, or it splits the part when it is forced tight.',
    );
  }
  const genders = meeting.kind === 'tube' ? gendersOfTube(meeting.port.connection) : gendersOf(meeting);
  const shows = atTheBench({ thread: a, gender: genders[0] }, { thread: b, gender: genders[1] });
  return fault('thread', `${upper(subject)} is ${mine}, but ${object} is ${theirs}.`, shows);
}

function withoutThread(first: Side, second: Side): Fault | undefined {
  const [a, b] = [first.connection.kind, second.connection.kind];
  if (a === b) return undefined;
  const kindWords = {
    threaded: 'a threaded end',
    'tube-end': 'a tube nut',
    banjo: 'a banjo eye',
    barb: 'a spigot for a low-pressure hose',
  } as const;
  return fault(
    'thread',
    `${upper(nameOf(first, second))} is ${kindWords[a]}, but ${nameOf(second, first)} is ${kindWords[b]}.`,
    'Nothing holds the one on the other.',
  );
}

function sealFault(meeting: Meeting): Fault | undefined {
  switch (meeting.kind) {
    case 'tube':
      return flareFault(meeting.tube, meeting.port);
    case 'threads': {
      const { first, second } = meeting;
      const [a, b] = [first.connection.seat, second.connection.seat];
      if (a === undefined || b === undefined) return undefined;
      const mating = seatOnSeat(a, b);
      if (mating.kind === 'seals') return undefined;
      const what = `${nameOf(first, second)} has ${seats[a].words} and ${nameOf(second, first)} has ${seats[b].words}`;
      return seatFault(what, mating.why);
    }
    case 'eye': {
      const { eye, port } = meeting;
      const { seat } = port.connection;
      if (seat === undefined || seats[seat].sealing === 'washer') return undefined;
      return seatFault(
        `${nameOf(eye, port)} is a banjo eye, which needs a flat face for its washer, and ${port.port.id} has ${seats[seat].words}`,
      );
    }
    case 'unlike':
      return undefined;
  }
}

function flareFault(tube: Side<TubeEnd>, port: Side<Threaded>): Fault | undefined {
  const { flare } = tube.connection;
  const { seat } = port.connection;
  if (seat === undefined) return undefined;
  if (flaresFor(seat).length === 0) {
    return seatFault(
      `${tube.part.id} ends in ${port.port.id}, which has ${seats[seat].words} and is not made for flared tube`,
      `it seals ${seats[seat].seals}`,
    );
  }
  if (flare === undefined || flare === 'unknown') return undefined;
  const mating = flareInSeat(flare, seat);
  if (mating.kind === 'seals') return undefined;
  const what = `${tube.part.id} has ${flareWords[flare]} at ${port.port.id}, which has ${seats[seat].words}`;
  const shows = flare === 'none' ? '' : ' It may hold when it is first tightened and let go later.';
  return { cause: 'flare', message: `${what}. ${sentence(mating.why)}${shows}`, besides: `${what}: ${mating.why}` };
}

function seatFault(what: string, why?: string): Fault {
  const because = why === undefined ? '' : ` ${sentence(why)}`;
  return {
    cause: 'seat',
    message: `${upper(what)}.${because} However tight it is drawn, it does not seal.`,
    besides: why === undefined ? what : `${what}: ${why}`,
  };
}

function fault(cause: Cause, what: string, shows: string): Fault {
  return { cause, message: shows === '' ? what : `${what} ${shows}`, besides: what.replace(/\.$/, '') };
}

function contradictsItself(connection: Connection): boolean {
  if (connection.kind !== 'threaded' || connection.thread.kind !== 'known' || connection.seat === undefined)
    return false;
  return !seatTakesThread(connection.seat, connection.thread.thread);
}

const threadOf = (connection: TubeEnd | Threaded) =>
  connection.kind === 'tube-end' ? connection.nut : connection.thread;

const gendersOf = (meeting: Meeting & { kind: 'threads' }): readonly [Gender | undefined, Gender | undefined] => [
  meeting.first.connection.gender,
  meeting.second.connection.gender,
];

function gendersOfTube(port: Threaded): readonly [Gender | undefined, Gender | undefined] {
  return [nutGender(port) ?? (port.gender === 'female' ? 'male' : undefined), port.gender];
}

/** The gender of the nut that a flared tube needs at this port, told by its seat. */
export function nutGender(port: Threaded): Gender | undefined {
  return port.seat === undefined ? undefined : seats[port.seat].nutGender;
}

const seatWords = (port: Threaded): string => (port.seat === undefined ? 'such a port' : seats[port.seat].words);

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** A name as the file writes it keeps its letters, at the head of a sentence too. */
const upper = (text: string): string => text.replace(/^the /, 'The ');
