/** Finds where in the text a node or a property of it stands. */
import type { AstNode } from 'langium';
import { AstUtils, GrammarUtils } from 'langium';
import type { Origin } from '../origin.ts';

/** Where the node stands; an empty stretch at the start of the file where a broken tree cannot say. */
export function originOf(node: AstNode): Origin {
  const { $cstNode } = node;
  const uri = uriOf(node);
  return $cstNode ? { uri, start: $cstNode.offset, end: $cstNode.end } : { uri, start: 0, end: 0 };
}

/** Where one property of the node stands, or the node as a whole. */
export function originOfProperty(node: AstNode, property: string, index?: number): Origin {
  const found = GrammarUtils.findNodeForProperty(node.$cstNode, property, index);
  return found ? { uri: uriOf(node), start: found.offset, end: found.end } : originOf(node);
}

/** One property of the node as it was written, blanks between its words too; undefined where a broken tree cannot say. */
export function textOfProperty(node: AstNode, property: string): string | undefined {
  return GrammarUtils.findNodeForProperty(node.$cstNode, property)?.text;
}

function uriOf(node: AstNode): string {
  const root = AstUtils.findRootNode(node);
  return root.$document?.uri.toString() ?? '';
}
