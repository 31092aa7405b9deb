/** Ways to set ports on a symbol that many symbols share. */
import { type Anchor, type Edge, leftToRight, type PortUse, spread } from './drawing.ts';

type Placed = Omit<Anchor, 'at'>;

const anchor = (port: PortUse, edge: Edge, x: number, y: number): Placed => ({ port: port.id, edge, reach: { x, y } });

export interface Flank {
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly gap?: number;
}

/**
 * What comes in sits at the top, all else at the bottom, each side ordered by where its lines lead; a part with several
 * ways through it keeps each of them in a column of its own.
 */
export function throughPorts(ports: readonly PortUse[], flank: Flank): readonly Placed[] {
  const { width, top, bottom, gap = 14 } = flank;
  const channels = [...new Set(ports.flatMap((port) => port.channel ?? []))].sort((a, b) => a - b);
  if (channels.length > 1) return channels.flatMap((channel, i) => column(ports, channel, i, { channels, flank }));
  const incoming = leftToRight(ports.filter((port) => port.flow === 'in'));
  const others = leftToRight(ports.filter((port) => port.flow !== 'in'));
  return [...row(incoming, 'top', top, width, gap), ...row(others, 'bottom', bottom, width, gap)];
}

interface Columns {
  readonly channels: readonly number[];
  readonly flank: Flank;
}

function column(ports: readonly PortUse[], channel: number, index: number, { channels, flank }: Columns) {
  const { width, top, bottom, gap = 14 } = flank;
  const centres = spread(channels.length, width / 2, gap, width - 16);
  const own = ports.filter((port) => (port.channel ?? channels[0]) === channel);
  const at = (list: readonly PortUse[], edge: Edge, y: number) => {
    const places = spread(list.length, centres[index] ?? width / 2, 14, gap - 10);
    return leftToRight(list).map((port, i) => anchor(port, edge, places[i] ?? width / 2, y));
  };
  return [
    ...at(
      own.filter((port) => port.flow === 'in'),
      'top',
      top,
    ),
    ...at(
      own.filter((port) => port.flow !== 'in'),
      'bottom',
      bottom,
    ),
  ];
}

/** All ports on one edge, ordered by where their lines lead. */
export function row(
  ports: readonly PortUse[],
  edge: 'top' | 'bottom',
  y: number,
  width: number,
  gap = 14,
): readonly Placed[] {
  const places = spread(ports.length, width / 2, gap, width - 8);
  return leftToRight(ports).map((port, i) => anchor(port, edge, places[i] ?? width / 2, y));
}

/** A branching point: feed from above, branches to the left, the right and, when there are more, straight down. */
export function branchPorts(ports: readonly PortUse[], [x, y]: readonly [number, number]): readonly Placed[] {
  const incoming = leftToRight(ports.filter((port) => port.flow === 'in'));
  const [feed, ...more] = incoming;
  const outward = leftToRight([...more, ...ports.filter((port) => port.flow !== 'in')]);
  const edges = outwardEdges(outward.length, feed !== undefined);
  return [
    ...(feed === undefined ? [] : [anchor(feed, 'top', x, y)]),
    ...outward.map((port, i) => anchor(port, edges[i] ?? 'bottom', x, y)),
  ];
}

function outwardEdges(count: number, fed: boolean): readonly Edge[] {
  if (count === 1) return ['bottom'];
  if (count === 2) return ['left', 'right'];
  if (count === 3) return ['left', 'bottom', 'right'];
  return fed ? ['left', 'bottom', 'bottom', 'right'] : ['left', 'top', 'bottom', 'right'];
}
