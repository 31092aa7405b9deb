/** What the lines to be made take: tube with spare and test pieces, nuts and sleeves, clips. */
import { estimateOf, isKnown, type Si, si, writeQuantity, writeStated } from '../quantity/index.ts';
import { clipSpacing } from '../standards/clip-spacing.ts';
import { frontMatters, nutFronts, nutReach } from '../standards/nut-forms.ts';
import { isOversizeNut } from '../standards/tube-nuts.ts';
import type { Part } from '../system/part.ts';
import type { Line, LineEnd } from './lines-line.ts';
import { clipsAlong } from './lines-section.ts';
import { type StockGroup, stockGroups, usualStock } from './lines-stock.ts';
import { type Bench, ofStock } from './lines-writing.ts';
import type { NeededBy, PartsRow } from './parts-row.ts';

/** Tube to ask for beyond what the pieces take; common practice. */
const spareShare = 0.1;

const bare = {
  number: undefined,
  bought: undefined,
  arrived: undefined,
  measureFirst: [],
  putRightFirst: [],
  remarks: [],
} as const;

/** `wrong` has the paths of ends that do not fit what they meet. */
export function lineRows(lines: readonly Line[], wrong: ReadonlySet<string>): readonly PartsRow[] {
  return [
    ...stockGroups(lines, usualStock).map(tubeRow),
    ...lines.flatMap((line) => nutRows(line, wrong)),
    ...lines.map(clipRow).filter((row) => row !== undefined),
  ];
}

const neededBy = ({ run }: Line): NeededBy => ({ id: run.id, label: run.label });

function tubeRow(group: StockGroup): PartsRow {
  const { lines, plan, bench, needed, unmeasured, words } = group;
  const all = lines.map(({ run }) => run);
  const lacking = [
    ...unmeasured.map(({ run }) => `length of ${run.label}`),
    ...all.flatMap(tubeLacks),
    ...lines.flatMap(({ cut, run }) => (cut?.certainty === 'doubtful' ? [`length of ${run.label}`] : [])),
  ];
  return {
    ...bare,
    group: 'tube',
    item: words,
    amount: amountOf(needed, bench),
    neededBy: lines.map(neededBy),
    ...sharedBuying(all),
    measureFirst: [...new Set(lacking)],
    remarks: needed > 0 ? [tubeRemark(group), ...tooLongRemarks(plan, bench)] : [],
  };
}

function amountOf(needed: Si<'length'>, bench: Bench): PartsRow['amount'] {
  if (!(needed > 0)) return { kind: 'not-known' };
  const metres = upTo(needed * (1 + spareShare), saleStep[bench.family]);
  return { kind: 'length', metres, words: ofStock(metres, bench) };
}

const roughly = { inch: { fraction: 2 }, metric: { decimals: 0 } } as const;

/** As it is cut from a roll. */
const saleStep = { inch: 0.1524, metric: 0.1 } as const;

const upTo = (length: number, step: number): Si<'length'> => si('length', Math.ceil(length / step - 1e-6) * step);

function tubeRemark({ plan, bench, needed }: StockGroup): string {
  const [taken, coil] = [
    ofStock(upTo(needed, bench.family === 'inch' ? 0.0254 : 0.01), bench),
    ofStock(usualStock.stock, bench),
  ];
  const rolls = plan.lengths.length;
  const test = writeQuantity(usualStock.testPiece, { unit: bench.like.unit, precision: roughly[bench.family] });
  return `The pieces take ${taken}, with 1 mm for each cut and ${test} for test flares; a tenth more is spare. ${rolls === 1 ? 'One roll' : `${rolls} rolls`} of ${coil} hold${rolls === 1 ? 's' : ''} them.`;
}

function tooLongRemarks({ tooLong }: StockGroup['plan'], bench: Bench): readonly string[] {
  return tooLong.flatMap(({ of }) =>
    of === 'test-piece'
      ? []
      : [`${of.run.label} is longer than a roll of ${ofStock(usualStock.stock, bench)} and is not counted.`],
  );
}

function tubeLacks({ tube, label }: Part): readonly string[] {
  const size = tube && estimateOf(tube.diameter);
  return [
    ...(size === undefined ? [`tube of ${label}`] : size.assumed || size.about ? [`tube of ${label}`] : []),
    ...(tube !== undefined && (tube.wall === undefined || tube.wall.kind === 'unknown')
      ? [`tube wall of ${label}`]
      : []),
    ...(tube !== undefined && tube.material === undefined ? [`tube material of ${label}`] : []),
  ];
}

/** Tube is bought by the roll: only what all its runs record alike is said of it. */
function sharedBuying(runs: readonly Part[]): Pick<PartsRow, 'number' | 'bought' | 'arrived'> {
  const same = (pick: 'number' | 'bought' | 'arrived'): string | undefined => {
    const said = runs.map(({ records }) => records.findLast((record) => record[pick] !== undefined)?.[pick]);
    return said.every((each) => each !== undefined && each === said[0]) ? said[0] : undefined;
  };
  return { number: same('number'), bought: same('bought'), arrived: same('arrived') };
}

function nutRows(line: Line, wrong: ReadonlySet<string>): readonly PartsRow[] {
  return line.ends.flatMap((end): readonly PartsRow[] => {
    if (end.flare === 'none') return [];
    const size = sizeWords(line.run);
    const port = `${line.run.id}.${end.letter === 'A' ? 'from' : 'to'}`;
    const row = {
      ...bare,
      group: 'nuts',
      amount: { kind: 'pieces', count: 1 },
      neededBy: [neededBy(line)],
      remarks: nutRemarks(end),
      putRightFirst: wrong.has(port) ? [`the joint at ${end.meets ?? port}`] : [],
    } as const;
    const sleeve: readonly PartsRow[] =
      end.flare === 'single-37' ? [{ ...row, item: `sleeve for a 37° flare on ${size} tube` }] : [];
    const lacking = end.thread === undefined ? [`thread of the port at end ${end.letter} of ${line.run.label}`] : [];
    return [{ ...row, item: nutWords(end, line, size), measureFirst: lacking }, ...sleeve];
  });
}

function nutRemarks({ flare, thread }: LineEnd): readonly string[] {
  return [
    `${nutReach.words} (common practice).`,
    ...(frontMatters(flare, thread) ? [`${nutFronts.words} (${nutFronts.source.text}).`] : []),
  ];
}

function nutWords({ thread, nutLength, gender }: LineEnd, { tube }: Line, size: string): string {
  const od = tube.diameter?.value;
  const oversize = thread !== undefined && od !== undefined && isOversizeNut(thread, od);
  const kind = [oversize ? 'oversize' : undefined, gender === 'female' ? 'female' : undefined, 'tube nut']
    .filter((word) => word !== undefined)
    .join(' ');
  const length = nutLength === undefined ? '' : `, ${nutLength}`;
  return `${kind}, ${thread ?? 'thread not known'}, for ${size} tube${length}`;
}

function sizeWords({ tube }: Part): string {
  if (tube === undefined || tube.diameter.kind === 'unknown') return 'a size not known of';
  return writeStated(tube.diameter.kind === 'assumed' ? tube.diameter.assumption : tube.diameter);
}

/** Clips as the file places them; where it does not, as many as the trade would at most. */
function clipRow(line: Line): PartsRow | undefined {
  const { run, centreline } = line;
  const item = `clip for ${sizeWords(run)} tube`;
  const row = { ...bare, group: 'clips', item, neededBy: [neededBy(line)] } as const;
  if (run.clip?.kind === 'at') return { ...row, amount: { kind: 'pieces', count: run.clip.positions.length } };
  const stated = run.clip && estimateOf(run.clip.spacing);
  const spacing = stated !== undefined && isKnown(stated) && stated.value > 0 ? stated.value : clipSpacing.close;
  const count = centreline && isKnown(centreline) ? clipsAlong(centreline.value, spacing) : undefined;
  const remarks =
    spacing === stated?.value
      ? []
      : [`Where the file gives no clips: one every ${usualSpacing(line.bench)} (common practice).`];
  if (count === undefined) {
    return { ...row, amount: { kind: 'not-known' }, measureFirst: [`length of ${run.label}`], remarks };
  }
  return count === 0 ? undefined : { ...row, amount: { kind: 'pieces', count }, remarks };
}

const usualSpacing = ({ like }: Bench): string =>
  writeQuantity(clipSpacing.close, { unit: like.unit, precision: { significant: 3 } });
