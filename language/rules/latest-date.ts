/** The latest day that a file itself speaks of as past: its records, readings, accepts and fillings. */
import type { Part } from '../system/part.ts';
import { isCalendarDate } from '../system/read/read-record.ts';
import { allParts, type System } from '../system/system.ts';

/** `2026-03-05`, `2026-03`; undefined for a file without dates. */
export function latestDate(system: System): string | undefined {
  const dates = [
    ...allParts(system).flatMap(datesOf),
    ...(system.vehicle?.readings ?? []).map(({ date }) => date),
    ...system.accepts.map(({ date }) => date),
    ...system.fluids.flatMap(({ filled }) => filled ?? []),
  ].filter(isCalendarDate);
  return dates.reduce<string | undefined>(
    (last, date) => (last !== undefined && last >= date ? last : date),
    undefined,
  );
}

function datesOf({ records, readings }: Part): readonly string[] {
  return [
    ...records.flatMap(({ date, bought, arrived }) => [date, bought, arrived].filter((each) => each !== undefined)),
    ...readings.map(({ date }) => date),
  ];
}
