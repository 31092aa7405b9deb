/** Opens a circuit file named on the command line, with the files it uses. */
import { existsSync, realpathSync } from 'node:fs';
import { dirname, extname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import {
  type FileReading,
  type Origin,
  readSingleFile,
  type Services,
  type TextHost,
  type TextProblem,
} from '../../language/index.ts';
import { spotsIn } from './places.ts';
import { plain } from './plain.ts';
import { readSourceText } from './source-text.ts';

/** A stretch of a file as a person names it. */
export interface Place {
  /** As it would be typed in the folder of the command, with forward slashes. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** As compilers write it, so that editors find it: `van.circuit:12:3`. */
export function where({ file, line, column }: Place): string {
  return `${plain(file)}:${line}:${column}`;
}

export interface CircuitFile {
  readonly kind: 'circuit';
  readonly file: string;
  readonly path: string;
  readonly reading: FileReading;
  readonly syntax: readonly TextProblem[];
  /** The files that it uses, as they would be typed. */
  readonly uses: readonly string[];
  placeOf(origin: Origin): Place;
}

/** What a person calls it: the vehicle, else the file. */
export function titleOf({ reading, file }: CircuitFile): string {
  const { vehicle } = reading.planned;
  return vehicle === undefined ? file : (vehicle.caption ?? vehicle.name);
}

export interface Unusable {
  readonly kind: 'unusable';
  readonly file: string;
  /** A sentence. */
  readonly reason: string;
}

export interface Opening {
  /** Where the command stands. */
  readonly folder: string;
  /** What other files may be used from; the usual is found from the file and the folder. */
  readonly workspace?: string;
  /** Shared between files, for they take a while to make. */
  readonly services?: Services;
}

/** Never throws. */
export function openCircuit(named: string, { folder, workspace, services }: Opening): CircuitFile | Unusable {
  const path = resolve(folder, named);
  const file = shown(path, folder);
  const source = readSourceText(path);
  if (source.kind === 'unusable') return { kind: 'unusable', file, reason: source.reason };
  if (extname(path) !== '.circuit') {
    return { kind: 'unusable', file, reason: 'A circuit file has a name that ends in .circuit.' };
  }
  const uri = pathToFileURL(path).href;
  const { reading, syntax, texts } = readSingleFile(
    { uri, text: source.text },
    hostFor(workspace ?? workspaceOf(path, folder)),
    services,
  );
  const uses = reading.uses.map((used) => shown(fileURLToPath(used), folder));
  return { kind: 'circuit', file, path, reading, syntax, uses, placeOf: placesIn(texts, folder) };
}

/**
 * Files may be used from the checkout that holds the circuit, else from the folder of the command where that holds it,
 * else from the folder of the circuit.
 */
function workspaceOf(path: string, folder: string): string {
  for (let above = dirname(path); ; above = dirname(above)) {
    if (existsSync(join(above, '.git'))) return above;
    if (dirname(above) === above) break;
  }
  return isInside(path, folder) ? folder : dirname(path);
}

function hostFor(workspace: string): TextHost {
  return {
    folders: [pathToFileURL(workspace).href],
    textOf: (uri, root) => {
      const used = fileURLToPath(uri);
      // A link inside the folder may lead out of it.
      const real = existsSync(used) ? realpathSync(used) : used;
      if (real !== used && !isInside(real, realpathSync(fileURLToPath(root)))) return { failure: 'outside' };
      const source = readSourceText(real);
      if (source.kind === 'unusable') return { failure: source.why };
      return extname(used) === '.circuit' ? source.text : { failure: 'unreadable' };
    },
  };
}

function isInside(path: string, folder: string): boolean {
  const way = relative(folder, path);
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

function placesIn(texts: ReadonlyMap<string, string>, folder: string): (origin: Origin) => Place {
  const spotsOf = new Map<string, ReturnType<typeof spotsIn>>();
  return ({ uri, start, end }) => {
    const spots = spotsOf.get(uri) ?? spotsIn(texts.get(uri) ?? '');
    spotsOf.set(uri, spots);
    const [from, to] = [spots(start), spots(end)];
    const file = shown(fileURLToPath(uri), folder);
    return { file, ...from, endLine: to.line, endColumn: to.column };
  };
}

/** The shorter of the two ways to name it. */
function shown(path: string, folder: string): string {
  const way = relative(folder, path);
  return (way === '' || way.startsWith(join('..', '..', '..')) || isAbsolute(way) ? path : way).split(sep).join('/');
}
