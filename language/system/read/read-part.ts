/** Draft → part: its facts, ports, ends, route and records, and the sub-parts inside it. */
import * as ast from '../../grammar/generated/ast.ts';
import type { Stated } from '../../quantity/index.ts';
import { findKind, type KindRow, kindRow, type PartKind } from '../kinds/index.ts';
import type { Fact, Part, PartId, Port, Tube } from '../part.ts';
import { partIdOf, portIdOf } from '../part.ts';
import { type Presence, within } from '../presence.ts';
import { type Draft, nameOf, type Said } from './draft.ts';
import { type EndSlot, endSlots } from './end-slots.ts';
import { readFacts } from './facts.ts';
import { mirrorPosition, mirrorRoute } from './mirror.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { readConnection, readPosition, readTubeEnd } from './read-connection.ts';
import { readReading, readRecord } from './read-record.ts';
import { readClip, readRoute } from './read-route.ts';
import { readValue } from './read-value.ts';
import { otherSideName } from './sides.ts';

export interface Surroundings {
  readonly parent: Part['parent'];
  readonly parentLabel: string | undefined;
  readonly parentPath: readonly string[];
  readonly presence: Presence;
  readonly place: string | undefined;
  readonly within: PartKind | 'file';
  /** Whether a place of that name is declared: a mirrored part rides on the place of the other side where there is one. */
  readonly hasPlace: (name: string) => boolean;
}

/** Reads a part; undefined where its kind is not known, which the parser or the notes have said. */
export function readPart(draft: Draft, around: Surroundings, notes: ReadingNotes): Part | undefined {
  const row = findKind(draft.kind);
  if (row === undefined) return undefined;
  const name = nameOf(draft);
  const path = [...around.parentPath, name];
  const id = partIdOf(path);
  const label = around.parentLabel === undefined ? name : `${around.parentLabel} ${name}`;
  const presence = within(around.presence, draft.mark ?? 'kept');
  const place = placeOf(draft, around) ?? around.place;
  noteMisplaced(draft, row, around, notes);
  const facts = readFacts(propertiesOf(draft, row), { label, title: row.title, rows: row.properties }, notes);
  const tube = tubeOf(draft, label, notes);
  const self = { id, label, presence, row };
  const inside: Surroundings = {
    ...around,
    parent: id,
    parentLabel: label,
    parentPath: path,
    presence,
    place,
    within: row.keyword,
  };
  const parts = [...draft.parts, ...shortForms(draft, row)];
  return {
    id,
    name,
    kind: row.keyword,
    variant: variantOf(draft, row, label, notes),
    label,
    parent: around.parent,
    presence,
    place,
    stock: draft.stock,
    facts,
    ports: [...readPorts(draft, self, notes), ...readEnds(draft, self, tube, notes)],
    parts: distinctNames(
      parts.map((part) => ('id' in part ? part : readPart(part, inside, notes))).filter((part) => part !== undefined),
      notes,
    ),
    tube,
    route: routeOf(draft, label, notes),
    clip: lastOf(draft, ast.isClip, (node) => readClip(node, { part: label, fact: 'clip' }, notes)),
    paths: pathsOf(draft),
    records: statementsOf(draft, ast.isRecord).map(({ node }) => readRecord(node, notes)),
    readings: statementsOf(draft, ast.isReading)
      .map(({ node }) => readReading(node, label, notes))
      .filter((reading) => reading !== undefined),
    origin: originOf(draft.node),
    nameOrigin: draft.name === undefined ? originOfProperty(draft.node, 'kind') : originOfProperty(draft.node, 'name'),
  };

  /** `drum 11 in`: a sub-part whose one fact is its size. */
  function shortForms(of: Draft, owner: KindRow): Part[] {
    return statementsOf(of, ast.isProperty)
      .map(({ node }) => ({ node, kind: findKind(node.key) }))
      .filter(({ node, kind }) => kind !== undefined && !owner.properties.some((property) => property.key === node.key))
      .flatMap(({ node, kind }) =>
        kind?.short && kind.within.includes(owner.keyword) ? [{ node, kind, size: kind.short }] : [],
      )
      .map(({ node, kind, size }): Part => {
        const stated = readValue(
          node.value,
          size.dimension,
          { part: `${label} ${kind.keyword}`, fact: size.key },
          notes,
        );
        const origin = originOf(node);
        const fact: [string, Fact][] = stated
          ? [[size.key, { kind: 'measure', dimension: size.dimension, stated, origin }]]
          : [];
        return {
          ...bare,
          id: partIdOf([...path, kind.keyword]),
          name: kind.keyword,
          kind: kind.keyword,
          label: `${label} ${kind.keyword}`,
          parent: id,
          presence,
          place,
          facts: new Map(fact),
          origin,
          nameOrigin: originOfProperty(node, 'key'),
        };
      });
  }
}

const bare = {
  variant: undefined,
  stock: undefined,
  ports: [],
  parts: [],
  tube: undefined,
  route: undefined,
  clip: undefined,
  paths: [],
  records: [],
  readings: [],
} satisfies Partial<Part>;

/** Statements of one type, the part's own after those of its stock. */
export function statementsOf<M extends ast.Member>(draft: Draft, is: (node: ast.Member) => node is M): Said<M>[] {
  return draft.statements.filter((said): said is Said<M> => is(said.node));
}

function lastOf<M extends ast.Member, T>(
  draft: Draft,
  is: (node: ast.Member) => node is M,
  read: (node: M) => T | undefined,
): T | undefined {
  const said = statementsOf(draft, is).at(-1);
  return said && read(said.node);
}

function propertiesOf(draft: Draft, row: KindRow): ast.Property[] {
  const isShortForm = (key: string): boolean =>
    findKind(key)?.short !== undefined && findKind(key)?.within.includes(row.keyword) === true;
  return statementsOf(draft, ast.isProperty)
    .map(({ node }) => node)
    .filter((node) => row.properties.some((property) => property.key === node.key) || !isShortForm(node.key));
}

function placeOf(draft: Draft, around: Surroundings): string | undefined {
  if (draft.place === undefined) return undefined;
  const other = otherSideName(draft.place.name);
  return draft.place.mirrored && around.hasPlace(other) ? other : draft.place.name;
}

function variantOf(draft: Draft, row: KindRow, label: string, notes: ReadingNotes): string | undefined {
  if (draft.variant === undefined) {
    if (row.variants) {
      const said = row.variants.join(' or ');
      notes.problems.push({
        code: 'missing',
        message: `Say whether ${label} is ${said}: write one of the words behind its name.`,
        origin: originOfProperty(draft.node, 'kind'),
      });
    }
    return undefined;
  }
  if (row.variants?.includes(draft.variant)) return draft.variant;
  const wanted = row.variants ? `it is ${row.variants.join(' or ')}` : 'it has no such variants';
  notes.problems.push({
    code: 'unknown-word',
    message: `${row.title} is not “${draft.variant}”; ${wanted}.`,
    origin: originOfProperty(draft.node, 'variant'),
  });
  return undefined;
}

function noteMisplaced(draft: Draft, row: KindRow, around: Surroundings, notes: ReadingNotes): void {
  if (row.within.includes(around.within)) return;
  const homes = row.within.map((home) => (home === 'file' ? 'by itself' : `in ${kindRow(home).title}`));
  const where = around.within === 'file' ? 'by itself' : `in ${kindRow(around.within).title}`;
  notes.problems.push({
    code: 'misplaced',
    message: `${row.title} does not stand ${where}; it belongs ${homes.join(' or ')}.`,
    origin: originOfProperty(draft.node, 'kind'),
  });
}

interface Self {
  readonly id: PartId;
  readonly label: string;
  readonly presence: Presence;
  readonly row: KindRow;
}

function readPorts(draft: Draft, self: Self, notes: ReadingNotes): Port[] {
  const groups = statementsOf(draft, ast.isPortGroup);
  const names = new Map<string, Port>();
  for (const { node, mirrored, from } of groups) {
    for (const port of node.ports) {
      if (port.name === undefined) continue;
      const owner = { part: self.label, fact: port.name };
      const position = readPosition(node.connection, owner, notes);
      const before = names.get(port.name);
      if (
        before !== undefined &&
        from === 'part' &&
        draft.statements.filter(
          (said) =>
            ast.isPortGroup(said.node) &&
            said.from === 'part' &&
            said.node.ports.some((other) => other.name === port.name),
        ).length > 1
      ) {
        notes.problems.push({
          code: 'duplicate',
          message: `${self.label} has two ports called ${port.name}; give one another name.`,
          origin: originOf(port),
          related: [{ message: 'the other one', origin: before.origin }],
        });
      }
      names.set(port.name, {
        id: portIdOf(self.id, port.name),
        name: port.name,
        part: self.id,
        connection: readConnection(node.connection, owner, notes, 'female'),
        position: mirrored ? mirrorPosition(position) : position,
        presence: within(self.presence, node.mark ?? 'kept'),
        origin: originOf(port),
      });
    }
  }
  return [...names.values()];
}

function readEnds(draft: Draft, self: Self, tube: Tube | undefined, notes: ReadingNotes): Port[] {
  if (self.row.symbol !== 'line') return [];
  const nut = statementsOf(draft, ast.isNut).at(-1)?.node;
  const flare = statementsOf(draft, ast.isFlare).at(-1)?.node;
  const readEnd = (slot: EndSlot): Port => {
    const owner = { part: self.label, fact: `${slot.side} end` };
    const ownNut = slot.facts.find(ast.isNut);
    const ownFlare = slot.facts.find(ast.isFlare);
    const rigid = self.row.keyword === 'run' && slot.connection === undefined;
    const origin = slot.node ? originOfProperty(slot.node, 'side') : originOf(draft.node);
    return {
      id: portIdOf(self.id, slot.side),
      name: slot.side,
      part: self.id,
      connection: rigid
        ? readTubeEnd({ nut: ownNut ?? nut, flare: ownFlare ?? flare, tube: tube?.diameter }, owner, notes)
        : self.row.keyword === 'feed-hose' && slot.connection === undefined
          ? { kind: 'barb', size: undefined }
          : readConnection(slot.connection, owner, notes, undefined),
      position: readPosition(slot.connection, owner, notes),
      presence: self.presence,
      origin,
    };
  };
  const [from, to] = endSlots(draft);
  return [readEnd(from), readEnd(to)];
}

function tubeOf(draft: Draft, label: string, notes: ReadingNotes): Tube | undefined {
  return lastOf(draft, ast.isTube, (node) => {
    const diameter: Stated<'length'> | undefined = readValue(
      node.diameter,
      'length',
      { part: label, fact: 'tube' },
      notes,
    );
    const wall = readValue(node.wall, 'length', { part: label, fact: 'tube wall' }, notes);
    return diameter && { diameter, wall, material: node.material, origin: originOf(node) };
  });
}

function routeOf(draft: Draft, label: string, notes: ReadingNotes): Part['route'] {
  const said = statementsOf(draft, ast.isRoute).at(-1);
  const route = said && readRoute(said.node, { part: label, fact: 'route' }, notes);
  return route && said.mirrored ? mirrorRoute(route) : route;
}

function pathsOf(draft: Draft): readonly (readonly string[])[] {
  return statementsOf(draft, ast.isPath).map(({ node }) => node.ports.map((port) => port.$refText));
}

/** Keeps the first of two parts with one name, and says so. */
export function distinctNames(parts: readonly Part[], notes: ReadingNotes): readonly Part[] {
  const byName = new Map<string, Part>();
  for (const part of parts) {
    const first = byName.get(part.name);
    if (first === undefined) byName.set(part.name, part);
    else {
      notes.problems.push({
        code: 'duplicate',
        message: `Two parts are called ${part.label}; give one of them another name.`,
        origin: part.nameOrigin,
        related: [{ message: 'the first one', origin: first.nameOrigin }],
      });
    }
  }
  return [...byName.values()];
}
