/** Reads a circuit written in a test, with the files it uses, without an editor. */
import { URI } from 'langium';
import type { File } from '../../language/grammar/generated/ast.ts';
import { createLinewrightServices } from '../../language/services.ts';
import { readFile } from '../../language/system/read/read-file.ts';
import type { FileReading } from '../../language/system/system.ts';

const services = createLinewrightServices();
const folder = 'file:///garage/';

/** The file that `text` is; `others` are the files beside it that it may use, by name. */
export function readCircuit(text: string, others: Readonly<Record<string, string>> = {}): FileReading {
  return readFile(parse(text, 'test.circuit'), `${folder}test.circuit`, {
    find: (_from, path) => {
      const other = others[path.replace(/^\.\//, '')];
      return other === undefined ? { failure: 'missing' } : { uri: folder + path, file: parse(other, path) };
    },
  });
}

/** What the parser and lexer have to say about a text; empty for one that follows the grammar. */
export function parseErrors(text: string): readonly string[] {
  const { parserErrors, lexerErrors } = services.language.parser.LangiumParser.parse(text);
  return [...lexerErrors, ...parserErrors].map(({ message }) => message);
}

/** In a document, so that everything read knows which file it stands in. */
function parse(text: string, name: string): File {
  const { LangiumDocumentFactory } = services.shared.workspace;
  return LangiumDocumentFactory.fromString<File>(text, URI.parse(folder + name)).parseResult.value;
}
