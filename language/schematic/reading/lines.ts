/** The runs, hoses, screwed joints and links of a system as lines of its picture, with the nuts and open ends they need. */
import type { Figures } from '../../figures/index.ts';
import type { Link } from '../../system/joint.ts';
import { kindRow } from '../../system/kinds/index.ts';
import { type Part, type PortId, portIdOf } from '../../system/part.ts';
import { allParts, type System } from '../../system/system.ts';
import type { LineEnd, LineKind, PictureLine, PictureNode, SymbolName } from '../picture.ts';
import { parkingPort } from '../symbols/wheel-brakes.ts';
import { type End, endAtPort, endOfLine, ownerOf } from './ends.ts';
import { feedPort, type NodeContext } from './nodes.ts';
import { fullLengthOf, notesOfLine } from './notes.ts';
import { isLine } from './symbol-of.ts';

export interface LineContext extends NodeContext {
  readonly figures: Figures;
}

export interface Lines {
  readonly lines: readonly PictureLine[];
  /** Nuts between two lines, and open ends. */
  readonly nodes: readonly PictureNode[];
}

export function linesOf(context: LineContext): Lines {
  const { system } = context;
  const tubes = allParts(system)
    .filter(isLine)
    .map((part) => tubeOf(part, context));
  const ends = new Map(tubes.flatMap(({ ends: own }) => own.map((end): [string, PictureNode] => [end.id, end])));
  return {
    lines: [...tubes.map(({ line }) => line), ...screwedLines(system, context), ...linkLines(system)],
    nodes: [...ends.values()],
  };
}

const lineKinds: Readonly<Record<string, LineKind>> = { run: 'run', hose: 'hose', 'feed-hose': 'low-pressure-hose' };

function tubeOf(
  part: Part,
  context: LineContext,
): { readonly line: PictureLine; readonly ends: readonly PictureNode[] } {
  const { system, findings, circuitOf, figures } = context;
  const [from, to] = [portIdOf(part.id, 'from'), portIdOf(part.id, 'to')];
  const [start, end] = [endOfLine(system, from), endOfLine(system, to)];
  const circuit = circuitOf(from) ?? circuitOf(to);
  const notes = notesOfLine(part, figures);
  const { title } = kindRow(part.kind);
  const length = fullLengthOf(part, figures);
  return {
    line: {
      id: part.id,
      kind: lineKinds[part.kind] ?? 'run',
      from: start.at,
      to: end.at,
      label: part.name,
      notes,
      description: `${title.charAt(0).toUpperCase()}${title.slice(1)} from ${endWords(start)} to ${endWords(end)}${length === undefined ? '' : `, ${length}`}.`,
      mark: part.presence,
      findings: findings.of([part.id]),
      ...(circuit === undefined ? {} : { circuit }),
    },
    ends: [start, end].flatMap((one) => endNode(one, part, circuit)),
  };
}

const endWords = ({ kind, at }: End): string => {
  if (kind === 'open') return 'an open end';
  return kind === 'nut' ? at.node.replace(/\.(from|to)$/, '') : `${at.node} ${at.port}`;
};

/** What stands at an end where no part is. */
function endNode(end: End, line: Part, circuit: number | undefined): readonly PictureNode[] {
  if (end.kind === 'symbol') return [];
  const [symbol, description]: readonly [SymbolName, string] =
    end.kind === 'nut' ? ['joint', 'A nut joins the two lines.'] : ['open-end', `An open end of ${line.label}.`];
  return [
    {
      id: end.at.node,
      symbol,
      label: '',
      notes: [],
      description,
      side: 'centre',
      station: 'junction',
      ports: end.kind === 'nut' || circuit === undefined ? [] : [{ id: end.at.port, circuit }],
      details: [],
      mark: line.presence,
      findings: [],
    },
  ];
}

/** Part screwed into part: a short thick line without a label. */
function screwedLines(system: System, { circuitOf }: NodeContext): readonly PictureLine[] {
  return system.joints.flatMap((joint): readonly PictureLine[] => {
    if (joint.kind !== 'screwed') return [];
    const [from, to] = [endAtPort(system, joint.a), endAtPort(system, joint.b)];
    if (from === undefined || to === undefined) return [];
    const circuit = circuitOf(joint.a) ?? circuitOf(joint.b);
    return [
      {
        ...bare(screwedId(joint.a, joint.b), 'screwed', from, to),
        description: `${from.node} is screwed into ${to.node}.`,
        mark: joint.presence,
        ...(circuit === undefined ? {} : { circuit }),
      },
    ];
  });
}

/** A joint has no name of its own in the file. */
export const screwedId = (a: PortId, b: PortId): string => `${a}=${b}`;

function bare(id: string, kind: LineKind, from: LineEnd, to: LineEnd): Omit<PictureLine, 'description'> {
  return { id, kind, from, to, label: '', notes: [], mark: 'kept', findings: [] };
}

/** Push rods, cables, and reservoirs that sit on what they feed. */
function linkLines(system: System): readonly PictureLine[] {
  return system.links.flatMap((link): readonly PictureLine[] => {
    const [from, to] = [system.partById.get(link.from), system.partById.get(link.to)];
    if (from === undefined || to === undefined) return [];
    const [above, below] = [ownerOf(system, from), ownerOf(system, to)];
    const { kind, ports, verb } = linkLooks[link.verb](link, above, below);
    const ends = ports.map((port, i): LineEnd => ({ node: (i === 0 ? above : below).id, port }));
    const [start, end] = ends;
    if (start === undefined || end === undefined) return [];
    return [
      {
        ...bare(linkId(link), kind, start, end),
        description: `${from.label} ${verb} ${to.label}.`,
      },
    ];
  });
}

/** A link has no name of its own in the file. */
export const linkId = ({ from, to }: Pick<Link, 'from' | 'to'>): string => `${from}=${to}`;

interface LinkLook {
  readonly kind: LineKind;
  readonly ports: readonly [string, string];
  readonly verb: string;
}

const linkLooks: Readonly<Record<Link['verb'], (link: Link, above: Part, below: Part) => LinkLook>> = {
  feeds: (link, above, below) => ({
    kind: 'feed',
    ports: [feedPort(above, link.from, link), feedPort(below, link.to, link)],
    verb: 'feeds',
  }),
  pushes: () => ({ kind: 'mechanical', ports: ['rod-out', 'rod'], verb: 'pushes' }),
  'acts-on': (link) => ({ kind: 'mechanical', ports: [`cable ${link.to}`, parkingPort], verb: 'acts on' }),
};
