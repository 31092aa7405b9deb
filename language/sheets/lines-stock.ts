/** Lines of the same tube are cut together: what to cut from which length of it, with a test piece, and what is left. */
import { defaultUnitFor, type Si, si, writeQuantity } from '../quantity/index.ts';
import { tubeStock } from '../standards/tube-stock.ts';
import { type CuttingPlan, type Piece, planCuts } from './cutting-plan.ts';
import type { Line } from './lines-line.ts';
import { type Bench, ofStock, roughly, valueOnTape } from './lines-writing.ts';
import { type Block, left, type Row, right } from './sheet.ts';

export interface StockOptions {
  /** One coil or length as bought, in m. */
  readonly stock: Si<'length'>;
  /** Lost at each cut, in m. */
  readonly kerf: Si<'length'>;
  /** For a test flare at each end, in m; one of each tube. */
  readonly testPiece: Si<'length'>;
}

export const usualStock: StockOptions = {
  stock: tubeStock.coil,
  kerf: tubeStock.kerf,
  testPiece: tubeStock.testPiece,
};

/** A line, or the piece for a test flare. */
export type Taken = Line | 'test-piece';

export interface StockGroup {
  readonly key: string;
  readonly words: string;
  readonly bench: Bench;
  readonly lines: readonly Line[];
  readonly plan: CuttingPlan<Taken>;
  /** Sum of all pieces with their cuts, in m. */
  readonly needed: Si<'length'>;
  /** Lines whose length is not known. */
  readonly unmeasured: readonly Line[];
}

/** In the order in which the tubes are first met. */
export function stockGroups(lines: readonly Line[], options: StockOptions): readonly StockGroup[] {
  const groups = new Map<string, Line[]>();
  for (const line of lines) {
    const group = groups.get(line.tube.key);
    if (group) group.push(line);
    else groups.set(line.tube.key, [line]);
  }
  return [...groups].flatMap(([key, members]) => {
    const [first] = members;
    return first === undefined ? [] : [groupOf(key, first, members, options)];
  });
}

function groupOf(key: string, first: Line, lines: readonly Line[], options: StockOptions): StockGroup {
  const test: Piece<Taken> = { length: options.testPiece, of: 'test-piece' };
  const pieces = lines.flatMap((line): readonly Piece<Taken>[] =>
    line.cut === undefined ? [] : [{ length: line.cut.length, of: line }],
  );
  const plan = planCuts(pieces.length > 0 ? [test, ...pieces] : [], options);
  const cut = plan.lengths.flatMap((each) => each.pieces);
  return {
    key,
    words: first.tube.words,
    bench: first.bench,
    lines,
    plan,
    needed: si(
      'length',
      cut.reduce((sum, { length }) => sum + length + options.kerf, 0),
    ),
    unmeasured: lines.filter((line) => line.cut === undefined),
  };
}

/** The plan as a table to tick, and what stands around it. */
export function planBlocks(group: StockGroup, { stock, kerf, testPiece }: StockOptions): readonly Block[] {
  const { plan, bench, needed, unmeasured } = group;
  const count = plan.lengths.length;
  const each = ofStock(stock, bench);
  const said: string[] = [];
  if (count > 0) {
    said.push(
      `${count} × ${each} of this tube is needed; the pieces take ${ofStock(needed, bench)} of it, counting ${writeQuantity(kerf, { unit: millimetre })} for each cut and a piece of about ${roughly(testPiece, bench)} for test flares.`,
      ...bestWords(plan, count),
      spareWords(plan, bench),
    );
  }
  for (const { of, length } of plan.tooLong) {
    said.push(
      `${nameOf(of)} takes ${valueOnTape(length, bench)}, more than ${each}: buy a longer roll, or part the line with a union in the file.`,
    );
  }
  if (unmeasured.length > 0) {
    const names = unmeasured.map(({ run }) => run.label).join(', ');
    said.push(`Not in this plan, since the length is not known: ${names}.`);
  }
  return [
    ...(count > 0 ? [planTable(group)] : []),
    ...(said.length > 0 ? [{ kind: 'paragraph', text: said.join(' ') } as const] : []),
  ];
}

function planTable({ plan, bench }: StockGroup): Block {
  const rows = plan.lengths.flatMap(({ pieces }, index) =>
    pieces.map(
      ({ length, of }): Row => ({
        tick: 'open',
        cells: [
          String(index + 1),
          nameOf(of),
          of === 'test-piece' ? `about ${roughly(length, bench)}` : `${valueOnTape(length, bench)}${doubtOf(of)}`,
        ],
      }),
    ),
  );
  return { kind: 'table', columns: [right('coil'), left('piece'), left('cut to')], rows };
}

const nameOf = (of: Taken): string => (of === 'test-piece' ? 'piece for test flares' : of.run.label);

function doubtOf({ cut, findings }: Line): string {
  if (findings.some(({ severity }) => severity === 'error')) return ', but not yet: see the line';
  return cut?.certainty === 'doubtful' ? ', but measure first' : '';
}

function bestWords({ atLeast }: CuttingPlan<Taken>, count: number): readonly string[] {
  if (atLeast < count) return [`Whether ${atLeast} would do was not settled.`];
  return count > 1 ? ['No plan does with fewer.'] : [];
}

/** What is left over, and whether a spoilt line could be made again from it. */
function spareWords({ lengths }: CuttingPlan<Taken>, bench: Bench): string {
  const left = Math.max(0, ...lengths.map((each) => each.left));
  const longest = lengths
    .flatMap(({ pieces }) => pieces)
    .reduce((most, piece) => (piece.of !== 'test-piece' && piece.length > most.length ? piece : most));
  const spare = `The longest piece left over is ${ofStock(roundedDown(left, bench), bench)}`;
  return left >= longest.length
    ? `${spare}: enough to make any of these lines again.`
    : `${spare}: too short to make ${nameOf(longest.of)} again if it is spoilt.`;
}

const roundedDown = (length: number, { step }: Bench): Si<'length'> =>
  si('length', Math.floor(length / step + 1e-6) * step);

const millimetre = defaultUnitFor('length', 'metric');
