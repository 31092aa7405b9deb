/** The outline of a document, and the symbols of all files in the words of the protocol. */
import type { AstNode, AstNodeDescription, LangiumDocument } from 'langium';
import { DefaultNodeKindProvider, type DocumentSymbolProvider } from 'langium/lsp';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver-types';
import { type OutlineEntry, outlineOf } from '../../language/index.ts';
import { rangeOf } from './positions.ts';

const symbolKinds: Readonly<Record<OutlineEntry['kind'], SymbolKind>> = {
  vehicle: SymbolKind.Package,
  place: SymbolKind.Namespace,
  load: SymbolKind.Object,
  fluid: SymbolKind.Constant,
  stock: SymbolKind.Struct,
  part: SymbolKind.Class,
  port: SymbolKind.Interface,
};

export class CircuitOutline implements DocumentSymbolProvider {
  getSymbols(document: LangiumDocument): DocumentSymbol[] {
    const symbolOf = ({ kind, name, detail, origin, nameOrigin, children }: OutlineEntry): DocumentSymbol => ({
      name,
      detail,
      kind: symbolKinds[kind],
      range: rangeOf(origin, document.textDocument),
      selectionRange: rangeOf(nameOrigin, document.textDocument),
      children: children.map(symbolOf),
    });
    return outlineOf(document).map(symbolOf);
  }
}

const byType: Readonly<Record<string, SymbolKind>> = {
  Vehicle: SymbolKind.Package,
  Stock: SymbolKind.Struct,
  Part: SymbolKind.Class,
  Mirror: SymbolKind.Class,
};

export class CircuitSymbolKinds extends DefaultNodeKindProvider {
  override getSymbolKind(node: AstNode | AstNodeDescription): SymbolKind {
    const type = '$type' in node ? node.$type : node.type;
    return byType[type] ?? SymbolKind.Field;
  }
}
