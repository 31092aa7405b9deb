/** Turns places in the text into the line and column that the protocol counts, in UTF-16 units from zero. */
import type { LangiumSharedCoreServices } from 'langium';
import { URI } from 'langium';
import type { Location, Range } from 'vscode-languageserver-types';
import type { Origin } from '../../language/index.ts';

type Offsets = Pick<Origin, 'start' | 'end'>;
interface Positions {
  positionAt(offset: number): Range['start'];
}

export function rangeOf({ start, end }: Offsets, text: Positions): Range {
  return { start: text.positionAt(start), end: text.positionAt(end) };
}

/** Where an origin stands, in whichever file; undefined if that file is not at hand. */
export function locationOf(origin: Origin, shared: LangiumSharedCoreServices): Location | undefined {
  const document = shared.workspace.LangiumDocuments.getDocument(URI.parse(origin.uri));
  return document && { uri: origin.uri, range: rangeOf(origin, document.textDocument) };
}
