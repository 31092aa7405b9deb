/** The parts of a system as nodes of its picture. */
import { kindRow } from '../../system/kinds/index.ts';
import { type Part, type PortId, portIdOf } from '../../system/part.ts';
import type { System } from '../../system/system.ts';
import { wheelOf } from '../../system/wheels.ts';
import type { PictureDetail, PictureNode, PicturePort, Side, Station, SymbolName } from '../picture.ts';
import { portName } from './ends.ts';
import type { Findings } from './findings.ts';
import { notesOfPart } from './notes.ts';
import { isLine, symbolOf } from './symbol-of.ts';

export interface NodeContext {
  readonly system: System;
  readonly findings: Findings;
  /** Index of the circuit that reaches a port. */
  readonly circuitOf: (port: PortId) => number | undefined;
}

/** Every part that has a symbol of its own, in the order of the text; a reservoir comes before the master that holds it. */
export function nodesOf(context: NodeContext): readonly PictureNode[] {
  return context.system.parts
    .filter((part) => !isLine(part))
    .flatMap((part) => [
      ...part.parts.filter((inner) => symbolOf(inner) === 'reservoir').map((inner) => nodeOf(inner, context)),
      nodeOf(part, context),
    ]);
}

function nodeOf(part: Part, context: NodeContext): PictureNode {
  const symbol = symbolOf(part) ?? 'opaque-block';
  const inside = [part, ...descendants(part)];
  const notes = notesOfPart(part);
  const { side, station } = placeOf(part, symbol);
  return {
    id: part.id,
    symbol,
    label: part.name,
    notes,
    description: sentence(part, notes),
    side,
    station,
    ports: portsOf(part, inside, context),
    details: inside.slice(1).flatMap((inner) => detailOf(inner)),
    mark: part.presence,
    findings: context.findings.of(inside.map(({ id }) => id)),
  };
}

/** The sub-parts that the symbol of `part` shows; lines and reservoirs inside are drawn by themselves. */
function descendants(part: Part): readonly Part[] {
  return part.parts
    .filter((inner) => !isLine(inner) && symbolOf(inner) !== 'reservoir')
    .flatMap((inner) => [inner, ...descendants(inner)]);
}

function placeOf(part: Part, symbol: SymbolName): { readonly side: Side; readonly station: Station } {
  if (symbol === 'drum-brake' || symbol === 'disc-brake') {
    const { axle, side } = wheelOf(part);
    return { side: side ?? 'centre', station: axle ?? 'junction' };
  }
  return { side: 'centre', station: actuation.has(symbol) ? 'actuation' : 'junction' };
}

const actuation: ReadonlySet<SymbolName> = new Set([
  'pedal',
  'booster',
  'master-single',
  'master-tandem',
  'reservoir',
  'parking-brake',
]);

function sentence(part: Part, notes: readonly string[]): string {
  const title = kindRow(part.kind).title;
  const where = part.place === undefined ? '' : ` on ${part.place}`;
  const facts = notes.length === 0 ? '' : `: ${notes.join(', ')}`;
  return `${title.charAt(0).toUpperCase()}${title.slice(1)}${where}${facts}.`;
}

const detailKinds: Readonly<Record<string, PictureDetail['kind']>> = {
  cylinder: 'cylinder',
  caliper: 'caliper',
  bleeder: 'bleeder',
  'parking-lever': 'parking-brake',
  primary: 'chamber',
  secondary: 'chamber',
  compartment: 'compartment',
};

function detailOf(part: Part): readonly PictureDetail[] {
  const kind = detailKinds[part.kind];
  return kind === undefined ? [] : [{ id: part.id, kind, label: part.label }];
}

/** Ports of the part and all that its symbol shows, then the places where links without a joint hold on. */
function portsOf(part: Part, inside: readonly Part[], { system, circuitOf }: NodeContext): readonly PicturePort[] {
  const channels = channelsOf(part, circuitOf);
  return inside.flatMap((inner) => [
    ...feedPorts(inner, part, system),
    ...inner.ports.map((port): PicturePort => {
      const circuit = circuitOf(port.id);
      const channel = inner === part ? channels.get(port.name) : undefined;
      const isPlugged = port.connection.kind === 'threaded' && port.connection.plugged;
      return {
        id: portName(part, port.id),
        ...(circuit === undefined ? {} : { circuit }),
        ...(channel === undefined ? {} : { channel }),
        ...(isPlugged ? { plugged: true } : {}),
      };
    }),
  ]);
}

/** Where a reservoir without a hose holds on to a chamber, or a chamber to its reservoir. */
function feedPorts(inner: Part, owner: Part, { links }: System): readonly PicturePort[] {
  return links
    .filter(({ verb, from, to }) => verb === 'feeds' && (from === inner.id || to === inner.id))
    .map((link) => ({ id: feedPort(owner, link.from === inner.id ? link.from : link.to, link) }));
}

/** The name of such a place, the same from both sides. */
export const feedPort = (
  owner: Part,
  at: string,
  { from, to }: { readonly from: string; readonly to: string },
): string => `${portName(owner, at)}.feed ${from} ${to}`;

/** Ways through a part that do not mix, from the left in the order of their circuits. */
function channelsOf(part: Part, circuitOf: NodeContext['circuitOf']): ReadonlyMap<string, number> {
  if (part.paths.length < 2) return new Map();
  const circuitAt = (path: readonly string[]) =>
    Math.min(...path.map((name) => circuitOf(portIdOf(part.id, name)) ?? Number.MAX_SAFE_INTEGER));
  const ordered = part.paths.map((path, index) => ({ path, index, circuit: circuitAt(path) }));
  ordered.sort((a, b) => a.circuit - b.circuit || a.index - b.index);
  return new Map(ordered.flatMap(({ path }, channel) => path.map((name): [string, number] => [name, channel])));
}
