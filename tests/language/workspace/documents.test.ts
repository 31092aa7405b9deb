/** A file that is opened in the editor at the very moment when it is read from disk. */
import { EmptyFileSystemProvider, URI } from 'langium';
import { expect, test } from 'vitest';
import { createLinewrightServices } from '../../../language/services.ts';

const uri = URI.parse('file:///garage/van.circuit');

/** A disk that is slower than the editor. */
class SlowDisk extends EmptyFileSystemProvider {
  override async readFile(): Promise<string> {
    await new Promise((resolve) => setTimeout(resolve, 20));
    return 'fluid dot-3';
  }
}

test('what the editor has counts, and nothing fails', async () => {
  const { shared } = createLinewrightServices({ fileSystemProvider: () => new SlowDisk() });
  const { LangiumDocuments } = shared.workspace;
  const reading = LangiumDocuments.getOrCreateDocument(uri);
  const opened = LangiumDocuments.createDocument(uri, 'fluid dot-4');
  expect(await reading).toBe(opened);
});

test('two who read the same file get the same document', async () => {
  const { shared } = createLinewrightServices({ fileSystemProvider: () => new SlowDisk() });
  const { LangiumDocuments } = shared.workspace;
  const [one, other] = await Promise.all([
    LangiumDocuments.getOrCreateDocument(uri),
    LangiumDocuments.getOrCreateDocument(uri),
  ]);
  expect(one).toBe(other);
  expect(one.textDocument.getText()).toBe('fluid dot-3');
});
