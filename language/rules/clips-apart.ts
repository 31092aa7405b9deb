/** clips-apart: a line held at places that are too far apart. */
import { writtenOf } from '../figures/given.ts';
import type { Figures } from '../figures/index.ts';
import {
  type Estimate,
  estimateOf,
  exactly,
  type Stated,
  si,
  type WrittenUnit,
  writeEstimate,
  writeQuantity,
} from '../quantity/index.ts';
import { clipSpacing } from '../standards/clip-spacing.ts';
import type { Part } from '../system/part.ts';
import { allParts } from '../system/system.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';
import { written } from './wording.ts';

const clipped = (clip: string) => `run line {
  tube 3/16 in
  length 1200 mm
  clip ${clip}
}
`;

export const clipsApart: Rule = {
  code: 'clips-apart',
  severity: 'information',
  acceptable: true,
  question: 'Is the line held often enough?',
  why: 'A line that hangs free shakes, chafes through where it touches and cracks at its nuts.',
  source: clipSpacing.source,
  fires: [
    { title: 'a clip every 600 mm', text: clipped('every 600 mm') },
    { title: 'a long stretch between two clips', text: clipped('at 200 mm, 400 mm, 1000 mm') },
    { title: 'a long stretch behind the last clip', text: clipped('at 300 mm, 600 mm') },
    { title: 'a clip beyond the end of the line: a warning', text: clipped('at 400 mm, 800 mm, 1400 mm') },
  ],
  silent: [
    { title: 'a clip every 450 mm', text: clipped('every 450 mm') },
    { title: 'clips at even places', text: clipped('at 400 mm, 800 mm') },
    { title: 'spacing of which nothing is said', text: 'run line { tube 3/16 in  length 1200 mm }\n' },
    {
      title: 'a spacing above what the line is long',
      text: 'run line { tube 3/16 in  length 300 mm  clip every 600 mm }\n',
    },
  ],
  check: ({ system, figures }) => oncePerPlace(allParts(system).flatMap((run) => remarksOn(run, figures))),
};

function remarksOn(run: Part, figures: Figures): readonly Remark[] {
  if (run.clip === undefined) return [];
  return run.clip.kind === 'every'
    ? everyRemarks(run, run.clip.spacing, figures)
    : atRemarks(run, run.clip.positions, lengthOf(run, figures));
}

function everyRemarks(run: Part, stated: Stated<'length'>, figures: Figures): readonly Remark[] {
  const [spacing, like] = [estimateOf(stated), writtenOf(stated)];
  if (spacing === undefined || like === undefined || !(spacing.low > clipSpacing.farthest + 1e-4)) return [];
  const length = lengthOf(run, figures);
  if (length !== undefined && length.high <= clipSpacing.farthest) return [];
  return [tooFar(run, `The clips of ${run.label} are ${writeEstimate(spacing, { like })} apart`, spacing, like)];
}

function atRemarks(
  run: Part,
  positions: readonly Stated<'length'>[],
  length: Estimate<'length'> | undefined,
): readonly Remark[] {
  const like = positions.map(writtenOf).find((each) => each !== undefined);
  const known = positions.flatMap((position) => estimateOf(position) ?? []);
  if (like === undefined || known.length < positions.length) return [];
  const beyond = length === undefined ? undefined : known.find(({ low }) => low > length.high + 1e-4);
  if (beyond !== undefined && length !== undefined) {
    const message = `A clip of ${run.label} is at ${writeEstimate(beyond, { like })}, and the line is ${writeEstimate(length, { like })} long. Measure one of the two again.`;
    return [{ severity: 'warning', message, origin: run.clip?.origin ?? run.nameOrigin, subject: run.id }];
  }
  const places = [
    exactly(si('length', 0)),
    ...[...known].sort((a, b) => a.value - b.value),
    ...(length ? [length] : []),
  ];
  const gaps = places.slice(1).map((place, index) => ({ from: places[index] ?? place, to: place }));
  const [widest] = [...gaps].sort((a, b) => least(b) - least(a));
  if (widest === undefined || !(least(widest) > clipSpacing.farthest + 1e-4)) return [];
  const gap = exactly(si('length', widest.to.value - widest.from.value));
  const end = widest.to === length ? 'its end' : `the clip at ${writeEstimate(widest.to, { like })}`;
  const start = widest.from === places[0] ? 'its start' : `the clip at ${writeEstimate(widest.from, { like })}`;
  return [tooFar(run, `${run.label} hangs free for ${written(gap.value, like)}, from ${start} to ${end}`, gap, like)];
}

/** The stretch that is certain, whatever the limits leave. */
const least = ({ from, to }: { readonly from: Estimate<'length'>; readonly to: Estimate<'length'> }): number =>
  to.low - from.high;

/** Twice what the trade bears is more than a matter of taste. */
function tooFar(run: Part, what: string, gap: Estimate<'length'>, like: WrittenUnit): Remark {
  const [close, far] = [clipSpacing.close, clipSpacing.farthest].map((spacing) =>
    writeQuantity(spacing, { unit: like.unit, precision: { significant: 3 } }),
  );
  return {
    severity: gap.low > 2 * clipSpacing.farthest ? 'warning' : 'information',
    message: `${what}. The trade puts one every ${close} to ${far}; no standard says so. Add clips, closer at bends and beside a hose.`,
    origin: run.clip?.origin ?? run.nameOrigin,
    subject: run.id,
  };
}

function lengthOf(run: Part, figures: Figures): Estimate<'length'> | undefined {
  const result = figures.find(run.id, 'run.centreline-length')?.result;
  if (result?.kind !== 'known' || result.dimension !== 'length') return undefined;
  const { value, low, high, about, assumed } = result.estimate;
  return { value: si('length', value), low: si('length', low), high: si('length', high), about, assumed };
}
