/** The parts list: what to buy for the circuit, counted and grouped, each line with the parts that need it. */
import type { Figures } from '../figures/index.ts';
import type { Finding } from '../rules/rule.ts';
import { stateWords } from '../system/presence.ts';
import type { FileReading, System } from '../system/system.ts';
import { lineOf } from './lines-line.ts';
import { boughtRow } from './parts-bought.ts';
import { dataOfParts, listOfParts } from './parts-data.ts';
import { fluidRows } from './parts-fluid.ts';
import { jointRows } from './parts-joints.ts';
import { lineRows } from './parts-lines.ts';
import { wrongJoints } from './parts-misfits.ts';
import { merged, type PartsGroup, type PartsRow, partsGroups } from './parts-row.ts';
import { isOpened, standingsOf } from './parts-standing.ts';
import { amountWords, tickOf } from './parts-writing.ts';
import { type Block, left, right, type Sheet } from './sheet.ts';

interface PartsOptions {
  /** What the rules say of the file in this state: an end that does not fit is put right before it is bought for. */
  readonly findings: readonly Finding[];
}

/** For what is still to be fitted, replaced or resealed in the state of the system. Never throws. */
export function partsSheet(
  reading: FileReading,
  system: System,
  figures: Figures,
  { findings }: PartsOptions = { findings: [] },
): Sheet {
  const rows = partsRows(reading, system, figures, findings);
  return {
    id: 'parts',
    title: 'Parts to buy',
    subtitle: `${system.vehicle?.caption ?? system.vehicle?.name ?? 'Circuit'}, ${stateWords[system.state]}`,
    cautions,
    blocks: [introduction(rows), ...partsGroups.flatMap((group) => groupBlocks(group, rows))],
    data: dataOfParts(system.state, rows),
    list: listOfParts(rows),
  };
}

const cautions: readonly string[] = [
  'Brakes can kill. This is an aid: local codes, the vehicle maker’s manual and licensed practice come first.',
  'Hold the old part, its thread and its seat beside the new one before either is fitted. A thread that starts is no proof.',
  'Only tube, hose, seals and fluid that are made for brakes, from a seller who says so.',
];

/** "bore of rear-left cylinder": what has to be known before the parts can be ordered, each once. */
export function measureBeforeOrdering(reading: FileReading, system: System, figures: Figures): readonly string[] {
  return [...new Set(partsRows(reading, system, figures, []).flatMap(({ measureFirst }) => measureFirst))];
}

/** In the order of the groups. */
function partsRows(
  reading: FileReading,
  system: System,
  figures: Figures,
  findings: readonly Finding[],
): readonly PartsRow[] {
  const wrong = wrongJoints(findings);
  const standings = standingsOf(system);
  const all = [...standings.values()];
  const lines = all
    .filter(({ part, work, included }) => part.kind === 'run' && work.kind === 'renew' && !included)
    .map(({ part }) => lineOf(part, system, figures, []));
  const rows = [
    ...lineRows(lines, wrong),
    ...all.map((standing) => boughtRow(standing, wrong)).filter((row) => row !== undefined),
    ...jointRows(system, (part) => isOpened(standings.get(part.id))),
  ];
  const opensFluid = rows.some(({ group }) => wet.has(group)) || takesOff(reading, system);
  const counted = merged([...rows, ...(opensFluid ? fluidRows(system, figures) : [])]);
  return partsGroups.flatMap((group) => counted.filter((row) => row.group === group));
}

const wet: ReadonlySet<PartsGroup> = new Set([
  'tube',
  'hoses',
  'unions, tees, adapters, plugs',
  'hydraulic parts',
  'seal kits',
]);

/** A joint that is only there as found is opened. */
function takesOff(reading: FileReading, system: System): boolean {
  return system.state === 'planned' && reading.found.joints.some(({ presence }) => presence === 'to-remove');
}

function introduction(rows: readonly PartsRow[]): Block {
  const open = rows.filter((row) => tickOf(row) === 'open').length;
  const text =
    rows.length === 0
      ? 'Nothing is to be bought: no part is marked to be fitted or recorded to be replaced or resealed, or all is done.'
      : [
          `${open} of ${rows.length} lines are still to come; a ticked box has arrived.`,
          'What is kept or done is left out.',
          'Where a line says “measure first”, do so before you order.',
          ...(rows.some(({ putRightFirst }) => putRightFirst.length > 0)
            ? [
                'Where it says “put right first”, what is planned does not fit there: do not buy it before the file does; the findings say what would fit.',
              ]
            : []),
        ].join(' ');
  return { kind: 'paragraph', text };
}

function groupBlocks(group: PartsGroup, rows: readonly PartsRow[]): readonly Block[] {
  const own = rows.filter((row) => row.group === group);
  if (own.length === 0) return [];
  const remarks = [...new Set(own.flatMap((row) => row.remarks))];
  // A column that would be empty takes room from the words.
  const optional = [
    { column: left('number'), cell: (row: PartsRow) => row.number ?? '' },
    { column: left('bought, arrived'), cell: buyingWords },
  ].filter(({ cell }) => own.some((row) => cell(row) !== ''));
  const table: Block = {
    kind: 'table',
    columns: [right('how many'), left('what'), left('needed by'), ...optional.map(({ column }) => column)],
    rows: own.map((row) => ({
      tick: tickOf(row),
      cells: [
        amountWords(row),
        itemWords(row),
        row.neededBy.map(({ label }) => label).join(', '),
        ...optional.map(({ cell }) => cell(row)),
      ],
    })),
  };
  return [
    {
      kind: 'section',
      title: `${group.charAt(0).toUpperCase()}${group.slice(1)}`,
      blocks: [table, ...(remarks.length > 0 ? [{ kind: 'paragraph', text: remarks.join(' ') } as const] : [])],
    },
  ];
}

function itemWords({ item, measureFirst, putRightFirst }: PartsRow): string {
  return [
    item,
    ...(putRightFirst.length === 0 ? [] : [`Put right first: ${putRightFirst.join(', ')}`]),
    ...(measureFirst.length === 0 ? [] : [`Measure first: ${measureFirst.join(', ')}`]),
  ].join('. ');
}

function buyingWords({ bought, arrived }: PartsRow): string {
  const words = [bought && `bought ${bought}`, arrived && `arrived ${arrived}`];
  return words.filter((word) => word !== undefined && word !== '').join(', ');
}
