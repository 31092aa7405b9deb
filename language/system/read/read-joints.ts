/** Ends, screwed parts and relations in the text → joints and links between parts that exist. */
import * as ast from '../../grammar/generated/ast.ts';
import type { Joint, Link } from '../joint.ts';
import { partIdOf, portIdOf } from '../part.ts';
import { within } from '../presence.ts';
import { type Draft, nameOf } from './draft.ts';
import { endSlots } from './end-slots.ts';
import { originOf } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { type Named, resolve, resolvePort } from './resolve.ts';
import { statementsOf } from './statements.ts';

export interface Joined {
  readonly joints: readonly Joint[];
  readonly links: readonly Link[];
}

/** Joints and links that a part states, and those of the sub-parts in it. */
export function jointsOfDraft(draft: Draft, path: readonly string[], named: Named, notes: ReadingNotes): Joined {
  const here = [...path, nameOf(draft)];
  const id = partIdOf(here);
  const part = named.partById.get(id);
  if (part === undefined) return { joints: [], links: [] };
  const joints: Joint[] = [];
  const links: Link[] = [];
  if (draft.kind === 'run' || draft.kind === 'hose' || draft.kind === 'feed-hose') {
    for (const slot of endSlots(draft)) {
      for (const { node, mirrored } of slot.goes) {
        const port = node.port && resolvePort(node.port, mirrored, named, notes);
        if (port === undefined || node.port === undefined) continue;
        const presence = within(part.presence, node.mark ?? 'kept');
        joints.push({
          kind: 'end',
          a: portIdOf(id, slot.side),
          b: port.id,
          presence,
          origin: originOf(node.port),
          statement: originOf(node),
        });
      }
    }
  }
  for (const { node, mirrored } of statementsOf(draft, ast.isRelation)) {
    for (const reference of node.targets) {
      const target = resolve(reference, mirrored, named, notes);
      if (target?.kind === 'part')
        links.push({ verb: node.verb, from: id, to: target.part.id, origin: originOf(reference) });
    }
  }
  for (const inside of draft.parts) {
    const more = jointsOfDraft(inside, here, named, notes);
    joints.push(...more.joints);
    links.push(...more.links);
  }
  return { joints, links };
}

/** A part screwed into a part: the ports on both sides, whichever was named first. */
export function jointOfScrew(node: ast.Screw, named: Named, notes: ReadingNotes): Joint | undefined {
  const a = node.male && resolvePort(node.male, false, named, notes);
  const b = node.female && resolvePort(node.female, false, named, notes);
  const origin = originOf(node);
  return a && b && { kind: 'screwed', a: a.id, b: b.id, presence: node.mark ?? 'kept', origin, statement: origin };
}
