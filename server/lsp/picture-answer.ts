/** Draws the picture of a document and tells the preview everything that it shows beside it. */
import type { LangiumDocument } from 'langium';
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import {
  type FileReading,
  type Finding,
  kindRow,
  type State,
  type System,
  textProblems,
} from '../../language/index.ts';
import { largestLayout } from '../../language/schematic/layout/elk.ts';
import type { Picture, PictureLine, PictureNode } from '../../language/schematic/picture.ts';
import { pictureOf } from '../../language/schematic/picture-of.ts';
import { place } from '../../language/schematic/place.ts';
import { placementText, readPlacement } from '../../language/schematic/placement-text.ts';
import { svgOf } from '../../language/schematic/svg.ts';
import type { BrokenPlace, CircuitView, NoPicture, PictureAnswer, PictureParams, PicturePart } from '../protocol.ts';
import { messageOf } from './diagnostics.ts';
import type { PictureContext } from './picture-requests.ts';
import { rangeOf } from './positions.ts';

/** A newer request for the same picture came in between; the window asks again by itself. */
const overtaken = new ResponseError(LSPErrorCodes.ContentModified, 'A newer picture is on its way.');

export async function drawPicture(
  document: LangiumDocument,
  params: PictureParams,
  { shared, engine }: PictureContext,
): Promise<PictureAnswer | ResponseError> {
  const refusal = shared.workspace.LangiumDocumentFactory.refusal(document);
  if (refusal !== undefined) return none('too-large', refusal);
  const broken = brokenPlace(document);
  if (broken !== undefined && params.whenBroken === 'say-so') return { kind: 'broken', ...broken };
  const version = shared.workspace.TextDocuments.get(document.uri)?.version;
  const reading = shared.workspace.Readings.readingOf(document);
  const state: State = params.circuit;
  const system = reading[state];
  if (system.parts.length === 0)
    return none('empty', 'There is no part in this file yet. Declare one, for instance a master.');
  const { findings } = shared.workspace.Judgements.of(reading, state);
  const picture = pictureOf(system, { findings, figures: shared.workspace.Judgements.figuresOf(system) });
  const previous = params.previous === undefined ? undefined : readPlacement(params.previous);
  const lane = `${params.uri} ${state} ${params.theme}`;
  const result = await place(picture, engine, { lane, ...(previous === undefined ? {} : { previous }) });
  if (result.kind === 'superseded') return overtaken;
  if (result.kind === 'refused') {
    return none(picture.nodes.length + picture.lines.length > largestLayout ? 'too-large' : 'failed', result.reason);
  }
  const { placed } = result;
  return {
    kind: 'drawn',
    circuit: state,
    ...(version === undefined ? {} : { version }),
    svg: svgOf(placed, { theme: params.theme === 'vscode' ? 'window' : params.theme }),
    title: picture.title,
    description: picture.description,
    parts: partsOf(picture, system, findings),
    views: viewsOf(reading),
    tally: {
      errors: findings.filter(({ severity }) => severity === 'error').length,
      warnings: findings.filter(({ severity }) => severity === 'warning').length,
      toMeasure: reading.toMeasure.length,
    },
    placement: placementText(placed.placement),
    ...(broken === undefined ? {} : { broken }),
  };
}

function none(reason: NoPicture['reason'], message: string): NoPicture {
  return { kind: 'none', reason, message };
}

function brokenPlace(document: LangiumDocument): BrokenPlace | undefined {
  const [first] = textProblems(document);
  if (first === undefined) return undefined;
  const range = rangeOf(first.origin, document.textDocument);
  return { message: first.message, location: { uri: document.uri.toString(), range } };
}

/** The circuits that there are to choose from. */
export function viewsOf({ found, planned }: FileReading): readonly CircuitView[] {
  return marksAnything(found, planned) ? ['planned', 'found'] : ['planned'];
}

/** Whether the two circuits differ by what is to be fitted or removed. */
function marksAnything(found: System, planned: System): boolean {
  const marked = (system: System): boolean =>
    [...system.partById.values(), ...system.portById.values(), ...system.joints].some(
      ({ presence }) => presence !== 'kept',
    );
  return marked(found) || marked(planned);
}

const stationOrder: Readonly<Record<PictureNode['station'], number>> = {
  actuation: 0,
  junction: 1,
  front: 2,
  rear: 3,
};

/** Actuation, junctions, wheels; each line behind the part that it leaves. */
function partsOf(picture: Picture, system: System, findings: readonly Finding[]): readonly PicturePart[] {
  const leaving = new Map<string, PictureLine[]>();
  for (const line of picture.lines) leaving.set(line.from.node, [...(leaving.get(line.from.node) ?? []), line]);
  const meeting = new Map<string, string[]>();
  for (const line of picture.lines) {
    for (const { node } of [line.from, line.to]) meeting.set(node, [...(meeting.get(node) ?? []), line.id]);
  }
  const kinds = new Map<string, string>(
    [...system.partById].map(([id, { kind }]) => [id, kindRow(kind).title.replace(/^an? /, '')]),
  );
  const byMessage = new Map(findings.map((finding) => [`${finding.code} ${finding.message}`, messageOf(finding)]));
  const told = (
    drawn: PictureNode | PictureLine,
    kind: PicturePart['kind'],
    joined: readonly string[],
  ): PicturePart => ({
    id: drawn.id,
    kind,
    trade: kinds.get(drawn.id) ?? ('symbol' in drawn ? drawn.symbol : drawn.kind).replaceAll('-', ' '),
    label: drawn.label,
    description: drawn.description,
    joined: [...new Set(joined)],
    findings: drawn.findings.map(({ code, severity, message }) => ({
      severity: severity === 'question' ? 'information' : severity,
      message: byMessage.get(`${code} ${message}`) ?? message,
    })),
  });
  const nodes = [...picture.nodes].sort((a, b) => stationOrder[a.station] - stationOrder[b.station]);
  return nodes.flatMap((node) => [
    told(node, 'part', meeting.get(node.id) ?? []),
    ...(leaving.get(node.id) ?? []).map((line) => told(line, 'line', [line.from.node, line.to.node])),
  ]);
}
