/** worn-out: a drum, disc, lining or pad beyond the limit that is stamped or given for it. */

import { writtenOf } from '../figures/given.ts';
import { estimateOf, type Stated, writeStated } from '../quantity/index.ts';
import { commonPractice } from '../standards/source.ts';
import { factOrigin, measureOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { allParts, type System } from '../system/system.ts';
import { type WorkAhead, workAhead } from '../system/work-ahead.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';

const brake = (inside: string) => `drum-brake rear-left {\n  ${inside}\n}\n`;
const disc = (inside: string) => `disc-brake front-left {\n  ${inside}\n}\n`;

export const wornOut: Rule = {
  code: 'worn-out',
  severity: 'error',
  acceptable: true,
  question: 'Is every drum, disc, lining and pad within its limit?',
  why: 'A drum turned too far cracks or fades, so does a thin disc, and a piston that follows a worn lining too far leaves its bore.',
  source: commonPractice('the limit is stamped on the part or given by its maker; beyond it the part is renewed'),
  fires: [
    { title: 'a drum over its stamped maximum', text: brake('drum { diameter 10.070 in  max-diameter 10.060 in }') },
    {
      title: 'a lining under its least thickness',
      text: brake('linings { thickness 1.2 mm  least-thickness 1.6 mm }'),
    },
    { title: 'a thin disc', text: disc('disc { thickness 8.2 mm  least-thickness 8.6 mm }') },
  ],
  silent: [
    { title: 'a drum at its maximum', text: brake('drum { diameter 10.060 in  max-diameter 10.060 in }') },
    { title: 'a lining that is to be measured', text: brake('linings { thickness ?  least-thickness 1.6 mm }') },
    { title: 'limits that leave room', text: disc('disc { thickness 8.5 mm ± 0.2 mm  least-thickness 8.6 mm }') },
    {
      title: 'a disc that is to be replaced',
      text: disc('disc { thickness 8.2 mm  least-thickness 8.6 mm  2026-03-01 replace }'),
    },
  ],
  check: ({ system }) =>
    oncePerPlace(
      allParts(system).flatMap((part) => {
        if (isRenewed(part, system)) return [];
        return [...tooWide(part), ...tooThin(part)];
      }),
    ),
};

function isRenewed(part: Part, system: System): boolean {
  const whole = part.parent === undefined ? undefined : system.partById.get(part.parent);
  const ahead: WorkAhead = workAhead(part, whole && workAhead(whole));
  return ahead.kind === 'renew' && ahead.record !== undefined;
}

/** Certain only if the measured value lies beyond the limit whatever its own limits leave. */
function tooWide(part: Part): readonly Remark[] {
  const [measured, limit] = [measureOf(part, properties.diameter), measureOf(part, properties.maxDiameter)];
  const [is, most] = [measured && estimateOf(measured), limit && estimateOf(limit)];
  if (measured === undefined || limit === undefined || is === undefined || most === undefined) return [];
  return is.low > most.high + 1e-9
    ? [
        remark(
          part,
          properties.diameter,
          `is ${shown(measured)} across, more than the ${shown(limit)} that it may have at most`,
        ),
      ]
    : [];
}

function tooThin(part: Part): readonly Remark[] {
  const [measured, limit] = [measureOf(part, properties.thickness), measureOf(part, properties.leastThickness)];
  const [is, least] = [measured && estimateOf(measured), limit && estimateOf(limit)];
  if (measured === undefined || limit === undefined || is === undefined || least === undefined) return [];
  return is.high < least.low - 1e-9
    ? [
        remark(
          part,
          properties.thickness,
          `is ${shown(measured)} thick, less than the ${shown(limit)} that it must have at least`,
        ),
      ]
    : [];
}

function shown(stated: Stated<'length'>): string {
  return writtenOf(stated) === undefined ? 'not known' : writeStated(stated);
}

function remark(part: Part, row: { readonly key: string }, what: string): Remark {
  const fact = factOrigin(part, row);
  return {
    message: `${part.label} ${what}. Renew it, and the one on the other side with it, before the vehicle is driven.`,
    origin: fact === undefined ? part.nameOrigin : placeOfFact(fact, part),
    subject: part.id,
  };
}
