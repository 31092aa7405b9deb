/** What stands on the reservoir's side of each chamber: what is lost there is lost to the chamber. */
import type { Part, PartId } from '../../system/part.ts';
import type { System } from '../../system/system.ts';

/** Reservoirs, their compartments and feed hoses over a chamber; the reservoir that holds a compartment too. */
export function feedersOf(chamber: Part, system: System): readonly Part[] {
  const { graph, partById, links } = system;
  const master = chamber.parent;
  const found = new Set<PartId>();
  const volumes = new Map(graph.volumes.filter(({ side }) => side === 'reserve').map((volume) => [volume.id, volume]));
  const queue = [...volumes.values()].filter(({ part }) => part === chamber.id || part === master).map(({ id }) => id);
  const seen = new Set(queue);
  for (const id of queue) {
    const part = volumes.get(id)?.part;
    if (part !== undefined && isReserve(partById.get(part))) found.add(part);
    for (const { a, b } of graph.tiesAt.get(id) ?? []) {
      const next = a === id ? b : a;
      if (volumes.has(next) && !seen.has(next)) {
        seen.add(next);
        queue.push(next);
      }
    }
  }
  for (const { verb, from, to } of links) {
    if (verb === 'feeds' && (to === chamber.id || to === master)) found.add(from);
  }
  // A reservoir that stands in a master feeds it without having to say so.
  if (found.size === 0) for (const part of (master && partById.get(master)?.parts) ?? chamber.parts) found.add(part.id);
  const feeders = [...found].filter((id) => isReserve(partById.get(id))).flatMap((id) => partById.get(id) ?? []);
  const holders = feeders.flatMap(({ kind, parent }) =>
    kind === 'compartment' && parent !== undefined ? (partById.get(parent) ?? []) : [],
  );
  return [...new Set([...feeders, ...holders])];
}

const isReserve = (part: Part | undefined): boolean =>
  part?.kind === 'reservoir' || part?.kind === 'compartment' || part?.kind === 'feed-hose';
