/** Lays stock under parts and parts over their mirror images, before anything is read: who says what about whom. */
import type { AstNode } from 'langium';
import * as ast from '../../grammar/generated/ast.ts';

/** A statement and whether it was said of the other side. */
export interface Said<M extends ast.Member = ast.Member> {
  readonly node: M;
  readonly mirrored: boolean;
  /** `stock` statements lie under those of the part itself. */
  readonly from: 'stock' | 'part';
}

/** A part as all statements about it add up. */
export interface Draft {
  readonly node: ast.Part | ast.Mirror | ast.Stock;
  readonly name: string | undefined;
  readonly kind: string;
  readonly variant: string | undefined;
  readonly mark: ast.Mark | undefined;
  readonly place: { readonly name: string; readonly mirrored: boolean } | undefined;
  readonly stock: string | undefined;
  readonly statements: readonly Said[];
  readonly parts: readonly Draft[];
}

/** Finds what a part builds on, by name; the parser's links are not needed. */
export interface DraftSources {
  stock(name: string): ast.Stock | undefined;
  part(name: string): ast.Part | ast.Mirror | undefined;
}

/** The part with its stock beneath it. */
export function draftOfPart(node: ast.Part, sources: DraftSources): Draft {
  const own: Draft = {
    node,
    name: node.name,
    kind: node.kind ?? '',
    variant: node.variant,
    mark: node.mark,
    place: node.place && { name: node.place.$refText, mirrored: false },
    stock: node.stock?.$refText,
    ...contentOf(node.members, 'part', sources),
  };
  const stock = node.stock && sources.stock(node.stock.$refText);
  const fits = stock !== undefined && (node.kind === undefined || node.kind === (stock.kind ?? 'run'));
  return fits ? overlay(draftOfStock(stock, sources), own) : own;
}

/** The other side of a part with its differences; undefined where what it mirrors is missing or mirrors it back. */
export function draftOfMirror(
  node: ast.Mirror,
  sources: DraftSources,
  seen: readonly AstNode[] = [],
): Draft | undefined {
  const source = node.source && sources.part(node.source.$refText);
  if (source === undefined || seen.includes(source)) return undefined;
  const base = ast.isMirror(source) ? draftOfMirror(source, sources, [...seen, node]) : draftOfPart(source, sources);
  if (base === undefined) return undefined;
  const own: Draft = {
    node,
    name: node.name,
    kind: base.kind,
    variant: undefined,
    mark: node.mark,
    place: node.place && { name: node.place.$refText, mirrored: false },
    stock: undefined,
    ...contentOf(node.members, 'part', sources),
  };
  return overlay(otherSide(base), own);
}

function draftOfStock(node: ast.Stock, sources: DraftSources): Draft {
  return {
    node,
    name: undefined,
    kind: node.kind ?? 'run',
    variant: node.variant,
    mark: undefined,
    place: undefined,
    stock: node.name,
    ...contentOf(node.members, 'stock', sources),
  };
}

function contentOf(
  members: readonly ast.Member[],
  from: Said['from'],
  sources: DraftSources,
): Pick<Draft, 'statements' | 'parts'> {
  const statements: Said[] = [];
  const parts: Draft[] = [];
  for (const node of members) {
    if (ast.isPart(node)) parts.push(draftOfPart(node, sources));
    else statements.push({ node, mirrored: false, from });
  }
  return { statements, parts };
}

function otherSide(draft: Draft): Draft {
  return {
    ...draft,
    place: draft.place && { ...draft.place, mirrored: !draft.place.mirrored },
    // What was found and done on one side says nothing of the other.
    statements: draft.statements
      .filter((said) => !ast.isRecord(said.node) && !ast.isReading(said.node))
      .map((said) => ({ ...said, mirrored: !said.mirrored })),
    parts: draft.parts.map(otherSide),
  };
}

function overlay(base: Draft, own: Draft): Draft {
  const replaced = new Set(own.statements.flatMap((said) => slotsOf(said.node)));
  const kept = base.statements.filter((said) => !slotsOf(said.node).some((slot) => replaced.has(slot)));
  const parts = base.parts.map((part) => {
    const over = own.parts.find((other) => nameOf(other) === nameOf(part));
    return over ? overlay(part, over) : part;
  });
  const added = own.parts.filter((part) => !base.parts.some((other) => nameOf(other) === nameOf(part)));
  return {
    node: own.node,
    name: own.name,
    kind: own.kind || base.kind,
    variant: own.variant ?? base.variant,
    mark: own.mark,
    place: own.place ?? base.place,
    stock: own.stock ?? base.stock,
    statements: [...kept, ...own.statements],
    parts: [...parts, ...added],
  };
}

/** The name under which a draft is addressed: its own, or its kind. */
export function nameOf(draft: Draft): string {
  return draft.name ?? draft.kind;
}

/** What a statement settles: a later one that settles the same takes its place. */
function slotsOf(node: ast.Member): readonly string[] {
  if (ast.isProperty(node)) return [`property ${node.key}`];
  if (ast.isTube(node)) return ['tube'];
  if (ast.isNut(node)) return ['nut'];
  if (ast.isFlare(node)) return ['flare'];
  if (ast.isRoute(node)) return ['route'];
  if (ast.isClip(node)) return ['clip'];
  if (ast.isPortGroup(node)) return node.ports.map((port) => `port ${port.name}`);
  return [];
}
