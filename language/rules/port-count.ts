/** port-count: a part with fewer or more ports than such parts have, or a valve of which the side of the master is not said. */
import { commonPractice } from '../standards/source.ts';
import { kindRow } from '../system/kinds/index.ts';
import type { PartKind } from '../system/kinds/kind-row.ts';
import type { Part } from '../system/part.ts';
import { allParts, type System } from '../system/system.ts';
import { drumBrake, oneCircuit, run, stockLine } from './example-parts.ts';
import { isLine } from './joints/meeting.ts';
import type { Remark, Rule } from './rule.ts';
import { counted, listed } from './wording.ts';

const joined = oneCircuit.replace('tee split { ports in, left, right:', 'cross split { ports in, left, right:');

const withValve = (ports: string, first: string, second: string) => `${stockLine}master main single {
  port out: 3/8-24 inverted-flare
}
proportioning-valve limiter { ports ${ports}: 3/8-24 inverted-flare }
${drumBrake('rear-left')}${run('feed', 'main.out', `limiter.${first}`)}${run('line', `limiter.${second}`, 'rear-left.cylinder.feed')}`;

export const portCount: Rule = {
  code: 'port-count',
  severity: 'warning',
  acceptable: true,
  question: 'Has each part the ports that such a part has?',
  why: 'A port that is not written cannot be seen to be open, and of a valve that does not say which side the pressure comes to nothing can be judged.',
  source: commonPractice('a tee joins three lines, a cross four, a union two; a valve has an inlet and an outlet'),
  fires: [
    { title: 'a cross with three ports', text: joined },
    { title: 'a union with three', text: joined.replace('cross split', 'union split') },
    {
      title: 'a valve that does not say which side the master is on: an error',
      text: withValve('a, b', 'a', 'b'),
    },
    {
      title: 'a valve in a block, and none of the lines goes to it: a question',
      text: joined.replace('cross split {', 'block split {\n  proportioning-valve limiter { slope 0.4 }\n '),
    },
  ],
  silent: [
    { title: 'a tee with three ports', text: oneCircuit },
    { title: 'a valve with in and out', text: withValve('in, out', 'in', 'out') },
    { title: 'a valve with two outlets', text: withValve('in, out-left, out-right', 'in', 'out-left') },
    {
      title: 'a residual valve inside the outlet of a master',
      text: oneCircuit.replace(
        'master main single {',
        'master main single {\n  residual-valve seat { holds 10 psi }\n ',
      ),
    },
    {
      title: 'ports that the stock says',
      text: oneCircuit.replace(
        'tee split { ports in, left, right: 3/8-24 inverted-flare }',
        'stock inch-tee tee { ports in, left, right: 3/8-24 inverted-flare }\ntee split of inch-tee',
      ),
    },
    {
      title: 'a tee with a bleed screw beside its three ports',
      text: oneCircuit.replace(
        'tee split {',
        'tee split {\n  bleeder {}\n  port bleed: 3/8-24 inverted-flare plugged\n ',
      ),
    },
    { title: 'parts on a shelf, of which the ports are not written yet', text: 'tee spare {}\n' },
  ],
  check: ({ system }) => {
    // Without a single joint it is a shelf of parts, not a circuit.
    if (system.joints.length === 0) return [];
    return allParts(system)
      .filter((part) => !isLine(part))
      .flatMap((part) => (kindRow(part.kind).fluid === 'valve' ? ofValve(part, system) : ofOther(part, system)));
  },
};

function ofValve(part: Part, system: System): readonly Remark[] {
  const names = part.ports.map(({ name }) => name);
  if (names.length === 0) return withoutPorts(part, system);
  if (names.includes('in') && names.length > 1) return [];
  const title = plainTitle(part.kind);
  const has = `${part.label} has ${names.length === 1 ? 'the port' : 'the ports'} ${listed(names)}`;
  const next = names.includes('in')
    ? 'Write the port that leads on, out.'
    : `Call the port of ${title} towards the master in, and the one that leads on out; two valves in one body are a block with a valve for each in it.`;
  const lack = names.includes('in') ? 'and no other' : 'and none that is called in';
  return [
    remark(
      part,
      'error',
      `${has}, ${lack}: which side the pressure comes to cannot be told, and what it does cannot be judged. ${next}`,
    ),
  ];
}

/** Inside a master it sits in the outlet; inside a block it must be said where. */
function withoutPorts(part: Part, system: System): readonly Remark[] {
  const holder = part.parent === undefined ? undefined : system.partById.get(part.parent);
  if (part.kind === 'booster' || (holder !== undefined && holder.kind !== 'block')) return [];
  const where =
    holder === undefined
      ? `${part.label} has no ports, so no line goes through it and it counts for nothing.`
      : `${part.label} has no ports of its own, so it is not known between which ports of ${holder.label} it sits, and it counts for nothing.`;
  return [remark(part, 'question', `${where} Give it the ports in and out, and lead the lines to those.`)];
}

function ofOther(part: Part, system: System): readonly Remark[] {
  const { ports, title } = kindRow(part.kind);
  const has = part.ports.length;
  const isUsed = part.ports.some(({ id }) => system.jointsAt.has(id));
  if (!isUsed) return [];
  const named = listed(part.ports.map(({ name }) => name));
  const what = `${part.label} has ${counted(has, 'port')}, ${named}, and ${title} has`;
  if (has < ports.least) {
    const next =
      has === 2
        ? 'Write the one that is missing, plugged if nothing goes there; what joins two lines only is a union.'
        : 'Write what is missing, plugged where nothing goes.';
    return [remark(part, 'warning', `${what} ${ports.least}: a port that is not written may stand open. ${next}`)];
  }
  const lines = part.ports.filter(({ name }) => !name.startsWith('bleed')).length;
  if (!countedKinds.has(part.kind) || lines <= ports.most) return [];
  return [
    remark(
      part,
      'warning',
      `${what} ${ports.most} at most. Look at it again; what joins more lines is a ${ports.most < 3 ? 'tee' : 'cross'} or a block.`,
    ),
  ];
}

/** The kinds that are called by how many lines they join. */
const countedKinds: ReadonlySet<PartKind> = new Set(['tee', 'wye', 'cross', 'union', 'bulkhead', 'adapter']);

const plainTitle = (kind: PartKind): string => kindRow(kind).title.replace(/^an? /, 'the ');

const remark = (part: Part, severity: NonNullable<Remark['severity']>, message: string): Remark => ({
  severity,
  message,
  origin: part.nameOrigin,
  subject: part.id,
});
