/** The measuring list: what the file leaves open, grouped as one walks round the vehicle, with how to find it out. */
import type { Figures } from '../figures/index.ts';
import { judge } from '../rules/index.ts';
import type { Finding } from '../rules/rule.ts';
import type { Origin } from '../system/origin.ts';
import { stateWords } from '../system/presence.ts';
import { allParts, type FileReading, type System } from '../system/system.ts';
import { cornerOf, cornerOfPart } from './measure-corners.ts';
import { howToMeasure } from './measure-how.ts';
import { labelOf, type MeasureItem, measureItems } from './measure-items.ts';
import { measureBeforeOrdering } from './parts.ts';
import { type Block, type Data, left, type Row, type Sheet } from './sheet.ts';

export interface MeasureOptions {
  /** What the rules say of the file in this state; its questions are on the sheet. */
  readonly findings: readonly Finding[];
}

/** Never throws. Without `findings` the rules are asked here. */
export function measureSheet(
  reading: FileReading,
  system: System,
  figures: Figures,
  options: Partial<MeasureOptions> = {},
): Sheet {
  const findings = options.findings ?? judge(reading, system.state).findings;
  const needs = needsBy(figures);
  const entries = measureItems(reading, system).map((item) => entryOf(item, system, needs));
  const questions = findings
    .filter(({ severity }) => severity === 'question')
    .map((finding) => ({ corner: cornerOfFinding(finding, system), ...finding }));
  const listed = new Set(entries.map(({ what }) => what));
  const beforeOrdering = measureBeforeOrdering(reading, system, figures).filter((what) => !listed.has(what));
  const corners = [...new Set([...entries, ...questions].map(({ corner }) => corner))];
  return {
    id: 'measure',
    title: 'Things to measure',
    subtitle: `${system.vehicle?.caption ?? system.vehicle?.name ?? 'Circuit'}, ${stateWords[system.state]}`,
    cautions,
    blocks: [
      introduction(entries.length + questions.length + beforeOrdering.length),
      ...corners.map(
        (corner): Block => ({
          kind: 'section',
          title: corner,
          blocks: [
            ...tableOf(entries.filter((each) => each.corner === corner)),
            ...questionsOf(questions.filter((each) => each.corner === corner)),
          ],
        }),
      ),
      ...orderingOf(beforeOrdering),
    ],
    data: dataOf(system, { entries, questions, beforeOrdering }),
    list: listOf(entries),
  };
}

const cautions: readonly string[] = [
  'Brakes can kill. This is an aid: local codes, the vehicle maker’s manual and licensed practice come first.',
  'Never work under a vehicle on a jack alone: stands on firm ground, wheels chocked.',
  'Old brake dust may hold asbestos: wet it, never blow it. Catch fluid that runs out; it burns the eyes and lifts paint.',
  'Cap every opening at once. Whatever was opened to be measured is bled, tested under pressure and looked at again.',
];

interface Entry {
  readonly corner: string;
  readonly item: MeasureItem;
  readonly what: string;
  readonly tool: string;
  readonly how: string;
  /** Titles of the figures that wait for it. */
  readonly neededFor: readonly string[];
}

function entryOf(item: MeasureItem, system: System, needs: Needs): Entry {
  const { owner, fact, origin, certainty } = item;
  const kind = owner.kind === 'part' ? owner.part.kind : owner.kind === 'place' ? 'place' : undefined;
  const { tool, how } = howToMeasure(fact, kind) ?? { tool: 'the maker’s manual', how: 'By the maker’s manual.' };
  return {
    corner: cornerOf(owner, system),
    item,
    what: owner.kind === 'fluid' ? `${fact} (${owner.label})` : `${fact} of ${labelOf(owner)}`,
    tool,
    how,
    neededFor: certainty === 'unknown' && owner.kind === 'part' ? needs(owner.part.id, origin) : [],
  };
}

type Needs = (part: string, origin: Origin) => readonly string[];

/** Which figures of a part, or of the whole, wait for what stands at a place in the text. */
function needsBy(figures: Figures): Needs {
  const waiting = figures.all.flatMap(({ subject, title, result }) =>
    (result.kind === 'unknown' ? result.waitsFor : result.leftOut).flatMap(({ origin }) =>
      origin ? [{ subject, title, origin }] : [],
    ),
  );
  return (part, origin) => [
    ...new Set(
      waiting.filter((each) => isOf(each.subject, part) && holds(each.origin, origin)).map(({ title }) => title),
    ),
  ];
}

const isOf = (subject: string, part: string): boolean =>
  subject === 'system' || subject === part || part.startsWith(`${subject}.`) || subject.startsWith(`${part}.`);

const holds = (outer: Origin, inner: Origin): boolean =>
  outer.uri === inner.uri && outer.start <= inner.start && inner.end <= outer.end;

function introduction(count: number): Block {
  if (count === 0) {
    return {
      kind: 'paragraph',
      text: 'Nothing is left to measure: the file has no “?”, nothing assumed or about right, and no open question.',
    };
  }
  const text =
    'What is “?” is not known, what is “assume” is computed with but not proved, what is “about” claims no limits. Measure twice, write the unit beside each reading, and put it in the file.';
  return { kind: 'paragraph', text };
}

const blank = '______________';

function tableOf(entries: readonly Entry[]): readonly Block[] {
  if (entries.length === 0) return [];
  const said = new Set<string>();
  const rows = entries.map(({ what, tool, how, item, neededFor }): Row => {
    const words = said.has(how) ? `${capital(tool)}, as above.` : `${capital(tool)}. ${how}`;
    said.add(how);
    const why = neededFor.length === 0 ? '' : ` Needed for: ${neededFor.slice(0, 3).join(', ')}.`;
    return { tick: 'open', cells: [what, item.said, `${words}${why}`, blank] };
  });
  return [
    {
      kind: 'table',
      columns: [left('what'), left('the file says'), left('how to find it out'), left('reading')],
      rows,
    },
  ];
}

interface Question extends Finding {
  readonly corner: string;
}

function questionsOf(questions: readonly Question[]): readonly Block[] {
  if (questions.length === 0) return [];
  return [
    {
      kind: 'list',
      items: questions.map(({ message }) => ({ tick: 'open', text: message, details: [`Answer: ${blank}`] })),
    },
  ];
}

/** What the file does not ask for, and the shop will. */
function orderingOf(facts: readonly string[]): readonly Block[] {
  if (facts.length === 0) return [];
  const items = facts.map((text) => ({ tick: 'open', text, details: [`Reading: ${blank}`] }) as const);
  return [{ kind: 'section', title: 'Before parts are ordered', blocks: [{ kind: 'list', items }] }];
}

function cornerOfFinding({ subject }: Finding, system: System): string {
  const part = allParts(system).find(({ id, ports }) => id === subject || ports.some((port) => port.id === subject));
  return part === undefined ? 'The circuit as a whole' : cornerOfPart(part, system);
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

interface Contents {
  readonly entries: readonly Entry[];
  readonly questions: readonly Question[];
  readonly beforeOrdering: readonly string[];
}

function dataOf(system: System, { entries, questions, beforeOrdering }: Contents): Data {
  return {
    state: system.state,
    toMeasure: entries.map(({ corner, item, tool, how, neededFor }) => ({
      where: corner,
      of: item.owner.kind === 'part' ? item.owner.part.id : item.owner.label,
      fact: item.fact,
      certainty: item.certainty,
      said: item.said,
      tool,
      how,
      neededFor: [...neededFor],
    })),
    beforeOrdering: [...beforeOrdering],
    questions: questions.map(({ corner, code, subject, message }) => ({ where: corner, code, subject, message })),
  };
}

function listOf(entries: readonly Entry[]): NonNullable<Sheet['list']> {
  return {
    columns: ['where', 'what', 'the file says', 'tool', 'how', 'reading'],
    rows: entries.map(({ corner, what, item, tool, how }) => [corner, what, item.said, tool, how, '']),
  };
}
