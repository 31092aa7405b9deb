/** What each word of a file is, for colouring by meaning: a place called `in` is a place and no unit. */
import type { AstNode, LangiumDocument, LeafCstNode } from 'langium';
import { CstUtils, GrammarUtils } from 'langium';
import * as ast from '../grammar/generated/ast.ts';

/** Names are those of the protocol's standard types. */
export type Tone =
  | 'keyword'
  | 'class'
  | 'variable'
  | 'struct'
  | 'namespace'
  | 'parameter'
  | 'property'
  | 'enumMember'
  | 'number'
  | 'string'
  | 'event';

export interface TonedWord {
  readonly start: number;
  readonly end: number;
  readonly tone: Tone;
  readonly declares: boolean;
}

/** In the order of the text; punctuation and comments are left out. */
export function tonesOf(document: LangiumDocument): readonly TonedWord[] {
  const root = document.parseResult.value.$cstNode;
  if (root === undefined) return [];
  const toned: TonedWord[] = [];
  for (const leaf of CstUtils.flattenCst(root)) {
    if (leaf.hidden || /^[{}(),:.]$/.test(leaf.text)) continue;
    const feature = GrammarUtils.findAssignment(leaf)?.feature ?? '';
    const tone = toneOf(leaf.astNode, feature, leaf);
    const declares = feature === 'name';
    toned.push({ start: leaf.offset, end: leaf.end, tone, declares });
  }
  return toned;
}

function toneOf(node: AstNode, feature: string, leaf: LeafCstNode): Tone {
  if (feature === 'date' || feature === 'bought' || feature === 'arrived' || feature === 'thread') return 'number';
  if (leaf.text.startsWith('"')) return 'string';
  if (ast.isTerm(node)) return 'number';
  if (ast.isReference(node)) return referenceTone(node, leaf);
  if (feature === 'kind') return 'class';
  if (feature === 'place' || feature === 'parent') return 'namespace';
  if (feature === 'stock') return 'struct';
  if (feature === 'source' || feature === 'parts') return 'variable';
  if (ast.isPath(node) && feature === 'ports') return 'parameter';
  if (feature === 'rule') return 'event';
  if (feature === 'name') return nameTone(node);
  if (feature === 'key') return 'property';
  if (['word', 'form', 'material', 'grade', 'variant', 'length'].includes(feature)) return 'enumMember';
  return 'keyword';
}

function nameTone(node: AstNode): Tone {
  if (ast.isPort(node)) return 'parameter';
  if (ast.isStock(node)) return 'struct';
  return ast.isPlaceDeclaration(node) || ast.isVehicle(node) || ast.isLoad(node) ? 'namespace' : 'variable';
}

function referenceTone(node: ast.Reference, leaf: LeafCstNode): Tone {
  const segment = node.segments.find(({ $refNode }) => $refNode !== undefined && $refNode.offset === leaf.offset);
  const ref = segment?.ref;
  return ref !== undefined && (ast.isPort(ref) || ast.isEnd(ref)) ? 'parameter' : 'variable';
}
