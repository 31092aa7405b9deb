/** Reads one circuit file with the files it uses for a host that asks once: the command, a test. */
import { URI } from 'langium';
import type { File } from './grammar/generated/ast.ts';
import { createLinewrightServices, type Services } from './services.ts';
import { readFile } from './system/read/read-file.ts';
import type { UsedFile, UseFailure } from './system/read/uses.ts';
import type { FileReading } from './system/system.ts';
import { targetOf } from './workspace/boundaries.ts';
import { whyUnreadable } from './workspace/text-limits.ts';
import { type TextProblem, textProblems } from './workspace/text-problems.ts';

export interface TextFile {
  readonly uri: string;
  readonly text: string;
}

/** What a host lends: the folders that a `use` may lead to, and the texts in them. */
export interface TextHost {
  /** Addresses; a file in none of them is confined to its own folder. */
  readonly folders: readonly string[];
  /** The text behind an address, which lies in `root` as far as its path tells; or why there is none. */
  textOf(uri: string, root: string): string | { readonly failure: UseFailure };
}

export interface SingleFile {
  readonly reading: FileReading;
  /** What could not be read as text in this file; the reading holds the rest. */
  readonly syntax: readonly TextProblem[];
  /** Every text that was read, by its address, this file's first. */
  readonly texts: ReadonlyMap<string, string>;
}

/** Total on any text. Each file is parsed once, however often it is used. */
export function readSingleFile(
  { uri, text }: TextFile,
  host: TextHost,
  services: Services = createLinewrightServices(),
): SingleFile {
  const texts = new Map([[uri, text]]);
  const folders = host.folders.map((folder) => URI.parse(folder));
  const parse = (address: string, content: string) =>
    services.shared.workspace.LangiumDocumentFactory.fromString<File>(content, URI.parse(address));
  const used = new Map<string, UsedFile>();
  const fetch = (address: string, root: string): UsedFile => {
    const found = host.textOf(address, root);
    if (typeof found !== 'string') return found;
    if (whyUnreadable(found) !== undefined) return { failure: 'unreadable' };
    texts.set(address, found);
    return { uri: address, file: parse(address, found).parseResult.value };
  };
  const document = parse(uri, text);
  const reading = readFile(document.parseResult.value, uri, {
    find: (from, path) => {
      const target = targetOf(URI.parse(from), path, folders);
      if ('failure' in target) return target;
      const address = target.uri.toString();
      const file = used.get(address) ?? fetch(address, target.root.toString());
      used.set(address, file);
      return file;
    },
  });
  return { reading, syntax: textProblems(document), texts };
}
