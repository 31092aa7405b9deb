/** Threads, seats, nuts and flares in the text → typed connections. */
import type * as ast from '../../grammar/generated/ast.ts';
import { type SeatName, seatNames, seats } from '../../standards/seats.ts';
import { readThread } from '../../standards/threads.ts';
import type { Connection, ThreadFact, TubeEnd } from '../connection.ts';
import type { Position } from '../route.ts';
import { originOf, originOfProperty, textOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { readPoint } from './read-route.ts';
import { readValue, type ValueOwner } from './read-value.ts';

const seatWords: ReadonlySet<string> = new Set(seatNames);
const isSeat = (word: string): word is SeatName => seatWords.has(word);

/** The thread that a port or nut names; `?` goes on the measuring list, a wrong name is a problem. */
function threadFact(node: ast.Connection | ast.Nut, owner: ValueOwner, notes: ReadingNotes): ThreadFact {
  if (node.unknownThread === true) {
    notes.toMeasure.push({ part: owner.part, fact: `${owner.fact} thread`, assumed: false, origin: originOf(node) });
    return { kind: 'unknown' };
  }
  if (node.thread === undefined) return { kind: 'unstated' };
  const { thread, problem } = readThread(textOfProperty(node, 'thread') ?? node.thread);
  if (thread !== undefined) return { kind: 'known', thread };
  notes.problems.push({ code: 'bad-thread', message: problem, origin: originOfProperty(node, 'thread') });
  return { kind: 'unstated' };
}

/** A port's or hose end's connection. A port without a gender is female, as ports in metal are, but for the noses of flare fittings. */
export function readConnection(
  node: ast.Connection | undefined,
  owner: ValueOwner,
  notes: ReadingNotes,
  unstatedGender: 'female' | undefined,
): Connection {
  const words = (node?.features ?? []).map((feature) => feature.word);
  const sized = (word: string) => {
    const feature = node?.features.find((candidate) => candidate.word === word);
    return feature?.size && readValue(feature.size, 'length', { ...owner, fact: `${owner.fact} ${word}` }, notes);
  };
  if (words.includes('barb')) return { kind: 'barb', size: sized('barb') };
  const gender = words.includes('male') ? 'male' : words.includes('female') ? 'female' : undefined;
  // Without a thread a banjo is the eye at the end of a hose; with one it is the face that an eye is clamped on.
  if (words.includes('banjo') && node?.thread === undefined && node?.unknownThread !== true && gender === undefined) {
    return { kind: 'banjo', hole: sized('banjo') };
  }
  const seat = words.find(isSeat);
  const isNose = seat !== undefined && seats[seat].nutGender === 'female';
  return {
    kind: 'threaded',
    thread: node ? threadFact(node, owner, notes) : { kind: 'unstated' },
    gender: gender ?? (isNose && unstatedGender !== undefined ? 'male' : unstatedGender),
    seat,
    turning: words.includes('swivel') ? 'swivel' : words.includes('fixed') ? 'fixed' : undefined,
    plugged: words.includes('plugged'),
  };
}

/** The end of a run: nut and flare said at the end itself, else those of the whole run. */
export function readTubeEnd(
  facts: { readonly nut: ast.Nut | undefined; readonly flare: ast.Flare | undefined; readonly tube: TubeEnd['tube'] },
  owner: ValueOwner,
  notes: ReadingNotes,
): TubeEnd {
  const { nut, flare, tube } = facts;
  if (flare?.unknownForm === true) {
    notes.toMeasure.push({ part: owner.part, fact: `${owner.fact} flare`, assumed: false, origin: originOf(flare) });
  }
  return {
    kind: 'tube-end',
    nut: nut ? threadFact(nut, { ...owner, fact: `${owner.fact} nut` }, notes) : { kind: 'unstated' },
    nutLength: nut?.length,
    flare: flare?.unknownForm === true ? 'unknown' : flare?.form,
    tube,
    nutOrigin: nut && originOf(nut),
    flareOrigin: flare && originOf(flare),
  };
}

/** Where a port lies, if the file says so. */
export function readPosition(
  node: ast.Connection | undefined,
  owner: ValueOwner,
  notes: ReadingNotes,
): Position | undefined {
  const position = node?.position;
  if (position === undefined) return undefined;
  const origin = originOf(position);
  if (position.point) {
    const point = readPoint(position.point, owner, notes);
    return point && { kind: 'point', point, origin };
  }
  const height = readValue(position.height, 'length', { ...owner, fact: `${owner.fact} height` }, notes);
  return height && { kind: 'height', height, origin };
}
