/** banjo-washers: a banjo bolt with too few or too many washers at its eyes. */
import { banjoWashers, washerUse } from '../standards/washers.ts';
import { estimateFact, factOrigin } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part, Port } from '../system/part.ts';
import { replace } from '../system/problem.ts';
import { allParts } from '../system/system.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';
import { counted } from './wording.ts';

const bolt = (washers: string, eyes = 'port eye: banjo') => `banjo-bolt bolt {
  ${washers}
  port shank: M10x1 male washer
  ${eyes}
}
`;

export const banjoWashersRule: Rule = {
  code: 'banjo-washers',
  severity: 'error',
  acceptable: true,
  question: 'Has every banjo eye a washer on each side?',
  why: 'The washers are the seal. With one missing the eye leaks; with one doubled the bolt holds on too few turns and the stack gives.',
  source: washerUse.source,
  fires: [
    { title: 'one washer where two belong', text: bolt('washers 1') },
    { title: 'two eyes on one bolt with two washers', text: bolt('washers 2', 'ports lower, upper: banjo') },
    { title: 'a washer too many: a warning', text: bolt('washers 3') },
  ],
  silent: [
    { title: 'a washer on each side of the eye', text: bolt('washers 2') },
    { title: 'two eyes with three washers, one of them between', text: bolt('washers 3', 'ports lower, upper: banjo') },
    { title: 'washers of which nothing is said', text: bolt('') },
    { title: 'washers that are still to be counted', text: bolt('washers ?') },
  ],
  check: ({ system }) =>
    oncePerPlace(
      allParts(system)
        .filter(({ kind }) => kind === 'banjo-bolt')
        .flatMap(remarksOn),
    ),
};

function remarksOn(part: Part): readonly Remark[] {
  const stated = estimateFact(part, properties.washers);
  const fact = factOrigin(part, properties.washers);
  const eyes = part.ports.filter(isEye).length;
  const due = banjoWashers(eyes);
  if (stated === undefined || fact === undefined || due === 0) return [];
  if (stated.low <= due && due <= stated.high) return [];
  const few = stated.high < due;
  const origin = placeOfFact(fact, part);
  const what = `${part.label} clamps ${counted(eyes, 'eye')} with ${counted(stated.value, 'washer')}; it takes ${due}, one on each side of ${eyes === 1 ? 'the eye' : 'every eye, the one between two eyes counted once'}.`;
  const next = few ? 'Without a washer the eye leaks. ' : '';
  return [
    {
      severity: few ? 'error' : 'warning',
      message: `${what} ${next}Fit new ones of copper or aluminium each time.`,
      origin,
      subject: part.id,
      ...(origin === fact
        ? { mends: [{ title: `Write washers ${due}`, edits: [replace(fact, `washers ${due}`)] }] }
        : {}),
    },
  ];
}

const isEye = ({ connection }: Port): boolean =>
  connection.kind === 'banjo' || (connection.kind === 'threaded' && connection.seat === 'banjo');
