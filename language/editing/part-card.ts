/** Tells a part or port: what it is, its facts, what reaches it, every figure with how it came about, what is wrong with it. */
import { explainFigure, type Figure, type Figures, sayFigure } from '../figures/index.ts';
import { writeStated } from '../quantity/index.ts';
import type { Finding, Judgement } from '../rules/index.ts';
import { kindRow } from '../system/kinds/index.ts';
import type { Fact, Part, PartId, Port } from '../system/part.ts';
import type { Presence } from '../system/presence.ts';
import type { PartRecord } from '../system/record.ts';
import type { System } from '../system/system.ts';
import { bendLines } from './bend-lines.ts';
import { type Card, type CardLine, capital, fact, text } from './card.ts';
import { connectionWords } from './connection-words.ts';

export interface Judged {
  readonly system: System;
  readonly figures: Figures;
  readonly judgement: Judgement;
}

export function partCard(part: Part, { system, figures, judgement }: Judged): Card {
  const row = kindRow(part.kind);
  const variant = part.variant === undefined ? '' : `, ${part.variant}`;
  return {
    title: `${part.label}: ${row.title}${variant}`,
    lines: [
      text(row.about),
      ...markLines(part.presence),
      ...(part.stock === undefined ? [] : [fact(`Made of stock ${part.stock}`)]),
      ...(part.place === undefined ? [] : [fact(`Rides on ${part.place}`)]),
      ...[...part.facts].map(([key, value]) => fact(`${key}: ${factWords(value)}`)),
      ...tubeLines(part),
      ...(part.kind === 'run' ? bendLines(part) : []),
      ...part.ports.map((port) =>
        fact(`${port.name}: ${connectionWords(port.connection)}${joinedWords(port, system)}`),
      ),
      ...reachLines(part, system),
      ...figures.of(part.id).flatMap(figureLines),
      ...part.parts.flatMap((inside) => innerFigures(inside, figures)),
      ...findingLines(part.id, judgement),
      ...part.records.map((record): CardLine => ({ kind: 'record', text: recordWords(record) })),
    ],
  };
}

export function portCard(port: Port, { system, judgement }: Judged): Card {
  const joined = joinedWords(port, system);
  return {
    title: `${port.id}: ${capital(connectionWords(port.connection))}`,
    lines: [
      ...markLines(port.presence),
      text(joined === '' ? 'Nothing is joined to it.' : `${capital(joined.replace(/^; /, ''))}.`),
      ...system.circuits
        .filter(({ ports }) => ports.has(port.id))
        .map(({ label }) => fact(`In the circuit of ${label}`)),
      ...findingLines(port.id, judgement),
    ],
  };
}

/** The figure with its account beneath it. */
export function figureLines(figure: Figure): readonly CardLine[] {
  const [head, ...rest] = explainFigure(figure);
  return [
    { kind: 'figure', text: head?.text ?? sayFigure(figure) },
    ...rest.map((line): CardLine => ({ kind: 'detail', text: line.text })),
  ];
}

/** What the rules say of the thing with this path or of anything inside it. */
export function findingLines(path: string, { findings, silenced }: Judgement): readonly CardLine[] {
  const isAbout = ({ subject, also }: Finding): boolean =>
    [subject, ...(also ?? [])].some((about) => about === path || about.startsWith(`${path}.`));
  return [
    ...findings.filter(isAbout).map((finding): CardLine => ({ kind: 'finding', text: finding.message })),
    ...silenced
      .filter(({ finding }) => isAbout(finding))
      .map(
        ({ finding, accept }): CardLine => ({
          kind: 'record',
          text: `${accept.date} accepted (${finding.code}): ${accept.reason}`,
        }),
      ),
  ];
}

export function factWords(value: Fact): string {
  switch (value.kind) {
    case 'measure':
      return value.stated.kind === 'unknown' ? 'not known, to be measured' : writeStated(value.stated);
    case 'word':
      return value.word;
    case 'text':
      return `“${value.text}”`;
    case 'date':
      return value.date;
  }
}

function innerFigures(part: Part, figures: Figures): readonly CardLine[] {
  const own = figures
    .of(part.id)
    .map((figure): CardLine => ({ kind: 'figure', text: `${part.name}: ${sayFigure(figure)}` }));
  return [...own, ...part.parts.flatMap((inside) => innerFigures(inside, figures))];
}

function markLines(presence: Presence): readonly CardLine[] {
  if (presence === 'kept') return [];
  return [text(presence === 'to-fit' ? 'Still to be fitted.' : 'To be removed.')];
}

function tubeLines({ tube }: Part): readonly CardLine[] {
  if (tube === undefined) return [];
  const wall = tube.wall === undefined ? '' : ` wall ${writeStated(tube.wall)}`;
  return [fact(`tube: ${writeStated(tube.diameter)}${wall}${tube.material === undefined ? '' : ` ${tube.material}`}`)];
}

function joinedWords(port: Port, system: System): string {
  const others = (system.jointsAt.get(port.id) ?? []).map(({ a, b }) => (a === port.id ? b : a));
  return others.length === 0 ? '' : `; joined to ${others.join(', ')}`;
}

function reachLines(part: Part, system: System): readonly CardLine[] {
  const within = new Set<PartId>([part.id, ...part.parts.map(({ id }) => id)]);
  return system.circuits.flatMap(({ label, reaches, chamber }) => {
    const reach = reaches.find(({ part: id }) => within.has(id));
    if (reach === undefined || within.has(chamber)) return [];
    const valves = reach.valves.length > 0 ? ` through ${reach.valves.join(', ')}` : '';
    const doubt = reach.doubtful ? ', if the unit between passes it on' : '';
    return [fact(`Pressed by ${label}${valves}${doubt}`)];
  });
}

function recordWords({ date, verb, work, note, number, bought, arrived }: PartRecord): string {
  const words = [
    `${date} ${verb}${work === undefined ? '' : ` ${work}`}`,
    note === undefined ? undefined : `“${note}”`,
    number === undefined ? undefined : `number ${number}`,
    bought === undefined ? undefined : `bought ${bought}`,
    arrived === undefined ? undefined : `arrived ${arrived}`,
  ];
  return words.filter((word) => word !== undefined).join(', ');
}
