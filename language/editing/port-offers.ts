/** The ports that an end may join: those that are free and fit come first, and each says what speaks against it. */
import { isLine, meetingAt } from '../rules/joints/meeting.ts';
import { misfitOf } from '../rules/joints/misfit.ts';
import { type Part, type Port, type PortId, partIdOf, portIdOf } from '../system/part.ts';
import type { System } from '../system/system.ts';
import { connectionWords } from './connection-words.ts';
import type { Offer } from './offer.ts';

export interface PortWanted {
  /** The port that is to be joined, for instance the end of a run; undefined where it is not in the system. */
  readonly own: PortId | undefined;
  /** What is written already, up to the last dot: `rear-left.cylinder`; empty for nothing. */
  readonly base: string;
}

/** Offers below the base, as they go on from it; with nothing written, whole paths. */
export function portOffers({ own, base }: PortWanted, system: System): readonly Offer[] {
  const from = base === '' ? undefined : system.partById.get(partIdOf(base.split('.')));
  if (base !== '' && from === undefined) return [];
  const parts = (from === undefined ? system.parts : [from]).filter((part) => !isLine(part));
  return parts.flatMap((part) => portsWithin(part)).map((port) => portOffer(port, own, from?.id, system));
}

/** Every part and sub-part below the base by name, for relations and accepts. */
export function partOffers(base: string, system: System): readonly Offer[] {
  const from = base === '' ? undefined : system.partById.get(partIdOf(base.split('.')));
  if (base !== '' && from === undefined) return [];
  const inside = (from?.parts ?? system.parts).map(
    (part): Offer => ({ label: part.name, kind: 'part', detail: part.kind, rank: 4 }),
  );
  const ports = (from?.ports ?? []).map(
    (port): Offer => ({ label: port.name, kind: 'port', detail: connectionWords(port.connection), rank: 5 }),
  );
  return [...inside, ...ports];
}

const relatives: Readonly<Record<string, readonly string[]>> = {
  feeds: ['master', 'primary', 'secondary'],
  pushes: ['master', 'booster'],
  'acts-on': ['drum-brake', 'disc-brake', 'parking-lever', 'cable', 'equaliser'],
};

/** What can be fed, pushed or worked, by its whole path below the base. */
export function relationOffers(verb: string, base: string, system: System): readonly Offer[] {
  const head = base === '' ? '' : `${base}.`;
  return (
    [...system.partById.values()]
      .filter(({ id, kind }) => id.startsWith(head) && relatives[verb]?.includes(kind))
      // A tandem master is fed chamber by chamber.
      .filter(
        ({ kind, parts }) => verb !== 'feeds' || kind !== 'master' || !parts.some((part) => part.kind === 'primary'),
      )
      .map((part) => ({ label: part.id.slice(head.length), kind: 'part', detail: part.kind, rank: 2 }))
  );
}

/** The port with this path, or the only port of the part with this path. */
export function portNamed(path: string, system: System): PortId | undefined {
  const port = [...system.portById.keys()].find((id) => id === path);
  const [only, ...others] = system.partById.get(partIdOf(path.split('.')))?.ports ?? [];
  return port ?? (others.length === 0 ? only?.id : undefined);
}

function portOffer(port: Port, own: PortId | undefined, base: string | undefined, system: System): Offer {
  const label = base === undefined ? port.id : port.id.slice(base.length + 1);
  const words = connectionWords(port.connection);
  const taken = (system.jointsAt.get(port.id) ?? [])
    .map(({ a, b }) => (a === port.id ? b : a))
    .filter((id) => id !== own);
  const [first] = taken;
  if (first !== undefined) return { label, kind: 'port', detail: `taken by ${first}; ${words}`, rank: 8 };
  if (own === undefined) return { label, kind: 'port', detail: words, rank: 3 };
  const nowhere = { uri: system.uri, start: 0, end: 0 };
  const thought = { kind: 'end', a: own, b: port.id, presence: 'kept', origin: nowhere, statement: nowhere } as const;
  const meeting = meetingAt(thought, system);
  const misfit = meeting && misfitOf(meeting);
  if (misfit !== undefined)
    return { label, kind: 'port', detail: `does not fit: ${words}`, documentation: misfit.fault.message, rank: 6 };
  return { label, kind: 'port', detail: `fits: ${words}`, rank: 1 };
}

function portsWithin(part: Part): readonly Port[] {
  return [...part.ports, ...part.parts.filter((inside) => !isLine(inside)).flatMap(portsWithin)];
}

/** The port at one end of a run or hose. */
export function endOf(path: string | undefined, side: string, system: System): PortId | undefined {
  if (path === undefined) return undefined;
  const id = portIdOf(partIdOf(path.split('.')), side);
  return system.portById.has(id) ? id : undefined;
}
