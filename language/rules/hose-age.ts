/** hose-age: a hose that was old already at the latest date in the file. */
import { hoseLife } from '../standards/hose-life.ts';
import { properties } from '../system/kinds/index.ts';
import type { Origin } from '../system/origin.ts';
import type { Part } from '../system/part.ts';
import { isCalendarDate } from '../system/read/read-record.ts';
import { allParts, type System } from '../system/system.ts';
import { workAhead } from '../system/work-ahead.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { latestDate } from './latest-date.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';
import { counted } from './wording.ts';

const hose = (dated: string, record: string) => `hose front {
  ${dated}
  ${record}
}
`;

export const hoseAge: Rule = {
  code: 'hose-age',
  severity: 'information',
  acceptable: true,
  question: 'Is any hose older than the trade leaves hoses on a vehicle?',
  why: 'An old hose cracks, or swells shut inside and holds its brake on. No standard limits the age; the maker’s schedule is the rule.',
  source: hoseLife.source,
  fires: [
    { title: 'a hose of fourteen years', text: hose('dated 2011-08', '2026-03-01 found "soft, no cracks"') },
    { title: 'a hose of just over six years', text: hose('dated 2020-02-10', '2026-03-01 clean') },
  ],
  silent: [
    { title: 'a hose of five years', text: hose('dated 2021-02', '2026-03-01 keep') },
    { title: 'an old hose that is to be replaced', text: hose('dated 2011-08', '2026-03-01 replace') },
    { title: 'a hose without a date', text: hose('', '2026-03-01 keep') },
    { title: 'a file without any other date: nothing tells how late it is', text: hose('dated 2011-08', '') },
    { title: 'a date that is still to be read', text: hose('dated ?', '2026-03-01 keep') },
  ],
  check: ({ system }) => {
    const latest = latestDate(system);
    if (latest === undefined) return [];
    return oncePerPlace(
      allParts(system)
        .filter(({ kind }) => kind === 'hose' || kind === 'feed-hose')
        .flatMap((part) => remarksOn(part, latest, system)),
    );
  },
};

/** The file's own latest date: it is at least that late, and the same text says the same on every day. */
function remarksOn(part: Part, latest: string, system: System): readonly Remark[] {
  const fact = part.facts.get(properties.dated.key);
  if (fact?.kind !== 'date' || !isCalendarDate(fact.date)) return [];
  if (workAhead(part, ofWhole(part, system)).kind === 'renew') return [];
  const years = fullYears(fact.date, latest);
  if (years === undefined || years < hoseLife.years) return [];
  const origin: Origin = placeOfFact(fact.origin, part);
  return [
    {
      message: `${part.label} is dated ${fact.date}: ${counted(years, 'year')} old at the latest date in this file, ${latest}. The trade renews hoses at about ${hoseLife.years} years, all together (common practice). Look for cracks, swelling and damp ends, and plan new ones.`,
      origin,
      subject: part.id,
    },
  ];
}

function ofWhole(part: Part, system: System): ReturnType<typeof workAhead> | undefined {
  const whole = part.parent === undefined ? undefined : system.partById.get(part.parent);
  return whole && workAhead(whole);
}

/** Whole years from one date to another, a month without its day taken at its end; undefined for what is no date. */
function fullYears(from: string, to: string): number | undefined {
  const [start, end] = [monthsOf(from, 31), monthsOf(to, 1)];
  return start === undefined || end === undefined ? undefined : Math.floor((end - start) / 12);
}

/** Months since year 0, the day as a part of a month. */
function monthsOf(date: string, usualDay: number): number | undefined {
  const [, year, month, day] = /^(\d{4})-(\d{2})(?:-(\d{2}))?$/.exec(date) ?? [];
  if (year === undefined || month === undefined) return undefined;
  return Number(year) * 12 + Number(month) - 1 + (day === undefined ? usualDay : Number(day)) / 32;
}
