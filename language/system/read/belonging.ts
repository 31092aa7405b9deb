/** Says when a statement does not belong to the kind of part that it is said of, so that nothing written is passed over. */
import * as ast from '../../grammar/generated/ast.ts';
import { type KindRow, kindRow, type PartKind } from '../kinds/index.ts';
import { nearest } from '../nearest.ts';
import type { Draft } from './draft.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';

interface Belonging {
  /** As the statement is called in a sentence. */
  readonly words: string;
  readonly kinds: readonly PartKind[] | ((row: KindRow) => boolean);
}

const tubeOnly: readonly PartKind[] = ['run'];
const isLine = (row: KindRow): boolean => row.symbol === 'line';

const belongings: Readonly<Partial<Record<ast.Member['$type'], Belonging>>> = {
  Tube: { words: 'tube', kinds: tubeOnly },
  Nut: { words: 'nut', kinds: tubeOnly },
  Flare: { words: 'flare', kinds: tubeOnly },
  Route: { words: 'route', kinds: tubeOnly },
  Clip: { words: 'clip', kinds: tubeOnly },
  End: { words: 'from and to', kinds: isLine },
  PortGroup: { words: 'port', kinds: (row) => row.ports.most > 0 },
  // A path through a valve would make it plain tube.
  Path: { words: 'path', kinds: (row) => row.ports.most > 1 && row.fluid !== 'valve' },
};

const pushers: readonly PartKind[] = ['pedal', 'clutch-pedal', 'booster'];
const verbs: Readonly<Record<ast.Relation['verb'], readonly PartKind[]>> = {
  pushes: pushers,
  feeds: ['reservoir', 'compartment'],
  'acts-on': ['parking-brake'],
};

/** Notes the statements that the kind cannot have, and paths through ports that the part does not have. */
export function noteStatements(draft: Draft, row: KindRow, portNames: readonly string[], notes: ReadingNotes): void {
  for (const { node } of draft.statements) {
    const belonging: Belonging | undefined = ast.isRelation(node)
      ? { words: node.verb, kinds: verbs[node.verb] ?? [] }
      : belongings[node.$type];
    if (belonging === undefined) continue;
    const { words, kinds } = belonging;
    if (typeof kinds === 'function' ? kinds(row) : kinds.includes(row.keyword)) {
      if (ast.isPath(node)) notePorts(node, row, portNames, notes);
      continue;
    }
    const homes = typeof kinds === 'function' ? [] : kinds.map((kind) => kindRow(kind).title);
    const where = homes.length > 0 ? `; ${homes.join(' or ')} has` : instead(row);
    notes.problems.push({
      code: 'misplaced',
      message: `${row.title} has no ${words}${where}.`,
      origin: originOf(node),
    });
  }
}

/** What a line has in place of ports, and other parts in place of ends. */
function instead(row: KindRow): string {
  if (row.fluid === 'valve') return '; fluid goes through it from in to out';
  if (isLine(row)) return '; its ends are from and to';
  return row.ports.most > 0 ? '; it has ports' : '';
}

function notePorts(node: ast.Path, row: KindRow, known: readonly string[], notes: ReadingNotes): void {
  for (const [index, port] of node.ports.entries()) {
    if (known.includes(port.$refText)) continue;
    const close = nearest(port.$refText, known);
    const origin = originOfProperty(node, 'ports', index);
    const hint = close.length > 0 ? ` Did you mean ${close.join(' or ')}?` : ` Its ports are ${known.join(', ')}.`;
    notes.problems.push({
      code: 'unknown-name',
      message: `${row.title} here has no port called “${port.$refText}”.${known.length > 0 ? hint : ''}`,
      origin,
      mends: close.map((name) => ({ title: `Write ${name}`, edits: [{ ...origin, text: name }] })),
    });
  }
}
