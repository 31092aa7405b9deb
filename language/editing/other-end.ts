/** Fills in the other end of a run or hose that is joined at one end: with a free port that fits. */
import { isLine, meetingAt } from '../rules/joints/meeting.ts';
import { misfitOf } from '../rules/joints/misfit.ts';
import type { Connection } from '../system/connection.ts';
import type { Joint } from '../system/joint.ts';
import type { Origin } from '../system/origin.ts';
import type { Part, Port } from '../system/part.ts';
import type { Edit, Mend } from '../system/problem.ts';
import { allParts, partOf, type System } from '../system/system.ts';

export interface OpenEnd {
  readonly port: Port['id'];
  /** Where the cursor may stand to be offered the mends: the name of the line, and what it says of the joined end. */
  readonly places: readonly Origin[];
  /** One for each port that it may go to, at most three. */
  readonly mends: readonly Mend[];
}

/** More choices than this are what completion is for. */
const mostPorts = 3;

/** The open ends of lines that this text declares and joins at the other end; `text` is that of the system's file. */
export function openEnds(system: System, text: string): readonly OpenEnd[] {
  return allParts(system)
    .filter(isLine)
    .flatMap((line): readonly OpenEnd[] => {
      const [open, ...others] = line.ports.filter(({ id }) => !system.jointsAt.has(id));
      const joined = line.ports.find(({ id }) => id !== open?.id);
      const [joint] = joined === undefined ? [] : (system.jointsAt.get(joined.id) ?? []);
      if (open === undefined || others.length > 0 || joint === undefined) return [];
      if (!isSaidIn(line, joint, system)) return [];
      const mends = portsFor(open, joint, system)
        .slice(0, mostPorts)
        .map(({ id }) => ({
          title: `Lead the other end of ${line.label} to ${id}`,
          edits: [leadTo(id, { line, open, joint, text })],
        }));
      return mends.length === 0 ? [] : [{ port: open.id, places: [line.nameOrigin, joint.statement], mends }];
    });
}

/** The joint is said in the line's own block, so that another statement can stand beside it. */
function isSaidIn({ origin }: Part, { statement }: Joint, { uri }: System): boolean {
  return origin.uri === uri && statement.uri === uri && origin.start < statement.start && statement.end < origin.end;
}

/** In the order of the text: free, known to fit, and neither a ring nor a bridge between two circuits. */
function portsFor(open: Port, joint: Joint, system: System): readonly Port[] {
  const from = partOf(system, joint.b);
  const isPressed = ({ id }: Pick<Port, 'id'>): boolean => system.circuits.some(({ ports }) => ports.has(id));
  const closesRing = isPressed({ id: joint.b });
  return [...system.portById.values()].filter((port) => {
    const part = partOf(system, port.id);
    if (part === undefined || isLine(part) || part.id === from?.id) return false;
    if (system.jointsAt.has(port.id) || !isWhole(port.connection) || !isWhole(open.connection)) return false;
    return !(closesRing && isPressed(port)) && fits(open, port, system);
  });
}

/** Enough is said to judge a joint: a guess is not offered. */
function isWhole(connection: Connection): boolean {
  switch (connection.kind) {
    case 'tube-end':
      return connection.nut.kind === 'known' && connection.flare !== undefined && connection.flare !== 'unknown';
    case 'threaded':
      return !connection.plugged && connection.thread.kind === 'known' && connection.seat !== undefined;
    case 'banjo':
    case 'barb':
      return false;
  }
}

function fits(open: Port, port: Port, system: System): boolean {
  const nowhere = { uri: system.uri, start: 0, end: 0 };
  const meeting = meetingAt(
    { kind: 'end', a: open.id, b: port.id, presence: 'kept', origin: nowhere, statement: nowhere },
    system,
  );
  return meeting !== undefined && meeting.kind !== 'unlike' && misfitOf(meeting) === undefined;
}

interface Unjoined {
  readonly line: Part;
  readonly open: Port;
  readonly joint: Joint;
  readonly text: string;
}

/** Into the statement that says what the open end looks like, else as a statement beside that of the joined end. */
function leadTo(port: Port['id'], { line, open, joint, text }: Unjoined): Edit {
  const { uri, start, end } = joint.statement;
  const { origin } = open;
  const isSaid = origin.uri === uri && line.origin.start < origin.start && origin.end < line.origin.end;
  if (isSaid) return { uri, start: origin.end, end: origin.end, text: ` ${port}` };
  const before = text.slice(text.lastIndexOf('\n', start - 1) + 1, start);
  const gap = before.trim() === '' ? `\n${before}` : '  ';
  const mark = joint.presence === 'to-fit' && line.presence === 'kept' ? 'to-fit ' : '';
  const statement = `${mark}${open.name} ${port}`;
  return open.name === 'from'
    ? { uri, start, end: start, text: `${statement}${gap}` }
    : { uri, start: end, end, text: `${gap}${statement}` };
}
