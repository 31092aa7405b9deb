/** nut-size: a tube that does not go through its nut, or whose flare does not go through the thread of the port. */
import { estimateOf, type Si, writeStated } from '../quantity/index.ts';
import { flareHeads } from '../standards/flares.ts';
import { seatsFor } from '../standards/mating.ts';
import { fromMemory } from '../standards/source.ts';
import type { Thread } from '../standards/threads.ts';
import { nutBores, nutOnTube, tubeNuts } from '../standards/tube-nuts.ts';
import { sameTubeSize, tubeSizeOf } from '../standards/tube-sizes.ts';
import type { TubeEnd } from '../system/connection.ts';
import type { Part } from '../system/part.ts';
import { allParts } from '../system/system.ts';
import { exampleLine } from './joints/example-line.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';

export const nutSize: Rule = {
  code: 'nut-size',
  question: 'Does the tube go through the nut, and its flare through the thread of the port?',
  why: 'A nut is bored for one size of tube. The wrong one cannot be put on, and that is found out when the tube is cut and bent.',
  severity: 'error',
  source: fromMemory('SAE J512 and ISO 4038 nuts; core of a thread from ISO 68-1; heads of flares from SAE J533'),
  acceptable: true,
  fires: [
    {
      title: 'a tube as thick as the core of the thread',
      text: exampleLine({ port: '3/8-24 inverted-flare', tube: '3/8 in', nut: '3/8-24', flare: 'double-45' }),
    },
    {
      title: 'a double flare too wide for the thread',
      text: exampleLine({ port: '3/8-24 inverted-flare', tube: '1/4 in', nut: '3/8-24', flare: 'double-45' }),
    },
    {
      title: 'a tube for which no such nut is listed',
      text: exampleLine({ port: 'M12x1 bubble', tube: '8 mm', nut: 'M12x1', flare: 'bubble' }),
    },
  ],
  silent: [
    {
      title: 'the nut of the series',
      text: exampleLine({ port: '3/8-24 inverted-flare', nut: '3/8-24', flare: 'double-45' }),
    },
    {
      title: 'a tube in millimetres of the same size',
      text: exampleLine({ port: '3/8-24 inverted-flare', tube: '4.75 mm', nut: '3/8-24', flare: 'double-45' }),
    },
    {
      title: 'an oversize nut on a small tube',
      text: exampleLine({ port: '9/16-18 inverted-flare', nut: '9/16-18', flare: 'double-45' }),
    },
    {
      title: 'a tube still to be measured',
      text: exampleLine({ port: '3/8-24 inverted-flare', tube: '?', nut: '3/8-24', flare: 'double-45' }),
    },
  ],
  check: ({ system }) => oncePerPlace(allParts(system).flatMap(remarksOn)),
};

function remarksOn(part: Part): readonly Remark[] {
  const remarks: Remark[] = [];
  for (const { id, connection } of part.ports) {
    if (connection.kind !== 'tube-end' || connection.nut.kind !== 'known' || connection.tube === undefined) continue;
    const od = estimateOf(connection.tube)?.value;
    const verdict = od === undefined ? undefined : verdictOn(connection, connection.nut.thread, od);
    if (verdict === undefined) continue;
    const size = writeStated(connection.tube);
    const message = `${part.id} is ${size} tube and its nut is ${connection.nut.thread.name}: ${verdict.why}. ${next(connection, od, size)}`;
    if (remarks.some((other) => other.message === message)) continue;
    remarks.push({
      severity: verdict.severity,
      message,
      origin: placeOfSize(connection, part),
      subject: part.id,
      also: [id],
      related: connection.nutOrigin ? [{ message: 'the nut', origin: connection.nutOrigin }] : [],
    });
  }
  return remarks;
}

/** Nut and tube are both said in one place, stock or run, or the run changes one of them: then its name is underlined. */
function placeOfSize({ nutOrigin }: TubeEnd, part: Part): Remark['origin'] {
  const own = placeOfFact(nutOrigin, part);
  const isTubeOwn = part.tube !== undefined && placeOfFact(part.tube.origin, part) === part.tube.origin;
  return own === nutOrigin || isTubeOwn ? own : (nutOrigin ?? part.nameOrigin);
}

interface Verdict {
  readonly severity: 'error' | 'question';
  readonly why: string;
}

function verdictOn(end: TubeEnd, thread: Thread, od: Si<'length'>): Verdict | undefined {
  const fit = nutOnTube(thread, od, 'inverted-flare');
  if (fit.kind === 'impossible') return { severity: 'error', why: fit.why };
  const bores = nutBores(thread.name);
  if (bores.length === 0 || bores.some((bore) => sameTubeSize(bore, od))) return undefined;
  const core = thread.majorDiameter - 1.0825 * thread.pitch;
  const head = flareHeads.find((row) => row.form === end.flare && sameTubeSize(row.tubeOd, od));
  // Only the flares that go down a port with their nut: a female nut over a nose lets any head pass.
  if (head && head.form === 'double-45' && head.smallest >= core)
    return {
      severity: 'error',
      why: 'the head of its double flare is wider than the core of the thread, so it does not go into the port',
    };
  if (bores.every((bore) => bore < od)) {
    const sizes = bores.map((bore) => tubeSizeOf(bore)?.name).filter((name) => name !== undefined);
    return {
      severity: 'question',
      why: `such nuts are listed for ${sizes.join(' and ')} tube only; measure the bore of the nut`,
    };
  }
  return undefined;
}

function next({ flare }: TubeEnd, od: Si<'length'> | undefined, size: string): string {
  const seats = flare === undefined || flare === 'unknown' ? undefined : seatsFor(flare);
  const usual = tubeNuts.filter(
    (row) =>
      row.use === 'usual' &&
      od !== undefined &&
      sameTubeSize(row.tubeOd, od) &&
      (seats === undefined || row.seats.some((seat) => seats.includes(seat))),
  );
  const names = [...new Set(usual.map((row) => row.thread))];
  return names.length === 0
    ? 'Measure tube and nut again.'
    : `Nuts for ${size} tube with this flare are ${names.join(', ')}.`;
}
