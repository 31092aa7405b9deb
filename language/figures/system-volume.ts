/** `system.volume`: all the fluid on the vehicle, each part counted once. */
import type { Part } from '../system/part.ts';
import { allParts } from '../system/system.ts';
import type { FigureContext } from './context.ts';
import type { Figure } from './figure.ts';
import { sum } from './sources.ts';
import { type Content, totalOf } from './total-volume.ts';
import { millilitres } from './writing.ts';

/** In m³: what the chambers reach, the reservoirs at their full mark and the hoses from them. */
export function systemVolume(context: FigureContext): Figure<'volume'> {
  const { system } = context;
  const reached = new Set(system.circuits.flatMap(({ reaches }) => reaches.map(({ part }) => part)));
  const contents: Content[] = [];
  const outside: Part[] = [];
  for (const part of allParts(system)) {
    const figure = context.volumeOf(part);
    if (figure === undefined) continue;
    if (reached.has(part.id) || isReserve(part)) contents.push({ part, figure });
    else outside.push(part);
  }
  return {
    id: 'system.volume',
    subject: 'system',
    title: 'fluid in the whole system',
    written: millilitres,
    ...totalOf(contents, []),
    formula: 'fluid in each part of all circuits, reservoirs and feed hoses, each counted once',
    source: sum,
    notes: [
      'Each chamber counts with the fluid of its full stroke.',
      'This fills it once. Bleeding and flushing take more.',
      ...(outside.length > 0 ? [`Not counted, since no chamber reaches it: ${namesOf(outside)}.`] : []),
    ],
  };
}

const isReserve = ({ kind }: Part): boolean => kind === 'reservoir' || kind === 'feed-hose';

function namesOf(parts: readonly Part[]): string {
  const named = parts.slice(0, 4).map(({ label }) => label);
  const more = parts.length - named.length;
  return more > 0 ? `${named.join(', ')} and ${more} more` : named.join(', ');
}
