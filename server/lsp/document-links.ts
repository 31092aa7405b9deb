/** Makes the path of a `use` a link to the file that it brings in. */
import type { LangiumDocument } from 'langium';
import type { DocumentLinkProvider } from 'langium/lsp';
import type { DocumentLink } from 'vscode-languageserver-types';
import { rangeOf } from './positions.ts';
import type { ServerSharedServices } from './services.ts';

export class CircuitLinks implements DocumentLinkProvider {
  private readonly shared: ServerSharedServices;

  constructor(shared: ServerSharedServices) {
    this.shared = shared;
  }

  getDocumentLinks(document: LangiumDocument): DocumentLink[] {
    const text = document.textDocument;
    return this.shared.workspace.UsedFiles.links(document).map(({ origin, uri }) => ({
      range: rangeOf({ start: origin.start + 1, end: Math.max(origin.start + 1, origin.end - 1) }, text),
      target: uri,
    }));
  }
}
