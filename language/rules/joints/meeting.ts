/** What meets at a joint, sorted by how such a joint is made tight, and how to speak of its two sides. */
import type { BanjoEye, Connection, Threaded, TubeEnd } from '../../system/connection.ts';
import type { Joint } from '../../system/joint.ts';
import { kindRow } from '../../system/kinds/index.ts';
import type { Part, Port } from '../../system/part.ts';
import { partOf, type System } from '../../system/system.ts';

export interface Side<C extends Connection = Connection> {
  readonly part: Part;
  readonly port: Port;
  readonly connection: C;
}

export type Meeting = { readonly joint: Joint } & (
  | { readonly kind: 'tube'; readonly tube: Side<TubeEnd>; readonly port: Side<Threaded> }
  | { readonly kind: 'threads'; readonly first: Side<Threaded>; readonly second: Side<Threaded> }
  | { readonly kind: 'eye'; readonly eye: Side<BanjoEye>; readonly port: Side<Threaded> }
  | { readonly kind: 'unlike'; readonly first: Side; readonly second: Side }
);

/** All joints of the system with what meets at them. */
export function meetingsIn(system: System): readonly Meeting[] {
  return system.joints.map((joint) => meetingAt(joint, system)).filter((meeting) => meeting !== undefined);
}

/** What meets at a joint, also at one that is only thought of; undefined where a port is not in the system. */
export function meetingAt(joint: Joint, system: System): Meeting | undefined {
  const first = sideAt(joint.a, system);
  const second = sideAt(joint.b, system);
  if (first === undefined || second === undefined) return undefined;
  return { joint, ...(typed(first, second) ?? typed(second, first) ?? { kind: 'unlike', first, second }) };
}

type Typed = Meeting extends infer M ? (M extends Meeting ? Omit<M, 'joint'> : never) : never;

function typed(first: Side, second: Side): Typed | undefined {
  const [a, b] = [first.connection, second.connection];
  if (b.kind !== 'threaded') return undefined;
  const port = { ...second, connection: b };
  switch (a.kind) {
    case 'tube-end':
      return { kind: 'tube', tube: { ...first, connection: a }, port };
    case 'threaded':
      return { kind: 'threads', first: { ...first, connection: a }, second: port };
    case 'banjo':
      return { kind: 'eye', eye: { ...first, connection: a }, port };
    case 'barb':
      return undefined;
  }
}

function sideAt(id: Joint['a'], system: System): Side | undefined {
  const port = system.portById.get(id);
  const part = partOf(system, id);
  return port && part && { port, part, connection: port.connection };
}

/** Both sides of the joint. */
export function sidesOf(meeting: Meeting): readonly [Side, Side] {
  switch (meeting.kind) {
    case 'tube':
      return [meeting.tube, meeting.port];
    case 'eye':
      return [meeting.eye, meeting.port];
    case 'threads':
    case 'unlike':
      return [meeting.first, meeting.second];
  }
}

/** Whether the part is a run or a hose, whose ports are its two ends. */
export const isLine = (part: Part): boolean => kindRow(part.kind).symbol === 'line';

/** "the end of rear-hose at front-tee.left" for the end of a line, the path for a port in a part. */
export function nameOf(side: Side, other: Side): string {
  return isLine(side.part) ? `the end of ${side.part.id} at ${other.port.id}` : side.port.id;
}
