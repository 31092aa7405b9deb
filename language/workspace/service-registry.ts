/** Knows that every document here is a circuit file, whatever its address: an unsaved one has no ending. */
import type { LangiumCoreServices, LangiumSharedCoreServices, URI } from 'langium';
import { DefaultServiceRegistry } from 'langium';

export class CircuitServiceRegistry extends DefaultServiceRegistry {
  private readonly shared: LangiumSharedCoreServices;

  constructor(services: LangiumSharedCoreServices) {
    super(services);
    this.shared = services;
  }

  override getServices(uri: URI): LangiumCoreServices {
    const [only] = this.all;
    // A document that is about to be taken out has lost its editor and with it the name of its language.
    if (only !== undefined && this.shared.workspace.LangiumDocuments.hasDocument(uri)) return only;
    return super.getServices(uri);
  }
}
