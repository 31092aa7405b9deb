/** Widens a selection step by step: word, statement, block, declaration, file. */
import { type CstNode, CstUtils, DocumentState, type LangiumDocument } from 'langium';
import { createRequestHandler } from 'langium/lsp';
import type { Connection, SelectionRangeParams } from 'vscode-languageserver';
import type { Position, Range, SelectionRange } from 'vscode-languageserver-types';
import type { ServerSharedServices } from './services.ts';

export function answerSelectionRanges(connection: Connection, shared: ServerSharedServices): void {
  connection.onSelectionRanges(
    createRequestHandler<SelectionRangeParams, SelectionRange[]>(
      (_services, document, { positions }) => positions.map((position) => selectionAt(document, position)),
      shared,
      DocumentState.Parsed,
    ),
  );
}

function selectionAt(document: LangiumDocument, position: Position): SelectionRange {
  const root = document.parseResult.value.$cstNode;
  const offset = document.textDocument.offsetAt(position);
  const leaf = root && CstUtils.findLeafNodeBeforeOffset(root, offset);
  const ranges: Range[] = [];
  for (let node: CstNode | undefined = leaf; node !== undefined; node = node.container) {
    const last = ranges.at(-1);
    const holds = node.offset <= offset && offset <= node.end;
    if (holds && (last === undefined || !isSame(last, node.range))) ranges.push(node.range);
  }
  const outermost: SelectionRange = { range: ranges.at(-1) ?? { start: position, end: position } };
  return ranges.slice(0, -1).reduceRight<SelectionRange>((parent, range) => ({ range, parent }), outermost);
}

function isSame(a: Range, b: Range): boolean {
  return (
    a.start.line === b.start.line &&
    a.start.character === b.start.character &&
    a.end.line === b.end.line &&
    a.end.character === b.end.character
  );
}
