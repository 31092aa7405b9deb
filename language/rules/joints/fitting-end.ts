/** The nut and flare that a tube needs at a port, and the edit that gives its end both. */
import { estimateOf, writeStated } from '../../quantity/index.ts';
import type { FlareForm } from '../../standards/flare-forms.ts';
import { flaresFor } from '../../standards/mating.ts';
import { readThread, sameThread, type Thread } from '../../standards/threads.ts';
import { nutBores, type TubeNut, tubeNuts } from '../../standards/tube-nuts.ts';
import { sameTubeSize, tubeSizeOf } from '../../standards/tube-sizes.ts';
import type { Threaded, ThreadFact, TubeEnd } from '../../system/connection.ts';
import type { Edit, Mend } from '../../system/problem.ts';
import { replace } from '../../system/problem.ts';
import type { System } from '../../system/system.ts';
import type { Meeting } from './meeting.ts';
import { isOwnStatement } from './own-statement.ts';

type AtTube = Meeting & { readonly kind: 'tube' };

/** What would fit at the port; a member is undefined where the end has it already or too little is known. */
export interface FittingEnd {
  readonly nut: Thread | undefined;
  readonly flare: FlareForm | undefined;
}

/** The nut and flare to change to; undefined where no change of the end makes the joint fit. */
export function fittingEnd({ tube, port }: AtTube): FittingEnd | undefined {
  const flare = flareToTake(tube.connection, port.connection);
  if (flare === 'none fits') return undefined;
  const nut = nutToTake(tube.connection, port.connection);
  if (nut === 'none fits') return undefined;
  return nut === undefined && flare === undefined ? undefined : { nut, flare };
}

/** A sentence saying what tubes there are nuts for with the thread of the port; undefined where nothing is known. */
export function boresSentence(tube: TubeEnd, port: Threaded): string | undefined {
  if (port.thread.kind !== 'known') return undefined;
  const sizes = nutBores(port.thread.thread.name).map((bore) => tubeSizeOf(bore)?.name);
  const known = sizes.filter((size) => size !== undefined);
  const size = tube.tube === undefined ? 'this' : writeStated(tube.tube);
  if (known.length === 0) return undefined;
  return `No ${port.thread.thread.name} nut is listed for ${size} tube; they are made for ${known.join(' and ')} tube.`;
}

/** Writes nut and flare at this end of the run alone; undefined where the end is not said in the run itself. */
export function endMend(meeting: AtTube, wanted: FittingEnd, system: System): Mend | undefined {
  const { joint, tube } = meeting;
  const other = [joint.a, joint.b].find((port) => port !== tube.port.id);
  if (joint.a !== tube.port.id || other === undefined || !isOwnStatement(joint, tube.part, system)) return undefined;
  const { nutOrigin, flareOrigin } = tube.connection;
  const inEnd = (origin: typeof nutOrigin) =>
    origin !== undefined &&
    origin.uri === joint.statement.uri &&
    origin.start >= joint.statement.start &&
    origin.end <= joint.statement.end
      ? origin
      : undefined;
  const [nutHere, flareHere] = [inEnd(nutOrigin), inEnd(flareOrigin)];
  const nutText = wanted.nut && `nut ${wanted.nut.name}`;
  const flareText = wanted.flare && `flare ${wanted.flare}`;
  const edits: Edit[] = [];
  const added: string[] = [];
  for (const [text, here] of [
    [nutText, nutHere],
    [flareText, flareHere],
  ] as const) {
    if (text === undefined) continue;
    if (here) edits.push(replace(here, text));
    else added.push(text);
  }
  const neighbour = nutHere ?? flareHere;
  if (added.length > 0) {
    const at = neighbour?.end ?? joint.statement.end;
    const text = neighbour ? ` ${added.join(' ')}` : ` { ${added.join(' ')} }`;
    edits.push({ uri: joint.statement.uri, start: at, end: at, text });
  }
  return {
    title: `Make this end with ${[nutText, flareText].filter((text) => text !== undefined).join(' and ')}`,
    edits,
  };
}

function flareToTake(tube: TubeEnd, port: Threaded): FlareForm | undefined | 'none fits' {
  if (port.seat === undefined || tube.flare === undefined || tube.flare === 'unknown') return undefined;
  const [best, ...others] = flaresFor(port.seat);
  if (best === undefined) return 'none fits';
  return best === tube.flare || others.includes(tube.flare) ? undefined : best;
}

function nutToTake(tube: TubeEnd, port: Threaded): Thread | undefined | 'none fits' {
  if (tube.nut.kind !== 'known' || port.thread.kind !== 'known') return undefined;
  if (sameThread(tube.nut.thread, port.thread.thread)) return undefined;
  const nut = nutWith(port.thread, tube, port);
  return nut ? (readThread(nut.thread).thread ?? 'none fits') : 'none fits';
}

/** The listed nut for this tube with the thread of the port. */
function nutWith(fact: ThreadFact & { readonly kind: 'known' }, tube: TubeEnd, port: Threaded): TubeNut | undefined {
  const od = tube.tube && estimateOf(tube.tube)?.value;
  if (od === undefined) return undefined;
  const { seat } = port;
  return tubeNuts.find(
    (row) =>
      row.thread === fact.thread.name &&
      sameTubeSize(row.tubeOd, od) &&
      (seat === undefined || row.seats.includes(seat)),
  );
}
