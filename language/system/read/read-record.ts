/** Records, readings and accepts in the text → the model's. */
import type * as ast from '../../grammar/generated/ast.ts';
import type { Dimension } from '../../quantity/index.ts';
import { nearest } from '../nearest.ts';
import type { Accept, PartRecord, Reading } from '../record.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { readValue } from './read-value.ts';

/** What may be measured on the vehicle, by the word that names it. */
export const readingDimensions: Readonly<Record<string, Dimension>> = {
  'pedal-travel': 'length',
  'second-stroke': 'length',
  'pedal-drop': 'length',
  'pedal-height': 'length',
  'free-play': 'length',
  'line-pressure': 'pressure',
  drawn: 'volume',
};

/** Whether the text is a day, or a month, that the calendar has. */
export function isCalendarDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})(?:-(\d{2}))?$/.exec(text) ?? [];
  if (year === undefined || month === undefined || Number(month) < 1 || Number(month) > 12) return false;
  if (day === undefined) return true;
  const leap = (Number(year) % 4 === 0 && Number(year) % 100 !== 0) || Number(year) % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][Number(month) - 1] ?? 0;
  return Number(day) >= 1 && Number(day) <= days;
}

/** Notes a date that the calendar does not have, or that lacks its day where the day matters. */
export function checkDate(
  node: ast.Record | ast.Reading | ast.Accept | ast.Property,
  property: string,
  text: string | undefined,
  grain: 'day' | 'month',
  notes: ReadingNotes,
): void {
  if (text === undefined) return;
  const origin = originOfProperty(node, property);
  if (!isCalendarDate(text)) {
    notes.problems.push({
      code: 'bad-date',
      message: `${text} is not a date; write year-month-day, for instance 2026-03-02.`,
      origin,
    });
  } else if (grain === 'day' && text.length < 10) {
    notes.problems.push({ code: 'bad-date', message: `${text} lacks the day; write for instance ${text}-02.`, origin });
  }
}

export function readRecord(node: ast.Record, notes: ReadingNotes): PartRecord {
  checkDate(node, 'date', node.date, 'day', notes);
  checkDate(node, 'bought', node.bought, 'day', notes);
  checkDate(node, 'arrived', node.arrived, 'day', notes);
  return {
    date: node.date,
    verb: node.verb,
    work: node.action,
    note: node.note,
    number: node.number,
    bought: node.bought,
    arrived: node.arrived,
    origin: originOf(node),
  };
}

export function readReading(node: ast.Reading, part: string, notes: ReadingNotes): Reading | undefined {
  checkDate(node, 'date', node.date, 'day', notes);
  const dimension = readingDimensions[node.key];
  if (dimension === undefined) {
    const known = Object.keys(readingDimensions);
    const close = nearest(node.key, known);
    const origin = originOfProperty(node, 'key');
    notes.problems.push({
      code: 'unknown-word',
      message: `“${node.key}” is no reading known here; readings are ${known.join(', ')}.`,
      origin,
      mends: close.map((word) => ({ title: `Write ${word}`, edits: [{ ...origin, text: word }] })),
    });
    return undefined;
  }
  const owner = { part, fact: node.key };
  const stated = readValue(node.value, dimension, owner, notes);
  const push = readValue(node.push, 'force', { part, fact: `${node.key} push` }, notes);
  const after = readValue(node.time, 'time', { part, fact: `${node.key} time` }, notes);
  if (stated === undefined) return undefined;
  const origin = originOf(node);
  return {
    date: node.date,
    quantity: node.key,
    value: { kind: 'measure', dimension, stated, origin: originOf(node.value) },
    push: push && node.push && { kind: 'measure', dimension: 'force', stated: push, origin: originOf(node.push) },
    after: after && node.time && { kind: 'measure', dimension: 'time', stated: after, origin: originOf(node.time) },
    origin,
  };
}

/** An accept with its target as a path; undefined where the text breaks off before it says what it accepts. */
export function readAccept(node: ast.Accept, notes: ReadingNotes): Accept | undefined {
  checkDate(node, 'date', node.date, 'day', notes);
  if (node.rule === undefined || node.date === undefined || node.reason === undefined) return undefined;
  const path = node.target?.segments.map((segment) => segment.$refText).join('.');
  if (!node.circuit && path === undefined) return undefined;
  return {
    rule: node.rule,
    ruleOrigin: originOfProperty(node, 'rule'),
    target: path === undefined ? { kind: 'circuit' } : { kind: 'path', path },
    date: node.date,
    reason: node.reason,
    origin: originOf(node),
  };
}
