/** Finds the way between the picture and the text: where a drawn part is declared, which drawn part stands at a place. */
import type { LangiumDocument } from 'langium';
import type { Location, Position } from 'vscode-languageserver-types';
import { type Part, partIdOf, type System } from '../../language/index.ts';
import { ownerOf } from '../../language/schematic/reading/ends.ts';
import type { PartAtAnswer } from '../protocol.ts';
import { locationOf } from './positions.ts';
import type { ServerSharedServices } from './services.ts';

/** Where the part with this path is named, planned or found; null if it is gone. */
export function locatePart(document: LangiumDocument, id: string, shared: ServerSharedServices): Location | null {
  const reading = shared.workspace.Readings.readingOf(document);
  for (const system of [reading.planned, reading.found]) {
    const part = system.partById.get(partIdOf(id.split('.')));
    const port = [...system.portById.values()].find((candidate) => candidate.id === id);
    const origin = part?.nameOrigin ?? port?.origin;
    const location = origin && locationOf(origin, shared);
    if (location !== undefined) return location;
  }
  return null;
}

/** The id of the drawn part whose declaration the position lies in. */
export function partAt(document: LangiumDocument, position: Position, shared: ServerSharedServices): PartAtAnswer {
  const reading = shared.workspace.Readings.readingOf(document);
  const offset = document.textDocument.offsetAt(position);
  const uri = document.uri.toString();
  for (const system of [reading.planned, reading.found]) {
    const part = innermost(system, uri, offset);
    if (part !== undefined) return { id: ownerOf(system, part).id };
  }
  return {};
}

function innermost(system: System, uri: string, offset: number): Part | undefined {
  let best: Part | undefined;
  for (const part of system.partById.values()) {
    const { origin } = part;
    if (origin.uri !== uri || offset < origin.start || offset > origin.end) continue;
    if (best === undefined || origin.end - origin.start <= best.origin.end - best.origin.start) best = part;
  }
  return best;
}
