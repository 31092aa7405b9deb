/** What is ahead for every part of a system, assemblies before what is in them. */
import type { PartKind } from '../system/kinds/index.ts';
import type { Part, PartId } from '../system/part.ts';
import type { System } from '../system/system.ts';
import { type WorkAhead, workAhead } from '../system/work-ahead.ts';

export interface PartStanding {
  readonly part: Part;
  readonly work: WorkAhead;
  /** It comes with the part that holds it. */
  readonly included: boolean;
}

/** A wheel brake is bought piece by piece; nobody sells one whole. */
const gathered: ReadonlySet<PartKind> = new Set(['drum-brake', 'disc-brake', 'parking-brake']);

/** In the order of the text. */
export function standingsOf(system: System): ReadonlyMap<PartId, PartStanding> {
  const standings = new Map<PartId, PartStanding>();
  const visit = (part: Part, whole: PartStanding | undefined): void => {
    const work = workAhead(part, whole?.work);
    const own = workAhead({ ...part, presence: 'kept' }).kind === 'renew';
    const comesWithWhole = whole !== undefined && isBoughtWhole(whole) && !own;
    const standing = { part, work, included: comesWithWhole };
    standings.set(part.id, standing);
    for (const inside of part.parts) visit(inside, standing);
  };
  for (const part of system.parts) visit(part, undefined);
  return standings;
}

/** Bought as one thing with all that is in it. */
function isBoughtWhole({ part, work, included }: PartStanding): boolean {
  return included || (work.kind === 'renew' && !isGathered(part));
}

/** A wheel brake of which the file names the pieces. */
export function isGathered(part: Part): boolean {
  return gathered.has(part.kind) && part.parts.length > 0;
}

/** Whether work on the part opens its joints. */
export function isOpened(standing: PartStanding | undefined): boolean {
  return standing !== undefined && (standing.work.kind === 'renew' || standing.work.kind === 'reseal');
}
