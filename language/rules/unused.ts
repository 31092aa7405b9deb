/** unused: a part that is joined to nothing, stock that nothing is made of. */
import { commonPractice } from '../standards/source.ts';
import type { Part } from '../system/part.ts';
import type { FileReading, System } from '../system/system.ts';
import { within } from '../system/wheel-brakes.ts';
import { oneCircuit } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { isMeantByMisspelling, namesSomethingMissing } from './unresolved.ts';

export const unused: Rule = {
  code: 'unused',
  severity: 'warning',
  acceptable: true,
  question: 'Is every part joined to something?',
  why: 'A part that is joined to nothing is either left over from a change, or the line that it belongs in is missing.',
  source: commonPractice('a circuit is drawn with the parts that are in it'),
  fires: [
    { title: 'a tee that no line goes to', text: `${oneCircuit}tee spare { ports a, b, c: 3/8-24 inverted-flare }\n` },
    {
      title: 'stock that no part is made of: information',
      text: `${oneCircuit}stock short-hose hose { length 10 in }\n`,
    },
  ],
  silent: [
    { title: 'parts that are all joined', text: oneCircuit },
    { title: 'a file of stock', text: 'stock line { tube 3/16 in  nut 3/8-24  flare double-45 }\n' },
    { title: 'a file of parts for others to use', text: 'tee spare { ports a, b, c: 3/8-24 inverted-flare }\n' },
  ],
  check: ({ reading, system }) => [...leftOver(system, reading), ...stockOfNothing(reading)],
};

function leftOver(system: System, reading: FileReading): readonly Remark[] {
  // Without a single joint it is a shelf of parts, not a circuit.
  if (system.joints.length === 0) return [];
  const linked = new Set(system.links.flatMap(({ from, to }) => [from, to]));
  return system.parts
    .filter(({ kind }) => kind !== 'drum-brake' && kind !== 'disc-brake')
    .filter((part) => isLeftOver(part, system, linked))
    .filter((part) => !namesSomethingMissing(part, reading) && !isMeantByMisspelling(part, reading))
    .map((part) => {
      const lines = part.kind === 'run' || part.kind === 'hose' || part.kind === 'feed-hose';
      const what = lines ? 'leads from nothing to nothing' : 'is joined to nothing';
      const otherwise = part.presence === 'kept' ? ', mark it to-remove if it comes off,' : '';
      return {
        message: `${part.label} ${what}. Join it${otherwise} or take it out of the file.`,
        origin: part.nameOrigin,
        subject: part.id,
        unused: true as const,
      };
    });
}

function isLeftOver(part: Part, system: System, linked: ReadonlySet<string>): boolean {
  const all = within(part);
  const ports = all.flatMap((inside) => inside.ports);
  const hasLink = all.some(({ id }) => linked.has(id));
  return ports.length > 0 && !hasLink && ports.every(({ id }) => !system.jointsAt.has(id));
}

function stockOfNothing({ found, planned, stocks }: FileReading): readonly Remark[] {
  const parts = [found, planned].flatMap(({ partById }) => [...partById.values()]);
  if (parts.length === 0) return [];
  const taken = new Set(parts.map(({ stock }) => stock));
  return stocks
    .filter(({ name }) => !taken.has(name))
    .map(({ name, origin }) => ({
      severity: 'information' as const,
      message: `Nothing in this file is made of the stock ${name}. Take it out, or keep it in a file of stock.`,
      origin,
      subject: 'circuit',
      unused: true as const,
    }));
}
