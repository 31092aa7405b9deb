/** The lines sheet for machines: SI values whose names end in their unit, and one row a line for spreadsheets. */
import { type Estimate, isKnown } from '../quantity/index.ts';
import type { State } from '../system/presence.ts';
import type { Line, LineEnd } from './lines-line.ts';
import type { StockGroup, StockOptions } from './lines-stock.ts';
import type { Data, Sheet } from './sheet.ts';

export interface LinesData {
  readonly state: State;
  readonly groups: readonly StockGroup[];
  readonly kept: readonly Line[];
  readonly options: StockOptions;
}

export function dataOfLines({ state, groups, kept, options }: LinesData): Data {
  return {
    state,
    stockLengthMetres: options.stock,
    kerfMetres: options.kerf,
    tubes: groups.map((group) => ({
      tube: group.words,
      lines: group.lines.map(dataOfLine),
      cuttingPlan: {
        neededMetres: finite(group.needed),
        lengthsAtLeast: group.plan.atLeast,
        lengths: group.plan.lengths.map(({ pieces, left }) => ({
          pieces: pieces.map(({ of, length }) => ({
            line: of === 'test-piece' ? null : of.run.id,
            lengthMetres: length,
          })),
          leftMetres: left,
        })),
        longerThanStock: group.plan.tooLong.map(({ of }) => (of === 'test-piece' ? null : of.run.id)),
        lengthNotKnown: group.unmeasured.map(({ run }) => run.id),
      },
    })),
    notToMake: kept.map(({ run, work }) => ({
      line: run.id,
      done: work.kind === 'done' ? work.record.date : null,
    })),
  };
}

function dataOfLine(line: Line): Data {
  const { run, ends, tube, cut, centreline, bends } = line;
  return {
    line: run.id,
    from: dataOfEnd(ends[0]),
    to: dataOfEnd(ends[1]),
    tube: {
      diameterMetres: tube.diameter?.value ?? null,
      wallMetres: tube.wall?.value ?? null,
      material: tube.material ?? null,
    },
    cutLengthMetres: cut?.length ?? null,
    computedCutLengthMetres: estimated(cut?.computed),
    certainty: cut?.certainty ?? 'not-known',
    centrelineLengthMetres: estimated(centreline),
    waitsFor: line.waitsFor.map(({ name }) => name),
    bends: (bends?.bends ?? []).map(({ number, straight, start, end, rotation, angle, radius }) => ({
      bend: number,
      straightBeforeMetres: estimated(straight),
      startFromEndAMetres: estimated(start),
      endFromEndAMetres: estimated(end),
      rotationRadians: estimated(rotation),
      angleRadians: estimated(angle),
      radiusMetres: estimated(radius),
    })),
    lastStraightMetres: estimated(bends?.lastStraight),
    findings: line.findings.map(({ code, severity, message }) => ({ code, severity, message })),
  };
}

function dataOfEnd({ letter, meets, thread, nutLength, gender, flare }: LineEnd): Data {
  return {
    end: letter,
    port: meets ?? null,
    thread: thread ?? null,
    nutLength: nutLength ?? null,
    nutGender: gender ?? null,
    flare: flare ?? null,
  };
}

function estimated(estimate: Estimate | undefined): Data {
  if (estimate === undefined || !isKnown(estimate)) return null;
  const { value, low, high, about, assumed } = estimate;
  return { value, low, high, about, assumed };
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

export function listOfLines(lines: readonly Line[]): NonNullable<Sheet['list']> {
  const millimetres = (length: number | undefined): string =>
    length === undefined || !Number.isFinite(length) ? '' : String(Math.round(length * 1e5) / 100);
  return {
    columns: [
      'line',
      'from',
      'to',
      'tube',
      'cut length mm',
      'computed length mm',
      'certainty',
      'nut A',
      'flare A',
      'nut B',
      'flare B',
      'bends',
    ],
    rows: lines.map(({ run, ends: [a, b], tube, cut, bends }) => [
      run.id,
      a.meets ?? '',
      b.meets ?? '',
      tube.words,
      millimetres(cut?.length),
      millimetres(cut?.computed.value),
      cut?.certainty ?? 'not known',
      a.thread ?? '',
      a.flare ?? '',
      b.thread ?? '',
      b.flare ?? '',
      bends === undefined ? '' : String(bends.bends.length),
    ]),
  };
}
