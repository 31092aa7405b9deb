/** The documents at hand. One that is opened in the editor while its file is being read is kept as the editor has it. */
import { type Cancellation, DefaultLangiumDocuments, type LangiumDocument, type URI } from 'langium';

export class CircuitDocuments extends DefaultLangiumDocuments {
  override async getOrCreateDocument(uri: URI, token?: Cancellation.CancellationToken): Promise<LangiumDocument> {
    const present = this.getDocument(uri);
    if (present !== undefined) return present;
    const read = await this.langiumDocumentFactory.fromUri(uri, token);
    const meanwhile = this.getDocument(uri);
    if (meanwhile !== undefined) return meanwhile;
    this.addDocument(read);
    return read;
  }
}
