/** A circuit file and the files it uses → its system as found and as planned, total on broken trees. */
import * as ast from '../../grammar/generated/ast.ts';
import { circuitsOf } from '../circuits.ts';
import type { Joint, Link } from '../joint.ts';
import type { Part, PartId, Port, PortId } from '../part.ts';
import { isPresent, type State } from '../presence.ts';
import type { Accept } from '../record.ts';
import type { FileReading, System, ToMeasure } from '../system.ts';
import type { FluidFill, Vehicle } from '../vehicle.ts';
import { type Draft, type DraftSources, draftOfMirror, draftOfPart } from './draft.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { jointOfScrew, jointsOfDraft } from './read-joints.ts';
import { distinctNames, readPart } from './read-part.ts';
import { readAccept } from './read-record.ts';
import { readFluid, readVehicle } from './read-vehicle.ts';
import type { Named } from './resolve.ts';
import { sourcesOf, type UsableFiles } from './uses.ts';

interface Everything {
  readonly uri: string;
  readonly vehicle: Vehicle | undefined;
  readonly fluids: readonly FluidFill[];
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly links: readonly Link[];
  readonly accepts: readonly Accept[];
}

/** Reads a file with what it uses. Never throws; what could not be read is among the problems. */
export function readFile(file: ast.File, uri: string, files: UsableFiles): FileReading {
  const notes: ReadingNotes = { problems: [], toMeasure: [] };
  const sources = sourcesOf(file, uri, files, notes);
  const vehicles = file.declarations.filter(ast.isVehicle);
  const [vehicleNode] = vehicles;
  const vehicle = vehicleNode && readVehicle(vehicleNode, notes);
  for (const extra of vehicles.slice(1)) {
    notes.problems.push({
      code: 'duplicate',
      message: 'A file describes one vehicle; move this one to a file of its own.',
      origin: originOf(extra),
    });
  }
  const drafts = draftsOf(file, sources, notes);
  const parts = distinctNames(partsOf(drafts, vehicle, notes), notes);
  const named = namesOf(parts, file);
  const joined = drafts.map((draft) => jointsOfDraft(draft, [], named, notes));
  const screws = file.declarations
    .filter(ast.isScrew)
    .map((screw) => jointOfScrew(screw, named, notes))
    .filter((joint) => joint !== undefined);
  const everything: Everything = {
    uri,
    vehicle,
    fluids: file.declarations
      .filter(ast.isFluid)
      .map((fluid) => readFluid(fluid, notes))
      .filter((fluid) => fluid !== undefined),
    parts,
    joints: [...joined.flatMap(({ joints }) => joints), ...screws],
    links: joined.flatMap(({ links }) => links),
    accepts: file.declarations
      .filter(ast.isAccept)
      .map((accept) => readAccept(accept, notes))
      .filter((accept) => accept !== undefined),
  };
  return {
    uri,
    found: systemIn('found', everything),
    planned: systemIn('planned', everything),
    problems: distinctProblems(notes),
    toMeasure: inOrderOfText(notes.toMeasure, uri),
    uses: sources.uses,
    stocks: file.declarations
      .filter(ast.isStock)
      .filter(({ name }) => name !== undefined)
      .map((stock) => ({ name: stock.name, origin: originOfProperty(stock, 'name') })),
  };
}

function draftsOf(
  file: ast.File,
  sources: DraftSources & { readonly used: readonly ast.Part[] },
  notes: ReadingNotes,
): readonly Draft[] {
  const drafts: Draft[] = sources.used.map((node) => withoutRecords(draftOfPart(node, sources)));
  for (const node of file.declarations) {
    if (ast.isPart(node) && node.kind !== undefined) drafts.push(draftOfPart(node, sources));
    if (ast.isMirror(node)) {
      const draft = draftOfMirror(node, sources);
      if (draft) drafts.push(draft);
      else if (node.source) {
        const message = `“${node.source.$refText}” is no part that can be mirrored: it is missing, or mirrors this one.`;
        notes.problems.push({ code: 'unknown-name', message, origin: originOfProperty(node, 'source') });
      }
    }
  }
  return drafts;
}

/** Another file's records speak of that file's vehicle, never of this one. */
function withoutRecords(draft: Draft): Draft {
  return {
    ...draft,
    statements: draft.statements.filter(({ node }) => !ast.isRecord(node) && !ast.isReading(node)),
    parts: draft.parts.map(withoutRecords),
  };
}

function partsOf(drafts: readonly Draft[], vehicle: Vehicle | undefined, notes: ReadingNotes): readonly Part[] {
  const places: ReadonlySet<string> = new Set(vehicle?.places.map((place) => place.name));
  const around = { whole: undefined, within: 'file', presence: 'kept', place: undefined, places } as const;
  return drafts.map((draft) => readPart(draft, around, notes)).filter((part) => part !== undefined);
}

function namesOf(parts: readonly Part[], file: ast.File): Named {
  const partById = new Map<PartId, Part>();
  for (const part of parts) addPart(part, partById);
  const imageOf = new Map<string, string>();
  for (const node of file.declarations.filter(ast.isMirror)) {
    if (node.source === undefined || node.name === undefined) continue;
    imageOf.set(node.source.$refText, node.name);
    imageOf.set(node.name, node.source.$refText);
  }
  return { partById, roots: new Map(parts.map((part) => [part.name, part])), imageOf };
}

function addPart(part: Part, partById: Map<PartId, Part>): void {
  partById.set(part.id, part);
  for (const inside of part.parts) addPart(inside, partById);
}

function systemIn(state: State, everything: Everything): System {
  const parts = everything.parts.filter((part) => isPresent(part.presence, state)).map((part) => partIn(state, part));
  const partById = new Map<PartId, Part>();
  for (const part of parts) addPart(part, partById);
  const portById = new Map<PortId, Port>();
  for (const part of partById.values()) for (const port of part.ports) portById.set(port.id, port);
  const joints = everything.joints.filter(
    (joint) => isPresent(joint.presence, state) && portById.has(joint.a) && portById.has(joint.b),
  );
  const jointsAt = new Map<PortId, Joint[]>();
  for (const joint of joints) {
    for (const port of [joint.a, joint.b]) {
      const list = jointsAt.get(port);
      if (list) list.push(joint);
      else jointsAt.set(port, [joint]);
    }
  }
  const links = everything.links.filter((link) => partById.has(link.from) && partById.has(link.to));
  const { circuits, graph } = circuitsOf([...partById.values()], joints);
  return { ...everything, state, parts, joints, links, partById, portById, jointsAt, circuits, graph };
}

function partIn(state: State, part: Part): Part {
  return {
    ...part,
    ports: part.ports.filter((port) => isPresent(port.presence, state)),
    parts: part.parts.filter((inside) => isPresent(inside.presence, state)).map((inside) => partIn(state, inside)),
  };
}

/** What this file asks to be measured, from its top down; then what it took from other files. */
function inOrderOfText(asked: readonly ToMeasure[], uri: string): readonly ToMeasure[] {
  const isOwn = ({ origin }: ToMeasure): boolean => origin.uri === uri || origin.uri === '';
  const own = asked.filter(isOwn).sort((a, b) => a.origin.start - b.origin.start);
  return [...own, ...asked.filter((each) => !isOwn(each))];
}

/** Stock is read once for every part made of it; what is wrong with it is said once. */
function distinctProblems(notes: ReadingNotes): FileReading['problems'] {
  const seen = new Set<string>();
  return notes.problems.filter(({ code, message, origin }) => {
    const key = `${code} ${origin.uri} ${origin.start} ${origin.end} ${origin.start === origin.end ? message : ''}`;
    return !seen.has(key) && seen.add(key);
  });
}
