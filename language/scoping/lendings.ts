/** The names that a file may write for stock, places, parts and what another file lends, with a word on each. */
import type { AstNode, LangiumDocument } from 'langium';
import * as ast from '../grammar/generated/ast.ts';
import type { UsableFiles } from '../system/read/uses.ts';
import { fileNames } from './file-names.ts';

export interface NamedThing {
  readonly name: string;
  /** The kind of part; the movement of a place. */
  readonly kind: string;
}

export interface Lendings {
  readonly stocks: readonly NamedThing[];
  readonly places: readonly NamedThing[];
  readonly parts: readonly NamedThing[];
  readonly lentBy: (path: string) => readonly NamedThing[];
}

export function lendingsOf(document: LangiumDocument, files: UsableFiles): Lendings {
  const file = document.parseResult.value;
  if (!ast.isFile(file)) return { stocks: [], places: [], parts: [], lentBy: () => [] };
  const { stocks, places, parts, lentBy } = fileNames(file, document.uri.toString(), files);
  return {
    stocks: things(stocks),
    places: things(places),
    parts: things(parts),
    lentBy: (path) => things(lentBy(path)),
  };
}

function things(named: ReadonlyMap<string, AstNode>): readonly NamedThing[] {
  return [...named].map(([name, node]) => ({ name, kind: kindOf(node) }));
}

function kindOf(node: AstNode): string {
  if (ast.isPart(node)) return node.kind ?? '';
  if (ast.isStock(node)) return node.kind ?? 'run';
  if (ast.isPlaceDeclaration(node)) return node.motion;
  return ast.isMirror(node) ? 'mirror' : '';
}
