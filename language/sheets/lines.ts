/** The lines sheet: every line to make, cut by cut and bend by bend, grouped by the tube it is cut from. */
import type { Figures } from '../figures/index.ts';
import type { Finding } from '../rules/rule.ts';
import { stateWords } from '../system/presence.ts';
import { allParts, type System } from '../system/system.ts';
import { dataOfLines, listOfLines } from './lines-data.ts';
import { type Line, lineOf } from './lines-line.ts';
import { lineSection } from './lines-section.ts';
import { everyLine, tubeWords } from './lines-steps.ts';
import { planBlocks, type StockGroup, type StockOptions, stockGroups, usualStock } from './lines-stock.ts';
import { onTape } from './lines-writing.ts';
import { standingsOf } from './parts-standing.ts';
import { type Block, left, right, type Sheet } from './sheet.ts';

export interface LinesOptions extends StockOptions {
  /** `to-make`: marked to be fitted or recorded to be replaced, and not yet done. */
  readonly which: 'to-make' | 'all';
  /** What the rules say of the file in this state; shown with the lines that it is about. */
  readonly findings: readonly Finding[];
}

const usualLines: LinesOptions = { ...usualStock, which: 'to-make', findings: [] };

/** Never throws; what is not known is said in its place. */
export function linesSheet(system: System, figures: Figures, options: Partial<LinesOptions> = {}): Sheet {
  const chosen: LinesOptions = { ...usualLines, ...options };
  const runs = allParts(system).filter(({ kind }) => kind === 'run');
  const standings = standingsOf(system);
  const lines = runs.map((run): Line => {
    const line = lineOf(run, system, figures, chosen.findings);
    const standing = standings.get(run.id);
    return standing === undefined ? line : { ...line, work: standing.included ? { kind: 'none' } : standing.work };
  });
  const wanted = lines.filter(({ work }) => chosen.which === 'all' || work.kind === 'renew');
  const kept = lines.filter((line) => !wanted.includes(line));
  const groups = stockGroups(wanted, chosen);
  return {
    id: 'lines',
    title: 'Lines to make',
    subtitle: `${system.vehicle?.caption ?? system.vehicle?.name ?? 'Circuit'}, ${stateWords[system.state]}`,
    cautions,
    blocks: [
      ...introduction(wanted, runs.length),
      ...groups.flatMap((group) => groupBlocks(group, chosen)),
      ...keptBlocks(kept),
    ],
    data: dataOfLines({ state: system.state, groups, kept, options: chosen }),
    list: listOfLines(wanted),
  };
}

const cautions: readonly string[] = [
  'Brakes can kill. This is an aid: local codes, the vehicle maker’s manual and licensed practice come first.',
  'Wear eye protection to cut, flare and blow through. Old brake dust may hold asbestos: wet it, never blow it.',
  'Make a test flare on scrap of the same tube before the first line. A cracked or crooked flare, or a kinked tube, is scrap.',
  'No tape or sealant on flares. Before the vehicle moves, test under pressure, look at every joint, have it inspected.',
];

function introduction(wanted: readonly Line[], runs: number): readonly Block[] {
  if (wanted.length === 0) {
    const text =
      runs === 0
        ? 'The file has no runs of tube.'
        : 'No line is to be made: none is marked to be fitted or recorded to be replaced, or all are done.';
    return [{ kind: 'paragraph', text }];
  }
  const bent = wanted.some(({ bends }) => (bends?.bends.length ?? 0) > 0);
  const text = [
    'End A is where a line comes from, end B where it goes to.',
    ...(bent
      ? [
          'Marks are measured along the tube from the face of the finished flare at end A to where a bend begins: set the bender’s zero there.',
          'A turn says how the next bend lies against the one before it, seen along the tube from A to B.',
          'Make one calibration bend on scrap first, by the same marks, and see how far it comes out.',
        ]
      : []),
  ].join(' ');
  return [
    { kind: 'paragraph', text },
    { kind: 'list', items: everyLine },
  ];
}

function groupBlocks(group: StockGroup, options: StockOptions): readonly Block[] {
  return [
    {
      kind: 'section',
      title: `Cut from ${group.words}`,
      blocks: [
        ...planBlocks(group, options),
        { kind: 'paragraph', text: tubeWords(group.lines).join(' ') },
        ...group.lines.map(lineSection),
      ],
    },
  ];
}

function keptBlocks(kept: readonly Line[]): readonly Block[] {
  if (kept.length === 0) return [];
  const rows = kept.map(({ run, ends: [a, b], centreline, bench, work }) => ({
    cells: [
      run.label,
      a.meets ?? '–',
      b.meets ?? '–',
      onTape(centreline, bench),
      work.kind === 'done' ? `done ${work.record.date}` : 'kept',
    ],
  }));
  const columns = [left('line'), left('from'), left('to'), right('face to face'), left('stands')];
  return [{ kind: 'section', title: 'Not to be made', blocks: [{ kind: 'table', columns, rows }] }];
}
