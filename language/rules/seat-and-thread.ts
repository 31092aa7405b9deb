/** seat-and-thread: a port or end whose thread cannot carry the seat that is said of it. */

import { type SeatName, seatNames, seats, seatTakesThread } from '../standards/seats.ts';
import { commonPractice } from '../standards/source.ts';
import type { Thread } from '../standards/threads.ts';
import { allParts } from '../system/system.ts';
import { placeOfFact } from './joints/own-statement.ts';
import type { Rule } from './rule.ts';

const master = (port: string): string => `master main single {\n  bore 3/4 in\n  port out: ${port}\n}\n`;

export const seatAndThread: Rule = {
  code: 'seat-and-thread',
  question: 'Can this thread carry this seat?',
  why: 'A tapered pipe thread seals on itself and has no seat; a straight thread never seals on itself. One of the two words is wrong, and every check of the joint rests on both.',
  severity: 'error',
  source: commonPractice('tapered threads seal on the thread, straight ones on a seat, a washer or a ring'),
  acceptable: true,
  fires: [
    { title: 'a flare seat behind a pipe thread', text: master('1/8 NPT inverted-flare') },
    { title: 'a straight thread that is to seal by its taper', text: master('3/8-24 taper') },
  ],
  silent: [
    { title: 'a pipe thread that seals on itself', text: master('1/8 NPT taper') },
    { title: 'a flare seat behind a straight thread', text: master('3/8-24 inverted-flare') },
    { title: 'a thread still to be measured', text: master('? taper') },
  ],
  check: ({ system }) =>
    allParts(system).flatMap((part) =>
      part.ports.flatMap((port) => {
        const { connection } = port;
        if (connection.kind !== 'threaded' || connection.thread.kind !== 'known') return [];
        const { seat, thread } = connection;
        if (seat === undefined || seatTakesThread(seat, thread.thread)) return [];
        return [
          {
            message: messageOf(port.id, thread.thread, seat),
            origin: placeOfFact(port.origin, part),
            subject: port.id,
          },
        ];
      }),
    ),
};

function messageOf(port: string, thread: Thread, seat: SeatName): string {
  const fitting = seatNames.filter((name) => seatTakesThread(name, thread));
  return `${port} is said to have ${seats[seat].words} on ${thread.name}, a ${thread.taper} thread, and there is no such port. Look at it again: with this thread it has ${fitting.join(', ')}.`;
}
