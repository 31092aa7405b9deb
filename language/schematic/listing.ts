/** The picture as a list, for those who read instead of look: parts from the pedal to the wheels, each with its lines. */
import type { Picture, PictureFinding, PictureLine, PictureNode } from './picture.ts';
import { severities } from './svg/badges.ts';
import { lineWords } from './svg/line-markup.ts';
import { symbols } from './symbols/table.ts';

export interface ListedPart {
  readonly id: string;
  readonly kind: 'part' | 'line';
  /** The kind in words of the trade. */
  readonly trade: string;
  readonly label: string;
  readonly description: string;
  /** What it is joined to directly: the ends of a line, the lines of a part. */
  readonly joined: readonly string[];
  /** Worst first. */
  readonly findings: readonly PictureFinding[];
}

const stations = ['actuation', 'junction', 'front', 'rear'] as const;

export function listingOf({ nodes, lines }: Picture): readonly ListedPart[] {
  const ordered = stations.flatMap((station) => nodes.filter((node) => node.station === station));
  const linesAt = new Map<string, PictureLine[]>();
  for (const line of lines) {
    for (const id of new Set([line.from.node, line.to.node])) linesAt.set(id, [...(linesAt.get(id) ?? []), line]);
  }
  const told = new Set<string>();
  return ordered.flatMap((node) => {
    const own = linesAt.get(node.id) ?? [];
    const leaving = own.filter(({ id }) => !told.has(id));
    for (const { id } of leaving) told.add(id);
    return [listedNode(node, own), ...leaving.map(listedLine)];
  });
}

const listedNode = (node: PictureNode, lines: readonly PictureLine[]): ListedPart => ({
  id: node.id,
  kind: 'part',
  trade: symbols[node.symbol].words,
  label: node.label === '' ? node.id : node.label,
  description: [...node.notes, node.description].join('. '),
  joined: lines.map(({ id }) => id),
  findings: worstFirst(node.findings),
});

const listedLine = (line: PictureLine): ListedPart => ({
  id: line.id,
  kind: 'line',
  trade: lineWords[line.kind],
  label: line.label === '' ? line.id : line.label,
  description: [...line.notes, line.description].join('. '),
  joined: [line.from.node, line.to.node],
  findings: worstFirst(line.findings),
});

const worstFirst = (findings: readonly PictureFinding[]): readonly PictureFinding[] =>
  severities.flatMap((severity) => findings.filter((finding) => finding.severity === severity));
