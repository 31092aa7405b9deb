/** `drum 11 in`: a sub-part whose one fact is its size, written as if it were a fact of the part around it. */
import * as ast from '../../grammar/generated/ast.ts';
import { findKind, type KindRow } from '../kinds/index.ts';
import { type Fact, type Part, partIdOf } from '../part.ts';
import type { Draft } from './draft.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { readValue } from './read-value.ts';
import { statementsOf } from './statements.ts';

type Whole = Pick<Part, 'id' | 'label' | 'presence' | 'place'>;

/** Whether the word names a sub-part that the kind may hold in short. */
export function isShortForm(key: string, owner: KindRow): boolean {
  const kind = findKind(key);
  const isOwnFact = owner.properties.some((property) => property.key === key);
  return kind?.short !== undefined && kind.within.includes(owner.keyword) && !isOwnFact;
}

/** The sub-parts written in short, in the order of the text. */
export function shortForms(draft: Draft, owner: KindRow, whole: Whole, notes: ReadingNotes): readonly Part[] {
  return statementsOf(draft, ast.isProperty)
    .filter(({ node }) => isShortForm(node.key, owner))
    .map(({ node }) => shortForm(node, whole, notes))
    .filter((part) => part !== undefined);
}

function shortForm(node: ast.Property, whole: Whole, notes: ReadingNotes): Part | undefined {
  const kind = findKind(node.key);
  if (kind?.short === undefined) return undefined;
  const { keyword, short } = kind;
  const label = `${whole.label} ${keyword}`;
  const origin = originOf(node);
  const facts = new Map<string, Fact>();
  if (node.value === undefined) {
    const message = `${keyword} takes ${short.meaning}, for instance ${keyword} ${short.example}.`;
    notes.problems.push({ code: 'quantity', message, origin });
  }
  const stated = readValue(node.value, short.dimension, { part: label, fact: short.key }, notes);
  if (stated) facts.set(short.key, { kind: 'measure', dimension: short.dimension, stated, origin });
  return {
    id: partIdOf([whole.id, keyword]),
    name: keyword,
    kind: keyword,
    variant: undefined,
    label,
    parent: whole.id,
    presence: whole.presence,
    place: whole.place,
    stock: undefined,
    facts,
    ports: [],
    parts: [],
    tube: undefined,
    route: undefined,
    clip: undefined,
    paths: [],
    records: [],
    readings: [],
    origin,
    nameOrigin: originOfProperty(node, 'key'),
  };
}
