/** Symbols of what the driver moves: pedal, booster, master cylinders, reservoir, parking-brake lever. */
import type { PictureNode } from '../picture.ts';
import {
  type Anchor,
  belongsTo,
  type Core,
  circle,
  detailsOf,
  leftToRight,
  type PartSymbol,
  type PortUse,
  path,
  rect,
  type Shape,
  type SymbolSubject,
  spread,
  spring,
} from './drawing.ts';
import { branchPorts, row } from './ports.ts';

const rodHeight = 30;

export const pedal: PartSymbol = {
  words: 'pedal',
  draw: ({ ports }) => ({
    width: 46,
    height: 70,
    axis: rodHeight,
    label: 'below',
    shapes: [
      path(`M30 5C22 22 20 40 14 60`, 'line'),
      circle(30, 6, 3.5, 'body'),
      path('M5 57L23 63', 'piston'),
      path('M24 2h12M36 2l3 -4M31 2l3 -4M26 2l3 -4', 'thin'),
    ],
    anchors: ports.map((port) => ({ port: port.id, edge: 'right', reach: { x: 20, y: rodHeight } })),
  }),
};

export const booster: PartSymbol = {
  words: 'booster',
  draw: ({ ports }) => ({
    width: 48,
    height: 60,
    axis: rodHeight,
    label: 'below',
    shapes: [
      path('M8 14Q8 4 20 3H30Q42 6 44 22V38Q42 54 30 57H20Q8 56 8 46Z', 'body'),
      path('M25 3V16Q30 30 25 44V57', 'thin'),
      path(`M8 ${rodHeight}H44`, 'line'),
      path('M34 3V-3H42', 'thin'),
    ],
    anchors: ports.map((port) => ({
      port: port.id,
      edge: port.flow === 'in' ? 'left' : 'right',
      reach: { x: port.flow === 'in' ? 8 : 44, y: rodHeight },
    })),
  }),
};

export const inlineBooster: PartSymbol = {
  words: 'in-line booster',
  draw: ({ ports }) => ({
    width: 56,
    height: 44,
    label: 'right',
    shapes: [
      path('M2 10Q2 2 12 2H20Q30 4 30 14V30Q30 40 20 42H12Q2 42 2 34Z', 'body'),
      path('M16 2V42', 'thin'),
      rect([30, 14, 24, 16]),
      path('M16 22H40', 'line'),
      rect([38, 14, 5, 16], 'piston'),
    ],
    anchors: [
      ...pressureSide(
        ports.filter((port) => port.flow === 'in'),
        'top',
        14,
      ),
      ...pressureSide(
        ports.filter((port) => port.flow !== 'in'),
        'bottom',
        30,
      ),
    ],
  }),
};

/** Ports on the cylinder of an in-line booster, beside its vacuum shell. */
function pressureSide(ports: readonly PortUse[], edge: 'top' | 'bottom', y: number): Core['anchors'] {
  const places = spread(ports.length, 44, 10, 20);
  return leftToRight(ports).map((port, i) => ({ port: port.id, edge, reach: { x: places[i] ?? 44, y } }));
}

export const masterSingle: PartSymbol = { words: 'single master cylinder', draw: (subject) => master(subject, 1) };
export const masterTandem: PartSymbol = { words: 'tandem master cylinder', draw: (subject) => master(subject, 2) };

const chamberLength = 54;

function master({ node, ports }: SymbolSubject, chambers: 1 | 2): Core {
  const width = 14 + chambers * chamberLength;
  const top = rodHeight - 15;
  const bottom = rodHeight + 15;
  const details = detailsOf(node, 'chamber');
  const shapes: Shape[] = [rect([6, top, width - 6, 30, 3]), path(`M6 ${rodHeight}H14`)];
  const anchors: Omit<Anchor, 'at'>[] = [];
  for (let chamber = 0; chamber < chambers; chamber += 1) {
    const start = 14 + chamber * chamberLength;
    const part = details[chamber]?.id;
    shapes.push(rect([start + 10, top + 2, width - 2 - (start + 10), 26], 'fluid', part));
    shapes.push(rect([start, top, 9, 30], 'piston', part));
    if (chamber > 0) shapes.push(path(`M${start + 4} ${top}v30`, 'thin'));
    shapes.push(spring(start + 10, start + chamberLength - (chamber === chambers - 1 ? 1 : 0), rodHeight, 6, 5));
    const own = ports.filter((port) => chamberOf(port, node, chambers) === chamber);
    anchors.push(...chamberAnchors(own, start + 9 + (chamberLength - 9) / 2, top, bottom));
  }
  const rods = ports.filter((port) => port.id === 'rod');
  return {
    width,
    height: 54,
    axis: rodHeight,
    label: 'right',
    shapes,
    anchors: [
      ...anchors,
      ...rods.map((port) => ({ port: port.id, edge: 'left' as const, reach: { x: 6, y: rodHeight } })),
    ],
  };
}

function chamberOf(port: PortUse, node: PictureNode, chambers: number): number {
  if (port.id === 'rod') return -1;
  const found = detailsOf(node, 'chamber').findIndex((detail) => belongsTo(port, detail, node));
  return found < 0 ? 0 : Math.min(found, chambers - 1);
}

function chamberAnchors(
  own: readonly PortUse[],
  x: number,
  top: number,
  bottom: number,
): readonly Omit<Anchor, 'at'>[] {
  const feeds = leftToRight(own.filter((port) => port.flow === 'in'));
  const outlets = leftToRight(own.filter((port) => port.flow !== 'in'));
  const feedAt = spread(feeds.length, x, 16, 34);
  const outAt = spread(outlets.length, x, 16, 34);
  return [
    ...feeds.map((port, i) => ({ port: port.id, edge: 'top' as const, reach: { x: feedAt[i] ?? x, y: top } })),
    ...outlets.map((port, i) => ({ port: port.id, edge: 'bottom' as const, reach: { x: outAt[i] ?? x, y: bottom } })),
  ];
}

export const reservoir: PartSymbol = {
  words: 'reservoir',
  draw: ({ node, ports }) => {
    const compartments = detailsOf(node, 'compartment');
    const width = Math.max(64, compartments.length * 30, ports.length * 26);
    const walls = compartments.slice(1).map((_, i) => {
      const x = ((i + 1) * width) / compartments.length;
      return path(`M${x} 14V34`, 'thin');
    });
    return {
      width,
      height: 36,
      label: 'right',
      shapes: [
        rect([1, 12, width - 2, 22], 'fluid'),
        path(`M0 2V34H${width}V2`, 'line'),
        path(`M1 12H${width - 1}`, 'thin'),
        path(`M${width / 2 - 5} 4h10l-5 7z`, 'thin'),
        ...walls,
      ],
      anchors: row(ports, 'bottom', 34, width, 54),
    };
  },
};

export const parkingBrake: PartSymbol = {
  words: 'parking brake',
  draw: ({ ports }) => ({
    width: 68,
    height: 40,
    label: 'above',
    shapes: [
      path('M34 34L58 8', 'line'),
      path('M53 14L61 5', 'piston'),
      circle(34, 34, 4, 'body'),
      path('M44 36a14 14 0 0 0 -1 -11M46 31l4 0M45 27l4 -1', 'thin'),
    ],
    anchors: branchPorts(ports, [34, 34]),
  }),
};
