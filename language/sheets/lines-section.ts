/** A line as a section of the sheet: at a glance, in the order of work, its bends, its drawing, what to mind. */
import type { BendTable } from '../figures/bend-table.ts';
import { type Estimate, estimateOf, isKnown, notKnown, writeStated } from '../quantity/index.ts';
import { flareWords } from '../standards/flare-forms.ts';
import type { WorkAhead } from '../system/work-ahead.ts';
import { developedDrawing } from './developed-drawing.ts';
import type { Cut, Line, LineEnd } from './lines-line.ts';
import { stepsOf } from './lines-steps.ts';
import { type Bench, inDecimals, inDegrees, inTurns, onTape, valueOnTape } from './lines-writing.ts';
import { type Block, type Item, left, type Row, right } from './sheet.ts';

export function lineSection(line: Line): Block {
  const mind = mindItems(line);
  return {
    kind: 'section',
    title: line.run.label,
    tick: 'open',
    blocks: [
      { kind: 'facts', rows: factRows(line) },
      ...(mind.length > 0 ? [{ kind: 'list', items: mind } as const] : []),
      { kind: 'steps', items: stepsOf(line) },
      ...bendBlocks(line),
    ],
  };
}

function factRows(line: Line): readonly (readonly [string, string])[] {
  const { ends, cut, bench, centreline, work } = line;
  const [a, b] = ends;
  const clips = clipWords(line);
  return [
    ['end A at', a.meets ?? 'nothing yet'],
    ['end B at', b.meets ?? 'nothing yet'],
    ['nut, flare A', endWords(a)],
    ['nut, flare B', endWords(b)],
    ['cut to', cut === undefined ? notKnown : cutWords(cut, bench)],
    ['face to face', onTape(centreline, bench)],
    ...(clips === undefined ? [] : [['clips', clips] as const]),
    ...(work.kind === 'renew' ? [['why', whyWords(work)] as const] : []),
  ];
}

function whyWords({ record }: Extract<WorkAhead, { kind: 'renew' }>): string {
  if (record === undefined) return 'to be fitted';
  const what = record.verb === 'replace' ? 'to be replaced' : 'to be fitted';
  return `${what}, ${record.date}${record.note === undefined ? '' : `: ${record.note}`}`;
}

function cutWords({ length, computed, certainty }: Cut, bench: Bench): string {
  const doubt = certainty === 'doubtful' ? (computed.assumed ? ', assumed' : ', about') : '';
  const over = certainty === 'within-limits' ? ', at the long limit' : '';
  return `${valueOnTape(length, bench)} (worked out ${inDecimals(computed.value, bench)}${doubt}${over})`;
}

function endWords({ thread, nutLength, gender, flare }: LineEnd): string {
  const form = flare === undefined ? 'flare not stated' : flareWords[flare].replace(/^a /, '');
  const nut = [thread ?? 'thread not stated', nutLength, gender === 'female' ? 'female' : undefined];
  return `${nut.filter((word) => word !== undefined).join(' ')}, ${form}`;
}

/** What has to be mended in the file, or measured, before tube is cut. */
function mindItems({ findings, notes }: Line): readonly Item[] {
  const lead = { error: 'Do not make it yet: ', warning: 'Mind: ', question: '', information: '' } as const;
  const own = findings.map(({ severity, message }) => ({ text: `${lead[severity]}${message}` }));
  const said = new Set(own.map(({ text }) => text));
  return [...own, ...notes.filter((note) => ![...said].some((text) => overlaps(text, note))).map((text) => ({ text }))];
}

/** A note of the figure and a finding may speak of the same step in nearly the same words. */
const overlaps = (finding: string, note: string): boolean => finding.endsWith(note.replace(/^[^:]*: /, ''));

function bendBlocks(line: Line): readonly Block[] {
  const { bends, run } = line;
  if (bends === undefined) return [];
  const coils = (run.route?.steps ?? []).flatMap((step, index) =>
    step.kind === 'coil' ? [coilWords(step, index, line)] : [],
  );
  return [
    ...(bends.bends.length > 0 ? [bendTableBlock(line, bends)] : []),
    ...coils.map((text) => ({ kind: 'paragraph', text }) as const),
    ...drawingBlocks(line),
  ];
}

function bendTableBlock({ bench, centreline }: Line, { bends, lastStraight }: BendTable): Block {
  const rows = bends.map(
    ({ number, straight, start, rotation, angle, radius, end }): Row => ({
      tick: 'open',
      cells: [
        String(number),
        onTape(straight, bench),
        onTape(start, bench),
        number === 1 ? '–' : inTurns(rotation),
        inDegrees(angle),
        onTape(radius, bench),
        onTape(end, bench),
      ],
    }),
  );
  return {
    kind: 'table',
    columns: [
      left('bend'),
      right('straight before it'),
      right('begins at, from A'),
      left('turn before it'),
      right('angle'),
      right('radius'),
      right('ends at, from A'),
    ],
    rows: [...rows, { cells: ['end B', onTape(lastStraight, bench), onTape(centreline, bench), '', '', '', ''] }],
  };
}

type CoilStep = Extract<NonNullable<Line['run']['route']>['steps'][number], { kind: 'coil' }>;

function coilWords({ turns, diameter }: CoilStep, index: number, { run }: Line): string {
  const before = (run.route?.steps ?? []).slice(0, index).filter(({ kind }) => kind === 'bend').length;
  const where = before === 0 ? 'before the first bend' : `behind bend ${before}`;
  const [count, across] = [turns, diameter].map((stated) =>
    stated.kind === 'unknown' ? notKnown : writeStated(stated),
  );
  return `Coil ${where}: turns ${count}, centre-line diameter ${across}. Wind it on a round former.`;
}

function drawingBlocks({ run, bends, centreline, bench }: Line): readonly Block[] {
  if (bends === undefined || centreline === undefined || !(centreline.value > 0) || bends.bends.length === 0) return [];
  const drawn = bends.bends.flatMap(({ number, start, end, angle }) =>
    start && end && angle
      ? [
          {
            number,
            start: start.value,
            end: end.value,
            angle: inDegrees({ ...angle, low: angle.value, high: angle.value }),
            mark: onTape(middle(start), bench),
          },
        ]
      : [],
  );
  if (drawn.length < bends.bends.length) return [];
  const drawing = developedDrawing({
    name: run.label,
    length: centreline.value,
    lengthText: onTape(middle(centreline), bench),
    bends: drawn,
  });
  return [{ kind: 'drawing', ...drawing }];
}

/** Limits stand in the table; a mark on a drawing is one number. */
const middle = (length: Estimate<'length'>): Estimate<'length'> => ({
  ...length,
  low: length.value,
  high: length.value,
});

function clipWords({ run: { clip }, centreline, bench }: Line): string | undefined {
  if (clip === undefined) return undefined;
  if (clip.kind === 'at') {
    const places = clip.positions.map((place) => (place.kind === 'unknown' ? notKnown : writeStated(place)));
    return `from end A at ${places.join(', ')}`;
  }
  const spacing = estimateOf(clip.spacing);
  if (spacing === undefined) return notKnown;
  const count = centreline && isKnown(spacing) ? clipsAlong(centreline.value, spacing.value) : undefined;
  const number = count === undefined ? '' : count === 0 ? ', none on a line this short' : `, ${count} of them`;
  return `every ${onTape(spacing, bench)}${number}`;
}

/** Clips strictly between the two ends, one at every spacing from end A; undefined where that is no count. */
export function clipsAlong(length: number, spacing: number): number | undefined {
  if (!(spacing > 0) || !(length > 0)) return undefined;
  const count = Math.ceil(length / spacing - 1e-6) - 1;
  return Number.isFinite(count) && count < 10_000 ? Math.max(0, count) : undefined;
}
