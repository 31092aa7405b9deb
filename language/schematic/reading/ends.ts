/** Where the ends of lines and joints come to lie: at a symbol, at a nut between two lines, or nowhere. */
import type { Joint } from '../../system/joint.ts';
import type { Part, PortId } from '../../system/part.ts';
import { outermost, partOf, type System } from '../../system/system.ts';
import type { LineEnd } from '../picture.ts';
import { isLine, symbolOf } from './symbol-of.ts';

/** A reservoir that belongs to a master is drawn by itself, above it; all else shows inside its outermost owner. */
export function ownerOf(system: System, part: Part): Part {
  for (
    let at: Part | undefined = part;
    at !== undefined;
    at = at.parent === undefined ? undefined : system.partById.get(at.parent)
  ) {
    if (symbolOf(at) === 'reservoir') return at;
  }
  return outermost(system, part);
}

/** The port of a part as the picture names it, below the symbol that shows it. */
export function endAtPort(system: System, port: PortId): LineEnd | undefined {
  const part = partOf(system, port);
  if (part === undefined || isLine(part)) return undefined;
  return { node: ownerOf(system, part).id, port: portName(ownerOf(system, part), port) };
}

export const portName = (owner: Part, path: string): string =>
  path.startsWith(`${owner.id}.`) ? path.slice(owner.id.length + 1) : path;

export type End =
  | { readonly kind: 'symbol'; readonly at: LineEnd }
  /** Another line's end, which a nut of its own shows; `nut` is the path of the port that gives it its name. */
  | { readonly kind: 'nut'; readonly nut: PortId; readonly at: LineEnd }
  | { readonly kind: 'open'; readonly at: LineEnd };

/** The end of a run or hose, by its port. */
export function endOfLine(system: System, own: PortId): End {
  const [joint] = system.jointsAt.get(own) ?? [];
  if (joint === undefined) return { kind: 'open', at: { node: own, port: 'end' } };
  const there = endAtPort(system, otherPort(joint, own));
  if (there !== undefined) return { kind: 'symbol', at: there };
  if (!system.portById.has(otherPort(joint, own))) return { kind: 'open', at: { node: own, port: 'end' } };
  return { kind: 'nut', nut: joint.b, at: { node: joint.b, port: own } };
}

const otherPort = ({ a, b }: Joint, own: PortId): PortId => (a === own ? b : a);
