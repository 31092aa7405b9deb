/** Checks a document: what is wrong with its text, and what the rules find in what it says. */
import type { LangiumDocument } from 'langium';
import { DefaultDocumentValidator } from 'langium';
import type { LangiumServices } from 'langium/lsp';
import type { Diagnostic } from 'vscode-languageserver-types';
import { diagnosticsOf } from './diagnostics.ts';
import type { ServerSharedServices } from './services.ts';

export class CircuitValidator extends DefaultDocumentValidator {
  private readonly sharedServices: ServerSharedServices;

  constructor(services: LangiumServices, shared: ServerSharedServices) {
    super(services);
    this.sharedServices = shared;
  }

  /** Names that lead nowhere are findings of the rules; the linker's errors would only repeat them. */
  override async validateDocument(document: LangiumDocument): Promise<Diagnostic[]> {
    return [...diagnosticsOf(document, this.sharedServices)];
  }
}
