/** What stands at a place in the text, in plain words and paths, for hover and whatever else asks about the word under a cursor. */
import type { AstNode, LangiumDocument, LeafCstNode } from 'langium';
import { AstUtils, CstUtils, GrammarUtils } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import type { Term } from '../quantity/index.ts';
import type { Origin } from '../system/origin.ts';
import { isShortForm } from './names.ts';

/** The terms of a quantity as they are written. */
export interface WrittenQuantity {
  readonly about: boolean;
  readonly terms: readonly Term[];
  readonly tolerance: readonly Term[] | undefined;
  readonly upper: readonly Term[] | undefined;
}

export type Standing = { readonly origin: Origin } /** A part or port of the model: `rear-left.cylinder.feed`. */ & (
  | { readonly kind: 'path'; readonly path: string }
  | { readonly kind: 'stock'; readonly name: string; readonly of: string }
  | { readonly kind: 'place'; readonly name: string }
  | { readonly kind: 'vehicle' }
  /** A fact of a kind of part, of the vehicle, a load or the fluid; the path of its part where it has one. */
  | { readonly kind: 'fact'; readonly key: string; readonly owner: string; readonly path: string | undefined }
  | { readonly kind: 'reading'; readonly key: string }
  | { readonly kind: 'quantity'; readonly quantity: WrittenQuantity }
  | { readonly kind: 'unknown' }
  | { readonly kind: 'thread'; readonly text: string }
  | { readonly kind: 'rule'; readonly code: string }
  /** A word of a closed list or of the grammar; `list` tells which list where words mean different things. */
  | { readonly kind: 'word'; readonly word: string; readonly list: 'seat' | 'flare' | 'material' | 'fluid' | 'grammar' }
);

/** Undefined in white space, comments, texts in quotes and dates. */
export function standingAt(document: LangiumDocument, offset: number): Standing | undefined {
  const leaf = leafAt(document, offset);
  if (leaf === undefined || leaf.hidden) return undefined;
  const whole = CstUtils.getDatatypeNode(leaf) ?? leaf;
  const origin = { uri: document.uri.toString(), start: whole.offset, end: whole.end };
  const feature = GrammarUtils.findAssignment(leaf)?.feature ?? '';
  return standingOf(leaf.astNode, feature, leaf, origin);
}

/** The word at the offset, or the one that ends there. */
function leafAt(document: LangiumDocument, offset: number): LeafCstNode | undefined {
  const root = document.parseResult.value.$cstNode;
  if (root === undefined) return undefined;
  const at = CstUtils.findLeafNodeAtOffset(root, offset);
  if (at !== undefined && /[^\s{}(),:]/.test(at.text)) return at;
  return offset > 0 ? CstUtils.findLeafNodeAtOffset(root, offset - 1) : undefined;
}

function standingOf(node: AstNode, feature: string, leaf: LeafCstNode, origin: Origin): Standing | undefined {
  const word = leaf.text;
  const keyword: Standing = { origin, kind: 'word', word, list: 'grammar' };
  if (ast.isReference(node)) {
    const index = node.segments.findIndex(({ $refNode }) => $refNode !== undefined && $refNode.end >= leaf.end);
    const words = node.segments.slice(0, index + 1).map(({ $refText }) => $refText);
    return word === '.' || index < 0 ? undefined : { origin, kind: 'path', path: words.join('.') };
  }
  if (ast.isPart(node) || ast.isMirror(node) || ast.isStock(node))
    return standingInHead(node, feature, word, origin) ?? keyword;
  if (ast.isPort(node)) return pathStanding(node, origin);
  if (ast.isEnd(node) && feature === 'side') return pathStanding(node, origin) ?? keyword;
  if (ast.isProperty(node)) return standingInProperty(node, feature, word, origin);
  if (ast.isTerm(node) || ast.isMeasure(node)) {
    const measure = AstUtils.getContainerOfType(node, ast.isMeasure);
    return measure && { origin: originOfNode(measure, origin), kind: 'quantity', quantity: written(measure) };
  }
  if (ast.isUnknown(node)) return word === '?' ? { origin, kind: 'unknown' } : keyword;
  if ((ast.isConnection(node) || ast.isNut(node)) && feature === 'thread') {
    return { origin, kind: 'thread', text: node.thread ?? word };
  }
  if ((ast.isConnection(node) || ast.isNut(node) || ast.isFlare(node)) && word === '?')
    return { origin, kind: 'unknown' };
  if (ast.isFeature(node)) return { origin, kind: 'word', word, list: 'seat' };
  if (ast.isFlare(node) && feature === 'form') return { origin, kind: 'word', word, list: 'flare' };
  if (ast.isTube(node) && feature === 'material') return { origin, kind: 'word', word, list: 'material' };
  if (ast.isFluid(node) && feature === 'grade') return { origin, kind: 'word', word, list: 'fluid' };
  if (ast.isVehicle(node) && feature === 'name') return { origin, kind: 'vehicle' };
  if (ast.isPlaceDeclaration(node) && (feature === 'name' || feature === 'parent'))
    return { origin, kind: 'place', name: word };
  if (ast.isUse(node) && feature === 'parts') return { origin, kind: 'path', path: word };
  if (ast.isPath(node) && feature === 'ports') {
    const owner = pathOf(node.$container);
    return owner && { origin, kind: 'path', path: [...owner, word].join('.') };
  }
  if (ast.isAccept(node) && feature === 'rule') return { origin, kind: 'rule', code: word };
  if (ast.isReading(node) && feature === 'key') return { origin, kind: 'reading', key: word };
  if (feature === 'caption' || feature === 'note' || feature === 'reason' || feature === 'date') return undefined;
  return /^[\p{L}±+.]/u.test(word) ? keyword : undefined;
}

function standingInHead(
  node: ast.Part | ast.Mirror | ast.Stock,
  feature: string,
  word: string,
  origin: Origin,
): Standing | undefined {
  if (feature === 'name' || feature === 'kind') {
    if (ast.isStock(node)) {
      return feature === 'name' ? { origin, kind: 'stock', name: node.name, of: node.kind ?? 'run' } : undefined;
    }
    return pathStanding(node, origin);
  }
  if (feature === 'source') return { origin, kind: 'path', path: word };
  if (feature === 'place') return { origin, kind: 'place', name: word };
  if (feature === 'stock')
    return { origin, kind: 'stock', name: word, of: ast.isPart(node) ? (node.kind ?? 'run') : 'run' };
  return undefined;
}

function standingInProperty(node: ast.Property, feature: string, word: string, origin: Origin): Standing | undefined {
  if (feature !== 'key' && feature !== 'word') return undefined;
  const owner = node.$container;
  if (feature === 'key' && isShortForm(node) && ast.isPart(owner)) return pathStanding(node, origin);
  const path = ast.isPart(owner) || ast.isMirror(owner) ? pathOf(owner)?.join('.') : undefined;
  const key = node.key ?? word;
  if (ast.isPart(owner) || ast.isStock(owner)) return { origin, kind: 'fact', key, owner: owner.kind ?? 'run', path };
  if (ast.isMirror(owner)) return { origin, kind: 'fact', key, owner: '', path };
  return {
    origin,
    kind: 'fact',
    key,
    owner: ast.isLoad(owner) ? 'load' : ast.isFluid(owner) ? 'fluid' : 'vehicle',
    path,
  };
}

function pathStanding(node: AstNode, origin: Origin): Standing | undefined {
  const path = pathOf(node);
  if (path !== undefined) return { origin, kind: 'path', path: path.join('.') };
  return ast.isPart(node) && node.kind !== undefined
    ? { origin, kind: 'word', word: node.kind, list: 'grammar' }
    : undefined;
}

/** The path of a part, port or end in the model; undefined inside stock, which is no part of the vehicle. */
export function pathOf(node: AstNode): readonly string[] | undefined {
  const path: string[] = [];
  for (let at: AstNode | undefined = node; at !== undefined; at = at.$container) {
    if (ast.isStock(at)) return undefined;
    const name = ast.isPart(at)
      ? (at.name ?? at.kind)
      : ast.isMirror(at) || ast.isPort(at)
        ? at.name
        : ast.isEnd(at)
          ? at.side
          : ast.isProperty(at) && isShortForm(at)
            ? at.key
            : undefined;
    if (name !== undefined) path.unshift(name);
  }
  return path.length > 0 ? path : undefined;
}

function originOfNode(node: AstNode, otherwise: Origin): Origin {
  const { $cstNode } = node;
  return $cstNode === undefined ? otherwise : { uri: otherwise.uri, start: $cstNode.offset, end: $cstNode.end };
}

function written(measure: ast.Measure): WrittenQuantity {
  const terms = (amount: ast.Amount | undefined): readonly Term[] | undefined =>
    amount?.terms
      .filter(({ number }) => number !== undefined)
      .map(({ number, unit }) => (unit === undefined ? { number } : { number, unit }));
  return {
    about: measure.about,
    terms: terms(measure.amount) ?? [],
    tolerance: terms(measure.tolerance),
    upper: terms(measure.upper),
  };
}
