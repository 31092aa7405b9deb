/** Draft → part: its facts, ports, ends, route and records, and the sub-parts inside it. */
import * as ast from '../../grammar/generated/ast.ts';
import { findKind, type KindRow, kindRow, type PartKind } from '../kinds/index.ts';
import { nearest } from '../nearest.ts';
import { type Part, partIdOf, type Tube } from '../part.ts';
import { type Presence, within } from '../presence.ts';
import { noteStatements } from './belonging.ts';
import { type Draft, nameOf } from './draft.ts';
import { readFacts } from './facts.ts';
import { mirrorRoute } from './mirror.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { readEnds, readPorts } from './read-ports.ts';
import { readReading, readRecord } from './read-record.ts';
import { readClip, readRoute } from './read-route.ts';
import { readValue } from './read-value.ts';
import { isShortForm, shortForms } from './short-form.ts';
import { otherSideName } from './sides.ts';
import { lastOf, statementsOf } from './statements.ts';

/** Where a part stands. */
export interface Surroundings {
  readonly whole: Pick<Part, 'id' | 'label'> | undefined;
  readonly within: PartKind | 'file';
  readonly presence: Presence;
  readonly place: string | undefined;
  /** Names of the places that the vehicle declares. */
  readonly places: ReadonlySet<string>;
}

/** Reads a part; undefined where its kind is not known, which the parser has said. */
export function readPart(draft: Draft, around: Surroundings, notes: ReadingNotes): Part | undefined {
  const row = findKind(draft.kind);
  if (row === undefined) return undefined;
  const name = nameOf(draft);
  const id = partIdOf(around.whole === undefined ? [name] : [around.whole.id, name]);
  const label = around.whole === undefined ? name : `${around.whole.label} ${name}`;
  const presence = within(around.presence, draft.mark ?? 'kept');
  const place = placeOf(draft, around, notes) ?? around.place;
  const owner = { id, label, presence, row };
  noteMisplaced(draft, row, around, notes);
  const properties = statementsOf(draft, ast.isProperty)
    .map(({ node }) => node)
    .filter((node) => !isShortForm(node.key, row));
  const tube = tubeOf(draft, label, notes);
  const inside: Surroundings = { ...around, whole: { id, label }, within: row.keyword, presence, place };
  const parts = [
    ...draft.parts.map((part) => readPart(part, inside, notes)).filter((part) => part !== undefined),
    ...shortForms(draft, row, { id, label, presence, place }, notes),
  ];
  const ports = [...readPorts(draft, owner, notes), ...readEnds(draft, owner, tube, notes)];
  noteStatements(
    draft,
    row,
    ports.map((port) => port.name),
    notes,
  );
  const clip = lastOf(draft, ast.isClip);
  return {
    id,
    name,
    kind: row.keyword,
    variant: variantOf(draft, row, label, notes),
    label,
    parent: around.whole?.id,
    presence,
    place,
    stock: draft.stock,
    facts: readFacts(properties, { label, title: row.title, rows: row.properties }, notes),
    ports,
    parts: distinctNames(parts, notes),
    tube,
    route: routeOf(draft, label, notes),
    clip: clip && readClip(clip.node, { part: label, fact: 'clip' }, notes),
    paths: statementsOf(draft, ast.isPath).map(({ node }) => node.ports.map((port) => port.$refText)),
    records: statementsOf(draft, ast.isRecord).map(({ node }) => readRecord(node, notes)),
    readings: statementsOf(draft, ast.isReading)
      .map(({ node }) => readReading(node, label, notes))
      .filter((reading) => reading !== undefined),
    origin: originOf(draft.node),
    nameOrigin: originOfProperty(draft.node, draft.name === undefined ? 'kind' : 'name'),
  };
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

function placeOf(draft: Draft, around: Surroundings, notes: ReadingNotes): string | undefined {
  if (draft.place === undefined) return undefined;
  const { name, mirrored } = draft.place;
  const other = otherSideName(name);
  if (mirrored && around.places.has(other)) return other;
  if (!around.places.has(name) && !mirrored) {
    const close = nearest(name, around.places);
    const origin = originOfProperty(draft.node, 'place');
    const hint =
      close.length > 0
        ? `Did you mean ${close.join(' or ')}?`
        : `Declare it in the vehicle, for instance “fixed ${name}”.`;
    notes.problems.push({
      code: 'unknown-name',
      message: `There is no place called “${name}”. ${hint}`,
      origin,
      mends: close.map((word) => ({ title: `Write ${word}`, edits: [{ ...origin, text: word }] })),
    });
  }
  return name;
}

function variantOf(draft: Draft, row: KindRow, label: string, notes: ReadingNotes): string | undefined {
  const { variant } = draft;
  if (variant !== undefined && row.variants?.includes(variant)) return variant;
  if (variant !== undefined) {
    const wanted = row.variants ? `it is ${row.variants.join(' or ')}` : 'it has no such variants';
    const message = `${row.title} is not “${variant}”; ${wanted}.`;
    notes.problems.push({ code: 'unknown-word', message, origin: originOfProperty(draft.node, 'variant') });
  } else if (row.variants) {
    const said = row.variants.join(' or ');
    const message = `Say whether ${label} is ${said}: write one of the words behind its name.`;
    notes.problems.push({ code: 'missing', message, origin: originOfProperty(draft.node, 'kind') });
  }
  return undefined;
}

function noteMisplaced(draft: Draft, row: KindRow, around: Surroundings, notes: ReadingNotes): void {
  if (row.within.includes(around.within)) return;
  const spoken = (home: PartKind | 'file'): string => (home === 'file' ? 'by itself' : `in ${kindRow(home).title}`);
  notes.problems.push({
    code: 'misplaced',
    message: `${row.title} does not stand ${spoken(around.within)}; it belongs ${row.within.map(spoken).join(' or ')}.`,
    origin: originOfProperty(draft.node, 'kind'),
  });
}

function tubeOf(draft: Draft, label: string, notes: ReadingNotes): Tube | undefined {
  const node = lastOf(draft, ast.isTube)?.node;
  if (node === undefined) return undefined;
  const diameter = readValue(node.diameter, 'length', { part: label, fact: 'tube' }, notes);
  const wall = readValue(node.wall, 'length', { part: label, fact: 'tube wall' }, notes);
  return diameter && { diameter, wall, material: node.material, origin: originOf(node) };
}

function routeOf(draft: Draft, label: string, notes: ReadingNotes): Part['route'] {
  const said = lastOf(draft, ast.isRoute);
  const route = said && readRoute(said.node, { part: label, fact: 'route' }, notes);
  return route && said.mirrored ? mirrorRoute(route) : route;
}
