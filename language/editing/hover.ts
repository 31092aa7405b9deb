/** What is told about a place in the text, in the state that is asked for. */

import { saySource } from '../figures/explain.ts';
import { dimensionExamples, dimensionWords } from '../quantity/index.ts';
import { ruleOf } from '../rules/index.ts';
import type { Standing } from '../scoping/standing.ts';
import {
  findKind,
  fluidProperties,
  loadProperties,
  type PropertyRow,
  vehicleProperties,
} from '../system/kinds/index.ts';
import { partIdOf, portIdOf } from '../system/part.ts';
import { stateWords } from '../system/presence.ts';
import { readingDimensions } from '../system/read/read-record.ts';
import { type Card, capital, fact, text } from './card.ts';
import { factWords, figureLines, findingLines, type Judged, partCard, portCard } from './part-card.ts';
import { quantityCard, threadCard } from './quantity-card.ts';
import { meaningOf } from './word-meanings.ts';

export interface HoverStates {
  /** The state that is asked for. */
  readonly shown: Judged;
  /** The other one, for what is in it alone. */
  readonly other: Judged;
}

/** Undefined where there is nothing to tell. */
export function cardAt(standing: Standing, states: HoverStates): Card | undefined {
  switch (standing.kind) {
    case 'path':
      return pathCard(standing.path, states);
    case 'stock':
      return stockCard(standing, states.shown);
    case 'place':
      return placeCard(standing.name, states.shown);
    case 'vehicle':
      return vehicleCard(states.shown);
    case 'fact':
      return factCard(standing, states);
    case 'reading': {
      const dimension = readingDimensions[standing.key];
      if (dimension === undefined) return undefined;
      return { title: standing.key, lines: [text(`A reading taken on the vehicle: ${dimensionWords[dimension]}.`)] };
    }
    case 'quantity':
      return quantityCard(standing.quantity);
    case 'unknown':
      return {
        title: '?',
        lines: [text('Not known yet: it stands on the measuring list, and what needs it waits for it.')],
      };
    case 'thread':
      return threadCard(standing.text);
    case 'rule':
      return ruleCard(standing.code);
    case 'word': {
      const row = findKind(standing.word);
      if (row !== undefined && standing.list === 'grammar')
        return { title: capital(row.title), lines: [text(row.about)] };
      const meaning = meaningOf(standing.word, standing.list);
      return meaning === undefined ? undefined : { title: standing.word, lines: [text(meaning)] };
    }
  }
}

/** A part or port by its path, with a word where it is not in the state that is asked for. */
function pathCard(path: string, { shown, other }: HoverStates): Card | undefined {
  const here = cardOfPath(path, shown);
  if (here !== undefined) return here;
  const there = cardOfPath(path, other);
  if (there === undefined) return undefined;
  const only = text(`Only in the circuit ${stateWords[other.system.state]}.`);
  return { ...there, lines: [only, ...there.lines] };
}

function cardOfPath(path: string, judged: Judged): Card | undefined {
  const words = path.split('.');
  const part = judged.system.partById.get(partIdOf(words));
  if (part !== undefined) return partCard(part, judged);
  const port = judged.system.portById.get(portIdOf(partIdOf(words.slice(0, -1)), words.at(-1) ?? ''));
  return port && portCard(port, judged);
}

function stockCard({ name, of }: { readonly name: string; readonly of: string }, { system }: Judged): Card {
  const users = [...system.partById.values()].filter(({ stock }) => stock === name).map(({ label }) => label);
  const used = users.length === 0 ? 'No part is made of it.' : `${users.length} made of it: ${users.join(', ')}.`;
  const row = findKind(of);
  return {
    title: `Stock ${name}`,
    lines: [text(`What is said here holds for every part made of it${row ? `: ${row.title}` : ''}.`), text(used)],
  };
}

function placeCard(name: string, { system }: Judged): Card | undefined {
  const place = system.vehicle?.places.find((candidate) => candidate.name === name);
  if (place === undefined) return undefined;
  const riders = system.parts.filter((part) => part.place === name).map(({ label }) => label);
  return {
    title: `Place ${name}: ${place.motion}${place.parent === undefined ? '' : ` on ${place.parent}`}`,
    lines: [
      text(meaningOf(place.motion, 'grammar') ?? ''),
      ...(place.travel === undefined
        ? []
        : [
            fact(
              `travel: ${factWords({ kind: 'measure', dimension: 'length', stated: place.travel, origin: place.origin })}`,
            ),
          ]),
      text(riders.length === 0 ? 'Nothing rides on it.' : `On it: ${riders.join(', ')}.`),
    ],
  };
}

function vehicleCard({ system, figures, judgement }: Judged): Card | undefined {
  const { vehicle } = system;
  if (vehicle === undefined) return undefined;
  return {
    title: vehicle.caption ?? vehicle.name,
    lines: [
      text(`The circuit ${stateWords[system.state]}: ${system.partById.size} parts with their sub-parts.`),
      ...system.circuits.map(({ label, reaches }) => fact(`Circuit of ${label}: ${reaches.length} parts`)),
      ...figures.of('system').flatMap(figureLines),
      ...findingLines('circuit', judgement),
    ],
  };
}

function factCard(standing: Extract<Standing, { kind: 'fact' }>, { shown, other }: HoverStates): Card | undefined {
  const { key, owner, path } = standing;
  const id = path === undefined ? undefined : partIdOf(path.split('.'));
  const part = id === undefined ? undefined : (shown.system.partById.get(id) ?? other.system.partById.get(id));
  const row = rowsOf(part?.kind ?? owner).find((candidate) => candidate.key === key);
  if (row === undefined) return undefined;
  const value = part?.facts.get(key);
  return {
    title: `${key}: ${row.meaning}`,
    lines: [text(takes(row)), ...(value === undefined ? [] : [fact(`Here: ${factWords(value)}`)])],
  };
}

function rowsOf(owner: string): readonly PropertyRow[] {
  switch (owner) {
    case 'vehicle':
      return vehicleProperties;
    case 'load':
      return loadProperties;
    case 'fluid':
      return fluidProperties;
    default:
      return findKind(owner)?.properties ?? [];
  }
}

function takes(row: PropertyRow): string {
  switch (row.value) {
    case 'measure':
      return `Takes ${dimensionWords[row.dimension]}, for instance ${row.key} ${row.example ?? dimensionExamples[row.dimension]}.`;
    case 'word':
      return `One of ${row.words.join(', ')}.`;
    case 'text':
      return `Takes a text in quotes, for instance ${row.key} ${row.example}.`;
    case 'date':
      return `Takes a date, for instance ${row.key} ${row.example}.`;
  }
}

function ruleCard(code: string): Card | undefined {
  const rule = ruleOf(code);
  return rule && { title: rule.question, lines: [text(rule.why), text(saySource(rule.source))] };
}
