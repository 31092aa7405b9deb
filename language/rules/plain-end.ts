/** plain-end: a tube without a flare in a port whose seat is not stated. */
import { commonPractice } from '../standards/source.ts';
import { isCompression } from './compression-joint.ts';
import { exampleLine } from './joints/example-line.ts';
import { meetingsIn } from './joints/meeting.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';

export const plainEnd: Rule = {
  code: 'plain-end',
  severity: 'error',
  acceptable: true,
  question: 'Does every tube under pressure end in a flare?',
  why: 'A nut alone holds nothing: without a flare between nut and seat the tube is pushed out by the first hard stop.',
  source: commonPractice('every tube end under brake pressure is flared for its seat'),
  fires: [
    {
      title: 'a plain end in a port of which only the thread is stated',
      text: exampleLine({ port: '3/8-24', nut: '3/8-24', flare: 'double-45', atMain: '{ flare none }' }),
    },
  ],
  silent: [
    {
      title: 'a flared end in such a port',
      text: exampleLine({ port: '3/8-24', nut: '3/8-24', flare: 'double-45' }),
    },
    {
      title: 'a plain end in a port with a seat, of which flare-mismatch speaks',
      text: exampleLine({
        port: '3/8-24 inverted-flare',
        nut: '3/8-24',
        flare: 'double-45',
        atMain: '{ flare none }',
      }),
    },
    {
      title: 'a flare that is not known',
      text: exampleLine({ port: '3/8-24', nut: '3/8-24', flare: 'double-45', atMain: '{ flare ? }' }),
    },
    {
      title: 'a plain end in a compression joint, which is spoken of itself',
      text: 'union repair { joint-type compression  ports a, b: 3/8-24 }\nrun half { tube 3/16 in  flare none  to repair.a }\n',
    },
  ],
  check: ({ system }) =>
    oncePerPlace(
      meetingsIn(system).flatMap((meeting): Remark[] => {
        if (meeting.kind !== 'tube') return [];
        const { tube, port, joint } = meeting;
        if (tube.connection.flare !== 'none' || port.connection.seat !== undefined || isCompression(port.part))
          return [];
        return [
          {
            message: `${tube.part.id} goes into ${port.port.id} without a flare. Under pressure the tube is pushed out of its nut. Look into the port for its seat, state it, and flare the end to suit.`,
            origin: placeOfFact(tube.connection.flareOrigin, tube.part),
            subject: tube.port.id,
            also: [port.port.id],
            related: [{ message: 'where it goes', origin: joint.origin }],
          },
        ];
      }),
    ),
};
