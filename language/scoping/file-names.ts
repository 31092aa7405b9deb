/** The names that a file can use at its top: its own parts, stock and places, and what other files lend it. */
import type { AstNode } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import type { UsableFiles } from '../system/read/uses.ts';

export interface FileNames {
  readonly stocks: ReadonlyMap<string, AstNode>;
  readonly parts: ReadonlyMap<string, AstNode>;
  readonly places: ReadonlyMap<string, AstNode>;
  /** The named parts of a file that this one uses, by the path as it is written. */
  readonly lentBy: (path: string) => ReadonlyMap<string, AstNode>;
}

/** Goes once over the declarations and the files used; what the file says itself goes first. */
export function fileNames(file: ast.File, uri: string, files: UsableFiles): FileNames {
  const stocks = new Map<string, AstNode>();
  const parts = new Map<string, AstNode>();
  const places = new Map<string, AstNode>();
  for (const node of file.declarations) {
    if (ast.isStock(node)) keep(stocks, node.name, node);
    else if (ast.isPart(node)) keep(parts, node.name ?? node.kind, node);
    else if (ast.isMirror(node)) keep(parts, node.name, node);
    else if (ast.isVehicle(node)) for (const place of node.places) keep(places, place.name, place);
  }
  const lentBy = (path: string): ReadonlyMap<string, AstNode> => {
    const used = files.find(uri, path);
    return 'file' in used ? namedParts(used.file) : new Map();
  };
  for (const use of file.uses) {
    if (use.path === undefined || use.parts.length === 0) continue;
    const lent = lentBy(use.path);
    for (const reference of use.parts) {
      const part = lent.get(reference.$refText);
      if (part !== undefined) keep(parts, reference.$refText, part);
    }
  }
  borrowStock(file, uri, files, stocks);
  return { stocks, parts, places, lentBy };
}

function borrowStock(file: ast.File, uri: string, files: UsableFiles, stocks: Map<string, AstNode>): void {
  const seen = new Set([uri]);
  const visit = (node: ast.File, from: string): void => {
    for (const use of node.uses) {
      const used = use.path === undefined ? undefined : files.find(from, use.path);
      if (used === undefined || 'failure' in used || seen.has(used.uri)) continue;
      seen.add(used.uri);
      for (const stock of used.file.declarations.filter(ast.isStock)) keep(stocks, stock.name, stock);
      visit(used.file, used.uri);
    }
  };
  visit(file, uri);
}

function namedParts(file: ast.File): ReadonlyMap<string, AstNode> {
  const named = new Map<string, AstNode>();
  for (const part of file.declarations.filter(ast.isPart)) keep(named, part.name, part);
  return named;
}

function keep(into: Map<string, AstNode>, name: string | undefined, node: AstNode): void {
  if (name !== undefined && !into.has(name)) into.set(name, node);
}
