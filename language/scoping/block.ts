/** The block that a place in the text lies in, and what has been said there: what completion has to know about the tree. */
import type { AstNode, LangiumDocument } from 'langium';
import { CstUtils, GrammarUtils } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import { pathOf } from './standing.ts';

export type Block =
  | { readonly kind: 'file' }
  | {
      readonly kind: 'part';
      /** The kind of part; empty for a mirror, whose kind is that of what it mirrors. */
      readonly of: string;
      /** Its path in the model; undefined in stock. */
      readonly path: string | undefined;
      /** Keys of its facts. */
      readonly said: ReadonlySet<string>;
    }
  | { readonly kind: 'vehicle' | 'load' | 'fluid'; readonly said: ReadonlySet<string> }
  /** Behind the end of a run, where its own nut and flare stand. */
  | { readonly kind: 'end'; readonly side: string; readonly path: string | undefined };

/** The innermost block around the offset. */
export function blockAt(document: LangiumDocument, offset: number): Block {
  const root = document.parseResult.value.$cstNode;
  const leaf = root && CstUtils.findLeafNodeBeforeOffset(root, Math.max(0, offset - 1));
  for (let node: AstNode | undefined = leaf?.astNode; node !== undefined; node = node.$container) {
    if (!holds(node, offset)) continue;
    const block = blockOf(node);
    if (block !== undefined) return block;
  }
  return { kind: 'file' };
}

/** Where the declaration begins that the offset lies in or comes behind: text before it does not matter to what follows. */
export function declarationStart(document: LangiumDocument, offset: number): number {
  const file = document.parseResult.value;
  if (!ast.isFile(file)) return 0;
  let start = 0;
  for (const { $cstNode } of [...file.uses, ...file.declarations]) {
    if ($cstNode !== undefined && $cstNode.offset < offset) start = Math.max(start, $cstNode.offset);
  }
  return start;
}

/** Whether the offset lies between the braces of the node; a brace that is missing lies infinitely far behind. */
function holds(node: AstNode, offset: number): boolean {
  const open = GrammarUtils.findNodeForKeyword(node.$cstNode, '{');
  if (open === undefined || open.end > offset) return false;
  const close = GrammarUtils.findNodeForKeyword(node.$cstNode, '}');
  return close === undefined || close.offset >= offset;
}

function blockOf(node: AstNode): Block | undefined {
  if (ast.isPart(node) || ast.isStock(node) || ast.isMirror(node)) {
    const of = ast.isMirror(node) ? '' : (node.kind ?? 'run');
    return { kind: 'part', of, path: pathOf(node)?.join('.'), said: keysOf(node.members) };
  }
  if (ast.isVehicle(node)) return { kind: 'vehicle', said: keysOf(node.members) };
  if (ast.isFluid(node)) return { kind: 'fluid', said: keysOf(node.members) };
  if (ast.isLoad(node)) return { kind: 'load', said: keysOf(node.members) };
  if (ast.isEnd(node)) return { kind: 'end', side: node.side, path: pathOf(node)?.slice(0, -1).join('.') };
  return undefined;
}

function keysOf(members: readonly AstNode[]): ReadonlySet<string> {
  return new Set(members.filter(ast.isProperty).map(({ key }) => key));
}
