/** Under which name a node is addressed: its own, its kind where it has none, the side of an end, the word of a short form. */
import type { AstNode, CstNode } from 'langium';
import { DefaultNameProvider, GrammarUtils } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import { findKind } from '../system/kinds/index.ts';

/** Which property of a node names it; undefined for nodes that are not addressed. */
export function namingProperty(node: AstNode): 'name' | 'kind' | 'side' | 'key' | undefined {
  if (ast.isPart(node)) return node.name === undefined ? 'kind' : 'name';
  if (ast.isEnd(node)) return 'side';
  if (ast.isProperty(node)) return isShortForm(node) ? 'key' : undefined;
  return 'name' in node ? 'name' : undefined;
}

/** `drum 11 in` is a sub-part with one fact. */
export function isShortForm(node: ast.Property): boolean {
  return node.value !== undefined && findKind(node.key)?.short !== undefined;
}

export class CircuitNameProvider extends DefaultNameProvider {
  override getName(node: AstNode): string | undefined {
    if (ast.isPart(node)) return node.name ?? node.kind;
    if (ast.isEnd(node)) return node.side;
    if (ast.isProperty(node)) return isShortForm(node) ? node.key : undefined;
    return super.getName(node);
  }

  override getNameNode(node: AstNode): CstNode | undefined {
    const property = namingProperty(node);
    return property && GrammarUtils.findNodeForProperty(node.$cstNode, property);
  }
}
