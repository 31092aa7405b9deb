/** Symbols of what joins lines: tees, blocks, unions, adapters, banjo bolts, plugs and open ends. */
import type { PictureNode } from '../picture.ts';
import { circle, type PartSymbol, path, rect } from './drawing.ts';
import { branchPorts, row, throughPorts } from './ports.ts';

/** A junction is a filled dot, as in ISO 1219-1. */
function dot(words: string): PartSymbol {
  return {
    words,
    draw: ({ ports }) => ({
      width: 14,
      height: 14,
      label: 'corner',
      shapes: [circle(7, 7, 4.5, 'solid')],
      anchors: branchPorts(ports, [7, 7]),
    }),
  };
}

export const tee = dot('tee');
export const cross = dot('cross');

export const block: PartSymbol = {
  words: 'distribution block',
  draw: ({ node, ports }) => {
    const below = ports.filter((port) => port.flow !== 'in').length;
    const width = Math.max(44, below * 18 + 8);
    return {
      width,
      height: 26,
      label: 'right',
      shapes: isDivided(node)
        ? [rect([0, 3, width, 20, 2])]
        : [rect([0, 3, width, 20, 2]), path(`M8 13H${width - 8}`, 'thin'), circle(width / 2, 13, 4, 'solid')],
      anchors: throughPorts(ports, { width, top: 3, bottom: 23, gap: 18 }),
    };
  },
};

/** A dot would say that all its ports share fluid. */
function isDivided({ ports }: PictureNode): boolean {
  const ways = new Set(ports.flatMap(({ circuit, channel }) => channel ?? circuit ?? []));
  return ways.size > 1;
}

export const union: PartSymbol = {
  words: 'union',
  draw: ({ ports }) => ({
    width: 22,
    height: 22,
    label: 'right',
    shapes: [rect([4, 4, 14, 14, 2]), path('M4 11H18', 'line')],
    anchors: throughPorts(ports, { width: 22, top: 4, bottom: 18 }),
  }),
};

export const bulkhead: PartSymbol = {
  words: 'bulkhead fitting',
  draw: ({ ports }) => ({
    width: 36,
    height: 26,
    label: 'right',
    shapes: [rect([12, 3, 12, 20, 2]), path('M0 11H12M24 11H36M0 15H12M24 15H36', 'thin'), path('M12 13H24', 'line')],
    anchors: throughPorts(ports, { width: 36, top: 3, bottom: 23 }),
  }),
};

/** Where a line meets a hose without a part between them: the nut. */
export const joint: PartSymbol = {
  words: 'joint',
  draw: ({ ports }) => ({
    width: 16,
    height: 14,
    label: 'right',
    shapes: [path('M3 4L5 2H11L13 4V10L11 12H5L3 10Z', 'body'), path('M3 7H13', 'thin')],
    anchors: throughPorts(ports, { width: 16, top: 2, bottom: 12, gap: 6 }),
  }),
};

export const adapter: PartSymbol = {
  words: 'adapter',
  draw: ({ ports }) => ({
    width: 24,
    height: 22,
    label: 'right',
    shapes: [path('M4 3H20V9L16 19H8L4 9Z', 'body'), path('M4 9H20', 'thin')],
    anchors: throughPorts(ports, { width: 24, top: 3, bottom: 19 }),
  }),
};

export const banjoBolt: PartSymbol = {
  words: 'banjo bolt',
  draw: ({ ports }) => ({
    width: 28,
    height: 24,
    label: 'right',
    shapes: [circle(14, 12, 9, 'body'), path('M10 7.9L18 16.1M18 7.9L10 16.1', 'thin'), circle(14, 12, 3.5, 'body')],
    anchors: throughPorts(ports, { width: 28, top: 3, bottom: 21 }),
  }),
};

/** A plugged port is a line that ends in a cross, as in ISO 1219-1. */
export const plug: PartSymbol = {
  words: 'plug',
  draw: ({ ports }) => ({
    width: 18,
    height: 18,
    label: 'right',
    shapes: [path('M4 5L14 15M14 5L4 15', 'line')],
    anchors: row(ports, 'top', 10, 18),
  }),
};

export const openEnd: PartSymbol = {
  words: 'open end',
  draw: ({ ports }) => ({
    width: 16,
    height: 16,
    label: 'right',
    shapes: [circle(8, 6, 4, 'line'), path('M2 13H14', 'dashed')],
    anchors: row(ports, 'top', 2, 16),
  }),
};

export const bleeder: PartSymbol = {
  words: 'bleeder',
  draw: ({ ports }) => ({
    width: 18,
    height: 24,
    label: 'right',
    shapes: [path('M5 4H13V9L11 12V20H7V12L5 9Z', 'body'), path('M6 16H12', 'thin')],
    anchors: row(ports, 'top', 4, 18),
  }),
};
