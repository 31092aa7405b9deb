/** How parts are asked for over the counter: what they are, by which measures, and which of those are not known yet. */
import { writeStated } from '../quantity/index.ts';
import { seats } from '../standards/seats.ts';
import type { Connection, ThreadFact } from '../system/connection.ts';
import { kindRow, type PartKind, properties as p } from '../system/kinds/index.ts';
import type { Fact, Part } from '../system/part.ts';

export interface Described {
  /** "wheel cylinder, bore 7/8 in, double-ended" */
  readonly words: string;
  /** What has to be measured before it is bought: "bore". */
  readonly measureFirst: readonly string[];
}

/** Measures and words that tell one part from another at the counter, in the order in which they are asked for. */
const telling: readonly { readonly key: string }[] = [
  p.bore,
  p.secondBore,
  p.diameter,
  p.width,
  p.thickness,
  p.length,
  p.expansion,
  p.rating,
  p.pistons,
  p.holds,
  p.splitPoint,
  p.slope,
  p.sensing,
  p.opensAt,
  p.fullAt,
  p.closesAt,
  p.crackingPressure,
  p.gain,
  p.boosterSite,
  p.capacity,
];

/** Without these a part cannot be ordered. */
const needed: Readonly<Partial<Record<PartKind, readonly { readonly key: string }[]>>> = {
  master: [p.bore],
  cylinder: [p.bore],
  caliper: [p.bore],
  'clutch-slave': [p.bore],
  hose: [p.length],
  drum: [p.diameter],
  disc: [p.diameter],
  cable: [p.length],
  'residual-valve': [p.holds],
};

/** "wheel cylinder": the kind without its article. */
const kindWords = ({ kind }: Pick<Part, 'kind'>): string => kindRow(kind).title.replace(/^(a|an) /, '');

/** The part with its ports. */
export function describe(part: Part): Described {
  const { words, measureFirst } = describeSizes(part);
  const ports = portsOf(part);
  const unknown = ports.filter(({ connection }) => lacksThread(connection)).map(({ name }) => `thread of ${name}`);
  const spoken = counted(ports.map(({ connection }) => connectionWords(connection)));
  return { words: [words, ...spoken].join(', '), measureFirst: [...measureFirst, ...unknown] };
}

/** The part by its measures alone, as a seal kit is asked for. */
export function describeSizes(part: Part): Described {
  const facts = telling.flatMap(({ key }) => {
    const fact = part.facts.get(key);
    const said = fact && factWords(fact);
    return said === undefined ? [] : [`${key} ${said}`];
  });
  const kind = [part.variant, kindWords(part)].filter((word) => word !== undefined).join(' ');
  return {
    words: [kind, ...facts, ...endsWords(part)].join(', '),
    measureFirst: (needed[part.kind] ?? []).map(({ key }) => key).filter((key) => isDoubtful(part.facts.get(key))),
  };
}

function factWords(fact: Fact): string | undefined {
  switch (fact.kind) {
    case 'measure':
      return fact.stated.kind === 'unknown' ? undefined : writeStated(fact.stated).replace(/^\? assume /, 'perhaps ');
    case 'word':
      return fact.word;
    case 'text':
      return `“${fact.text}”`;
    case 'date':
      return fact.date;
  }
}

function endsWords(part: Part): readonly string[] {
  const words = [p.ends, p.mounting].map((row) => part.facts.get(row.key));
  return words.flatMap((fact) => (fact?.kind === 'word' ? [fact.word.replace(/^(single|double)$/, '$1-ended')] : []));
}

/** Not stated, `?`, assumed, or only about right. */
function isDoubtful(fact: Fact | undefined): boolean {
  if (fact === undefined) return true;
  return fact.kind === 'measure' && ['unknown', 'assumed', 'about'].includes(fact.stated.kind);
}

/** Those of the part and of the chambers in it. */
function portsOf(part: Part): Part['ports'] {
  const chambers = part.parts.filter(({ kind }) => kind === 'primary' || kind === 'secondary');
  return [...part.ports, ...chambers.flatMap(({ ports }) => ports)];
}

const lacksThread = (connection: Connection): boolean =>
  connection.kind === 'threaded' && connection.thread.kind !== 'known';

/** "3/8-24 male washer", "banjo eye 10 mm". */
export function connectionWords(connection: Connection): string {
  switch (connection.kind) {
    case 'threaded': {
      const { thread, gender, seat, turning } = connection;
      const words = [threadName(thread), gender, seat && seats[seat].words.replace(/^(a|an) /, ''), turning];
      return words.filter((word) => word !== undefined).join(' ');
    }
    case 'banjo':
      return sized('banjo eye', connection.hole);
    case 'barb':
      return sized('spigot', connection.size);
    case 'tube-end':
      return `tube end with ${threadName(connection.nut)} nut`;
  }
}

const sized = (what: string, size: Extract<Connection, { kind: 'banjo' }>['hole']): string =>
  size === undefined || size.kind === 'unknown' ? what : `${what} ${writeStated(size)}`;

const threadName = (fact: ThreadFact): string => (fact.kind === 'known' ? fact.thread.name : 'thread not known');

/** "2 × 3/8-24 female": like ones counted, in the order in which they are first met. */
function counted(words: readonly string[]): readonly string[] {
  return [...new Set(words)].map((word) => {
    const count = words.filter((each) => each === word).length;
    return count === 1 ? word : `${count} × ${word}`;
  });
}
