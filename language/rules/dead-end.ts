/** dead-end: an open port in a circuit, or a line that leads nowhere. */
import { commonPractice } from '../standards/source.ts';
import type { Part, Port } from '../system/part.ts';
import type { Mend } from '../system/problem.ts';
import { allParts, type FileReading, outermost, type System } from '../system/system.ts';
import { isLine } from './joints/meeting.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { plugMend } from './joints/plug.ts';
import type { Remark, Rule, RuleContext } from './rule.ts';
import { namesSomethingMissing } from './unresolved.ts';

const tee = (right: string): string => `stock line {
  tube 3/16 in steel
  nut 3/8-24
  flare double-45
}

master main single {
  bore 3/4 in
  port out: 3/8-24 inverted-flare
}

tee front {
  ports feed, left: 3/8-24 inverted-flare
  port right: 3/8-24 inverted-flare${right}
}

run feed of line { from main.out to front.feed }
run left of line { from front.left to left-brake.cylinder.feed }

drum-brake left-brake {
  cylinder {
    port feed: 3/8-24 inverted-flare
    bleeder {}
  }
}
`;

export const deadEnd: Rule = {
  code: 'dead-end',
  question: 'Does every port of the circuit lead somewhere, and every line at both ends?',
  why: 'An open port lets all the fluid of its circuit out at the first press of the pedal, and a line that leads nowhere leaves a brake without pressure.',
  severity: 'error',
  source: commonPractice('a circuit is closed: what is not joined is plugged'),
  acceptable: true,
  fires: [
    { title: 'a tee with an open port', text: tee('') },
    { title: 'a line that leads nowhere', text: `${tee(' plugged')}\nrun right of line { from main.out }\n` },
  ],
  silent: [
    { title: 'a plugged port', text: tee(' plugged') },
    {
      title: 'a port closed by a plug of its own',
      text: `${tee('')}\nplug front-plug { port shank: 3/8-24 male inverted-flare }\nscrew front-plug.shank into front.right\n`,
    },
    {
      title: 'a port that ends in a switch',
      text: `${tee('')}\npressure-switch stop-lamp { port thread: 3/8-24 male inverted-flare }\nscrew stop-lamp.thread into front.right\n`,
    },
  ],
  check: (context) => allParts(context.system).flatMap((part) => remarksOn(part, context)),
};

function remarksOn(part: Part, context: RuleContext): readonly Remark[] {
  const { reading, system } = context;
  const open = part.ports.filter((port) => isOpen(port, part, system) && !isMisnamed(port, part, reading));
  // A part that nothing is joined to at all is not in the circuit: that is another question.
  if (open.length === 0 || !isInUse(part, system)) return [];
  return open.map((port) => ({
    ...(isLine(part) ? lineRemark(part, port) : portRemark(part, port, context)),
    origin: placeOf(port, part, system),
    subject: port.id,
  }));
}

/** The port, or the name of the part where stock or a mirrored part says it, or no word is there. */
function placeOf(port: Port, part: Part, system: System): Remark['origin'] {
  const isUnsaid = port.origin.start === part.origin.start && port.origin.end === part.origin.end;
  return isUnsaid ? part.nameOrigin : placeOfFact(port.origin, outermost(system, part));
}

function lineRemark(part: Part, port: Port): Pick<Remark, 'message'> {
  const side = port.name === 'from' ? 'start' : 'end';
  return {
    message: `The ${side} of ${part.id} leads nowhere: write “${port.name}” and the port that it goes to.`,
  };
}

function portRemark(part: Part, port: Port, context: RuleContext): Pick<Remark, 'message' | 'mends'> {
  const mend: Mend | undefined = plugMend(part, port, context);
  return {
    message: `${port.id} is open: nothing is joined to it and it is not plugged, so the fluid runs out there. Join a line to it, or plug it.`,
    mends: mend ? [mend] : [],
  };
}

function isOpen(port: Port, part: Part, system: System): boolean {
  if ((system.jointsAt.get(port.id) ?? []).length > 0) return false;
  // Spigots on the reservoir's side of the seals are often left undrawn, and what closes a port needs nothing itself.
  if (!isLine(part) && port.connection.kind === 'barb') return false;
  if (port.connection.kind === 'threaded' && port.connection.plugged) return false;
  return !holdsBleeder(port, part, system);
}

/** `port bleed` in a part that has a bleeder, or in a brake that has one, is where the bleeder sits. */
function holdsBleeder(port: Port, part: Part, system: System): boolean {
  const holders = [part, outermost(system, part)];
  return port.name.startsWith('bleed') && holders.some(({ parts }) => parts.some(({ kind }) => kind === 'bleeder'));
}

function isInUse(part: Part, system: System): boolean {
  const isJoined = (one: Part): boolean =>
    one.ports.some((port) => system.jointsAt.has(port.id)) || one.parts.some(isJoined);
  return isJoined(outermost(system, part));
}

/** An end whose target is misspelt, or a port that a misspelt word most likely means, is spoken of already. */
function isMisnamed(port: Port, part: Part, reading: FileReading): boolean {
  if (isLine(part)) return namesSomethingMissing(part, reading);
  return reading.problems.some(
    ({ code, mends }) =>
      code === 'unknown-name' && (mends ?? []).some(({ edits }) => edits.some(({ text }) => text === port.name)),
  );
}
