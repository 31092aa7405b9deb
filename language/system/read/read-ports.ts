/** Ports of parts and ends of runs and hoses in the text → typed ports. */
import * as ast from '../../grammar/generated/ast.ts';
import type { Connection } from '../connection.ts';
import type { KindRow } from '../kinds/index.ts';
import { type PartId, type Port, portIdOf, type Tube } from '../part.ts';
import { type Presence, within } from '../presence.ts';
import type { Draft, Said } from './draft.ts';
import { type EndSlot, endSlots } from './end-slots.ts';
import { mirrorPosition } from './mirror.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { readConnection, readPosition, readTubeEnd } from './read-connection.ts';
import { lastOf, statementsOf } from './statements.ts';

/** The part whose ports are read. */
export interface PortOwner {
  readonly id: PartId;
  readonly label: string;
  readonly presence: Presence;
  readonly row: KindRow;
}

/** The ports of a part by their names; of two with one name the later counts, and the doubling is noted. */
export function readPorts(draft: Draft, owner: PortOwner, notes: ReadingNotes): readonly Port[] {
  const ports = new Map<string, Port>();
  const own = new Map<string, ast.Port>();
  for (const said of statementsOf(draft, ast.isPortGroup)) {
    for (const node of said.node.ports) {
      if (node.name === undefined) continue;
      const first = own.get(node.name);
      if (first !== undefined && said.from === 'part' && !said.mirrored) noteTwice(node, first, owner, notes);
      if (said.from === 'part') own.set(node.name, node);
      ports.set(node.name, readPort(node, said, owner, notes));
    }
  }
  return [...ports.values()];
}

function readPort(node: ast.Port, said: Said<ast.PortGroup>, owner: PortOwner, notes: ReadingNotes): Port {
  const value = { part: owner.label, fact: node.name };
  const position = readPosition(said.node.connection, value, notes);
  return {
    id: portIdOf(owner.id, node.name),
    name: node.name,
    part: owner.id,
    connection: readConnection(said.node.connection, value, notes, 'female'),
    position: said.mirrored ? mirrorPosition(position) : position,
    presence: within(owner.presence, said.node.mark ?? 'kept'),
    origin: originOf(node),
  };
}

function noteTwice(node: ast.Port, first: ast.Port, owner: PortOwner, notes: ReadingNotes): void {
  notes.problems.push({
    code: 'duplicate',
    message: `${owner.label} has two ports called ${node.name}; give one another name.`,
    origin: originOf(node),
    related: [{ message: 'the other one', origin: originOf(first) }],
  });
}

/** Both ends of a run or hose; none for parts that have no ends. */
export function readEnds(draft: Draft, owner: PortOwner, tube: Tube | undefined, notes: ReadingNotes): readonly Port[] {
  if (owner.row.symbol !== 'line') return [];
  return endSlots(draft).map((slot) => ({
    id: portIdOf(owner.id, slot.side),
    name: slot.side,
    part: owner.id,
    connection: connectionOf(slot, draft, owner, tube, notes),
    position: readPosition(slot.connection, { part: owner.label, fact: `${slot.side} end` }, notes),
    presence: owner.presence,
    origin: slot.node ? originOfProperty(slot.node, 'side') : originOf(draft.node),
  }));
}

function connectionOf(
  slot: EndSlot,
  draft: Draft,
  owner: PortOwner,
  tube: Tube | undefined,
  notes: ReadingNotes,
): Connection {
  const value = { part: owner.label, fact: `${slot.side} end` };
  if (slot.connection !== undefined) return readConnection(slot.connection, value, notes, undefined);
  if (owner.row.keyword === 'feed-hose') return { kind: 'barb', size: undefined };
  if (owner.row.keyword === 'hose') return readConnection(undefined, value, notes, undefined);
  const nut = slot.facts.find(ast.isNut) ?? lastOf(draft, ast.isNut)?.node;
  const flare = slot.facts.find(ast.isFlare) ?? lastOf(draft, ast.isFlare)?.node;
  return readTubeEnd({ nut, flare, tube: tube?.diameter }, value, notes);
}
