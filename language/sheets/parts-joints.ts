/** Washers and rings for the joints that are made anew, and the banjo bolts that the file does not name. */
import { defaultUnitFor, type Si, writeQuantity } from '../quantity/index.ts';
import type { Thread } from '../standards/threads.ts';
import { banjoWashers } from '../standards/washers.ts';
import type { Threaded } from '../system/connection.ts';
import type { Joint } from '../system/joint.ts';
import type { Part, Port } from '../system/part.ts';
import type { System } from '../system/system.ts';
import type { NeededBy, PartsRow } from './parts-row.ts';

/** `isOpened` says whether work on a part opens its joints. */
export function jointRows(system: System, isOpened: (part: Part) => boolean): readonly PartsRow[] {
  const bolts = [...system.partById.values()].filter(({ kind }) => kind === 'banjo-bolt');
  return [
    ...bolts.flatMap((bolt) => boltRows(bolt, system, isOpened)),
    ...system.joints.flatMap((joint) => rowsAt(joint, system, isOpened)),
  ];
}

interface End {
  readonly part: Part;
  readonly port: Port;
}

/** The washers of a bolt with all its eyes, if anything at it is opened. */
function boltRows(bolt: Part, system: System, isOpened: (part: Part) => boolean): readonly PartsRow[] {
  const others = bolt.ports.flatMap(({ id }) =>
    (system.jointsAt.get(id) ?? []).flatMap((joint) => endAt(joint.a === id ? joint.b : joint.a, system) ?? []),
  );
  if (![bolt, ...others.map(({ part }) => part)].some(isOpened)) return [];
  const eyes = bolt.ports.filter(({ connection }) => isEye(connection)).length;
  const shank = bolt.ports.map(({ connection }) => connection).find(isShank);
  return [washers(banjoWashers(eyes), shank, bolt)];
}

const isEye = (connection: Port['connection']): boolean =>
  connection.kind === 'banjo' || (connection.kind === 'threaded' && connection.seat === 'banjo');

const isShank = (connection: Port['connection']): connection is Threaded =>
  connection.kind === 'threaded' && connection.seat !== 'banjo';

function rowsAt(joint: Joint, system: System, isOpened: (part: Part) => boolean): readonly PartsRow[] {
  const [a, b] = [endAt(joint.a, system), endAt(joint.b, system)];
  if (a === undefined || b === undefined || a.part.kind === 'banjo-bolt' || b.part.kind === 'banjo-bolt') return [];
  if (!isOpened(a.part) && !isOpened(b.part)) return [];
  return eyeRows(a, b) ?? eyeRows(b, a) ?? faceRows(a, b);
}

/** An eye straight on a port: the bolt between them is understood, and is bought if the eye is new. */
function eyeRows(eye: End, other: End): readonly PartsRow[] | undefined {
  if (eye.port.connection.kind !== 'banjo' || other.port.connection.kind !== 'threaded') return undefined;
  const thread = other.port.connection;
  return [
    {
      ...piece('unions, tees, adapters, plugs', `banjo bolt, ${threadWords(thread)}`, eye.part),
      ...lacking(thread, other),
    },
    { ...washers(banjoWashers(1), thread, eye.part), ...lacking(thread, other) },
  ];
}

function faceRows(a: End, b: End): readonly PartsRow[] {
  const [one, other] = [a.port.connection, b.port.connection];
  if (one.kind !== 'threaded' || other.kind !== 'threaded') return [];
  const seats = [one.seat, other.seat];
  const thread = one.thread.kind === 'known' ? one : other;
  if (seats.includes('washer')) return [{ ...washers(1, thread, a.part), ...lacking(thread, b) }];
  if (seats.includes('o-ring')) {
    return [
      {
        ...piece('washers and rings', `O-ring for ${threadWords(thread)}, made for the brake fluid`, a.part),
        ...lacking(thread, b),
      },
    ];
  }
  return [];
}

function washers(count: number, thread: Threaded | undefined, part: Part): PartsRow {
  const row = piece('washers and rings', `copper washer for ${threadWords(thread)}`, part);
  return { ...row, amount: { kind: 'pieces', count } };
}

function piece(group: PartsRow['group'], item: string, part: Part): PartsRow {
  const needed: NeededBy = { id: part.id, label: part.label };
  return {
    group,
    item,
    amount: { kind: 'pieces', count: 1 },
    neededBy: [needed],
    number: undefined,
    bought: undefined,
    arrived: undefined,
    measureFirst: [],
    putRightFirst: [],
    remarks: [],
  };
}

function lacking({ thread }: Threaded, { port }: End): Pick<PartsRow, 'measureFirst'> {
  return { measureFirst: thread.kind === 'known' ? [] : [`thread of ${port.id}`] };
}

function threadWords(connection: Threaded | undefined): string {
  const fact = connection?.thread;
  if (fact?.kind !== 'known') return 'a thread not known';
  return `${fact.thread.name} (hole ${diameterWords(fact.thread)})`;
}

/** In millimetres for metric threads, in thirty-seconds of an inch for the others. */
function diameterWords({ form, majorDiameter }: Thread): string {
  const family = form === 'metric' ? 'metric' : 'inch';
  return write(majorDiameter, family);
}

function write(size: Si<'length'>, family: 'metric' | 'inch'): string {
  const unit = defaultUnitFor('length', family);
  return writeQuantity(size, family === 'inch' ? { unit, precision: { fraction: 32 } } : { unit });
}

function endAt(id: Joint['a'], system: System): End | undefined {
  const port = system.portById.get(id);
  const part = port && system.partById.get(port.part);
  return port && part && { part, port };
}
