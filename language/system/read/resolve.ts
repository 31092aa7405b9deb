/** Finds what a reference names among the parts of a system, and says what is near when there is nothing of that name. */
import type * as ast from '../../grammar/generated/ast.ts';
import { nearest } from '../nearest.ts';
import type { Part, PartId, Port } from '../part.ts';
import { originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { otherSideName } from './sides.ts';

/** The parts by id, and who mirrors whom. */
export interface Named {
  readonly partById: ReadonlyMap<PartId, Part>;
  readonly roots: ReadonlyMap<string, Part>;
  /** Name of the mirror image of a top-level part. */
  readonly imageOf: ReadonlyMap<string, string>;
}

export type Target =
  | { readonly kind: 'part'; readonly part: Part }
  | { readonly kind: 'port'; readonly port: Port; readonly part: Part };

/** What the reference names; undefined, with a problem noted, where it names nothing. `mirrored` looks on the other side. */
export function resolve(
  reference: ast.Reference,
  mirrored: boolean,
  named: Named,
  notes: ReadingNotes,
): Target | undefined {
  const words = reference.segments.map((segment) => segment.$refText);
  const [first, ...rest] = words;
  if (first === undefined) return undefined;
  const rootName = mirrored ? imageOfRoot(first, named) : first;
  const root = named.roots.get(rootName);
  if (root === undefined) {
    noteUnknown(reference, 0, `There is no part called “${rootName}”`, [...named.roots.keys()], notes);
    return undefined;
  }
  let target: Target = { kind: 'part', part: root };
  for (const [index, word] of rest.entries()) {
    if (target.kind === 'port') {
      noteUnknown(
        reference,
        index + 1,
        `${target.part.label} ${target.port.name} is a port and holds nothing`,
        [],
        notes,
      );
      return undefined;
    }
    const inside: Target | undefined =
      (mirrored ? step(target.part, otherSideName(word)) : undefined) ?? step(target.part, word);
    if (inside === undefined) {
      const { part } = target;
      const names = [...part.ports.map((port) => port.name), ...part.parts.map((each) => each.name)];
      // `front-left.feed` for the port of its cylinder.
      const deeper = portsWithin(part).filter(({ name }) => name === word);
      const has = names.length > 0 ? `; it has ${names.join(', ')}` : '';
      noteUnknown(
        reference,
        index + 1,
        `${part.label} has no port or sub-part called “${word}”${has}`,
        names,
        notes,
        deeper.slice(0, 3).map((port) => port.id.slice(part.id.length + 1)),
      );
      return undefined;
    }
    target = inside;
  }
  return target;
}

/** The port that a reference names, or the only port of the part that it names. */
export function resolvePort(
  reference: ast.Reference,
  mirrored: boolean,
  named: Named,
  notes: ReadingNotes,
): Port | undefined {
  const target = resolve(reference, mirrored, named, notes);
  if (target === undefined) return undefined;
  if (target.kind === 'port') return target.port;
  const ports = portsWithin(target.part);
  const [only, ...others] = ports;
  if (only !== undefined && others.length === 0) return only;
  const path = reference.segments.map((segment) => segment.$refText).join('.');
  const shown = (port: Port): string => `${path}${port.id.slice(target.part.id.length)}`;
  notes.problems.push({
    code: 'unknown-name',
    message:
      ports.length === 0
        ? `${target.part.label} has no port to join; give it one, for instance “port feed: 3/8-24 inverted-flare”.`
        : `${target.part.label} has several ports; say which: ${ports.map(shown).join(', ')}.`,
    origin: originOfProperty(reference, 'segments', reference.segments.length - 1),
    mends: ports.slice(0, 4).map((port) => {
      const { $cstNode } = reference;
      const origin = originOfProperty(reference, 'segments', reference.segments.length - 1);
      return {
        title: `Write ${shown(port)}`,
        edits: [
          {
            uri: origin.uri,
            start: $cstNode?.offset ?? origin.start,
            end: $cstNode?.end ?? origin.end,
            text: shown(port),
          },
        ],
      };
    }),
  });
  return undefined;
}

function step(part: Part, word: string): Target | undefined {
  const port = part.ports.find((candidate) => candidate.name === word);
  if (port) return { kind: 'port', port, part };
  const inside = part.parts.find((candidate) => candidate.name === word);
  return inside && { kind: 'part', part: inside };
}

function portsWithin(part: Part): readonly Port[] {
  return [
    ...part.ports,
    ...part.parts.filter((inside) => inside.kind !== 'run' && inside.kind !== 'hose').flatMap(portsWithin),
  ];
}

function imageOfRoot(name: string, named: Named): string {
  const image = named.imageOf.get(name);
  if (image !== undefined) return image;
  const other = otherSideName(name);
  return named.roots.has(other) ? other : name;
}

function noteUnknown(
  reference: ast.Reference,
  index: number,
  what: string,
  known: readonly string[],
  notes: ReadingNotes,
  meant: readonly string[] = [],
): void {
  const origin = originOfProperty(reference, 'segments', index);
  const word = reference.segments[index]?.$refText ?? '';
  const close = meant.length > 0 ? meant : nearest(word, known);
  notes.problems.push({
    code: 'unknown-name',
    message: close.length > 0 ? `${what}. Did you mean ${close.join(' or ')}?` : `${what}.`,
    origin,
    mends: close.map((name) => ({ title: `Write ${name}`, edits: [{ ...origin, text: name }] })),
  });
}
