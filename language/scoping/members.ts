/** What can be named inside a part: its ports, ends and sub-parts, those of its stock, and those of what it mirrors. */
import type { AstNode } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import { isShortForm } from './names.ts';

export type Members = ReadonlyMap<string, AstNode>;

/** By name; what the part says itself goes before what it takes over. */
export function membersOf(node: AstNode, seen: readonly AstNode[] = []): Members {
  const found = new Map<string, AstNode>();
  if (seen.includes(node)) return found;
  const add = (name: string | undefined, member: AstNode): void => {
    if (name !== undefined && !found.has(name)) found.set(name, member);
  };
  if (ast.isPart(node) || ast.isMirror(node) || ast.isStock(node)) {
    for (const member of node.members) {
      if (ast.isPart(member)) add(member.name ?? member.kind, member);
      else if (ast.isPortGroup(member)) for (const port of member.ports) add(port.name, port);
      else if (ast.isEnd(member)) add(member.side, member);
      else if (ast.isProperty(member) && isShortForm(member)) add(member.key, member);
    }
    const base = ast.isPart(node) ? node.stock?.ref : ast.isMirror(node) ? node.source?.ref : undefined;
    if (base !== undefined) for (const [name, member] of membersOf(base, [...seen, node])) add(name, member);
  }
  return found;
}
