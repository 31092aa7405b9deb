/** Renames in every file, or answers with the reason why not. */
import type { LangiumDocument } from 'langium';
import type { RenameProvider } from 'langium/lsp';
import {
  LSPErrorCodes,
  type RenameParams,
  ResponseError,
  type TextDocumentPositionParams,
} from 'vscode-languageserver';
import type { Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { Renaming } from '../../language/index.ts';
import { locationOf, rangeOf } from './positions.ts';
import type { ServerSharedServices } from './services.ts';

export class CircuitRename implements RenameProvider {
  private readonly renaming: Renaming;
  private readonly shared: ServerSharedServices;

  constructor(renaming: Renaming, shared: ServerSharedServices) {
    this.renaming = renaming;
    this.shared = shared;
  }

  /** Rejects with a sentence that the editor shows. */
  prepareRename(document: LangiumDocument, { position }: TextDocumentPositionParams): Range {
    const found = this.renaming.at(document, document.textDocument.offsetAt(position));
    if (found.kind === 'refused') throw refusal(found.reason);
    return rangeOf(found.origin, document.textDocument);
  }

  async rename(document: LangiumDocument, { position, newName }: RenameParams): Promise<WorkspaceEdit> {
    const renamed = this.renaming.rename(document, document.textDocument.offsetAt(position), newName.trim());
    if (renamed.kind === 'refused') throw refusal(renamed.reason);
    const changes: Record<string, TextEdit[]> = {};
    for (const place of renamed.places) {
      const location = locationOf(place, this.shared);
      if (location === undefined) throw refusal(`The file ${place.uri} is not at hand, so nothing was renamed.`);
      changes[place.uri] = [...(changes[place.uri] ?? []), { range: location.range, newText: newName.trim() }];
    }
    return { changes };
  }
}

function refusal(reason: string): ResponseError {
  return new ResponseError(LSPErrorCodes.RequestFailed, reason);
}
