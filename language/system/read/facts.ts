/** Properties in the text → facts, judged by the rows of the kind that may have them. */
import type { Property } from '../../grammar/generated/ast.ts';
import type { PropertyRow } from '../kinds/index.ts';
import { nearest } from '../nearest.ts';
import type { Fact } from '../part.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { checkDate } from './read-record.ts';
import { readValue } from './read-value.ts';

export interface FactsOf {
  /** As a person names the thing, for the measuring list. */
  readonly label: string;
  /** As a sentence names its kind: "a tee". */
  readonly title: string;
  readonly rows: readonly PropertyRow[];
}

/** The facts by key; unknown, doubled and ill-typed ones are problems and leave the rest alone. */
export function readFacts(nodes: readonly Property[], of: FactsOf, notes: ReadingNotes): ReadonlyMap<string, Fact> {
  const facts = new Map<string, Fact>();
  for (const node of nodes) {
    const row = of.rows.find((candidate) => candidate.key === node.key);
    if (row === undefined) noteUnknown(node, of, notes);
    else if (facts.has(node.key)) {
      const message = `${of.label} says ${node.key} twice; keep one of them.`;
      notes.problems.push({ code: 'duplicate', message, origin: originOf(node) });
    } else {
      const fact = readFact(node, row, of, notes);
      if (fact) facts.set(node.key, fact);
    }
  }
  return facts;
}

function readFact(node: Property, row: PropertyRow, of: FactsOf, notes: ReadingNotes): Fact | undefined {
  const origin = originOf(node);
  switch (row.value) {
    case 'measure': {
      if (node.value === undefined) {
        if (node.word !== undefined || node.text !== undefined || node.date !== undefined)
          noteWrongShape(node, row, notes);
        return undefined;
      }
      const stated = readValue(node.value, row.dimension, { part: of.label, fact: row.key }, notes);
      return stated && { kind: 'measure', dimension: row.dimension, stated, origin };
    }
    case 'word': {
      if (node.word !== undefined && row.words.includes(node.word)) return { kind: 'word', word: node.word, origin };
      if (node.value?.$type === 'Unknown' && node.value.assumed === undefined) {
        notes.toMeasure.push({ part: of.label, fact: row.key, assumed: false, origin: originOf(node.value) });
        return undefined;
      }
      noteWrongShape(node, row, notes);
      return undefined;
    }
    case 'text':
      if (node.text !== undefined) return { kind: 'text', text: node.text, origin };
      noteWrongShape(node, row, notes);
      return undefined;
    case 'date':
      if (node.date !== undefined) {
        checkDate(node, 'date', node.date, 'month', notes);
        return { kind: 'date', date: node.date, origin };
      }
      if (node.value?.$type === 'Unknown') {
        notes.toMeasure.push({ part: of.label, fact: row.key, assumed: false, origin: originOf(node.value) });
        return undefined;
      }
      noteWrongShape(node, row, notes);
      return undefined;
  }
}

function noteUnknown(node: Property, of: FactsOf, notes: ReadingNotes): void {
  const keys = of.rows.map((row) => row.key);
  const close = nearest(node.key, keys);
  const origin = originOfProperty(node, 'key');
  const hint =
    close.length > 0
      ? `did you mean ${close.join(' or ')}?`
      : keys.length > 0
        ? `it has ${keys.join(', ')}.`
        : 'it has none.';
  notes.problems.push({
    code: 'unknown-word',
    message: `“${node.key}” is not a fact of ${of.title}; ${hint}`,
    origin,
    mends: close.map((word) => ({ title: `Write ${word}`, edits: [{ ...origin, text: word }] })),
  });
}

function noteWrongShape(node: Property, row: PropertyRow, notes: ReadingNotes): void {
  const origin = originOf(node);
  if (row.value === 'word') {
    const wrong = node.word === undefined ? 'needs one of the words' : `“${node.word}” is not one of`;
    const close = node.word === undefined ? [] : nearest(node.word, row.words);
    const at = node.word === undefined ? origin : originOfProperty(node, 'word');
    notes.problems.push({
      code: 'unknown-word',
      message: `${row.key}: ${wrong} ${row.words.join(', ')}.`,
      origin: at,
      mends: close.map((word) => ({ title: `Write ${word}`, edits: [{ ...at, text: word }] })),
    });
    return;
  }
  const what = { measure: 'a quantity', text: 'a text in quotes', date: 'a date' }[row.value];
  notes.problems.push({
    code: 'quantity',
    message: `${row.key} takes ${what}, for instance ${row.key} ${row.example}.`,
    origin,
  });
}
