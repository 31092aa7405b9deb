/** Threads that may be written: for a nut those that are made for the tube, at an end first the one of the port. */
import { estimateOf } from '../quantity/index.ts';
import { threads } from '../standards/thread-table.ts';
import { tubeNuts } from '../standards/tube-nuts.ts';
import { sameTubeSize } from '../standards/tube-sizes.ts';
import { type Part, partIdOf } from '../system/part.ts';
import type { Offer } from './offer.ts';
import type { OfferSite } from './offers.ts';
import { endOf } from './port-offers.ts';

export function threadOffers({ block, lineBefore, system }: OfferSite): readonly Offer[] {
  const isNut = /\bnut\s+$/.test(lineBefore);
  const path = block.kind === 'part' || block.kind === 'end' ? block.path : undefined;
  const run = path === undefined ? undefined : system.partById.get(partIdOf(path.split('.')));
  if (!isNut) return threads.map(({ name }, index) => ({ label: name, kind: 'thread', rank: 2 + index / 1000 }));
  const fitting = nutsFor(run);
  const wanted = block.kind === 'end' ? threadAtPort(endOf(block.path, block.side, system), system) : undefined;
  return (fitting ?? threads.map(({ name }) => ({ thread: name, words: '' }))).map(({ thread, words }, index) => ({
    label: thread,
    kind: 'thread',
    detail: thread === wanted ? `fits the port; ${words}` : words,
    rank: (thread === wanted ? 1 : 2) + index / 1000,
  }));
}

/** Nuts made for the tube of the run, the usual ones first; undefined where the tube is not known. */
function nutsFor(run: Part | undefined): readonly { readonly thread: string; readonly words: string }[] | undefined {
  const od = run?.tube && estimateOf(run.tube.diameter)?.value;
  if (od === undefined) return undefined;
  const made = tubeNuts.filter((row) => sameTubeSize(row.tubeOd, od));
  const sorted = [...made.filter(({ use }) => use === 'usual'), ...made.filter(({ use }) => use === 'oversize')];
  const once = sorted.filter((row, index) => sorted.findIndex(({ thread }) => thread === row.thread) === index);
  return once.map(({ thread, use, seats }) => ({
    thread,
    words: `${use === 'usual' ? 'the usual nut' : 'an oversize nut'} for this tube, ${seats.join(' or ')}`,
  }));
}

function threadAtPort(own: ReturnType<typeof endOf>, system: OfferSite['system']): string | undefined {
  const [joint] = own === undefined ? [] : (system.jointsAt.get(own) ?? []);
  const there = joint && system.portById.get(joint.a === own ? joint.b : joint.a)?.connection;
  return there?.kind === 'threaded' && there.thread.kind === 'known' ? there.thread.thread.name : undefined;
}
