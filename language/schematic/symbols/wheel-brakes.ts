/** Symbols of wheel brakes: drum or disc with the cylinders, bleeders and parking-brake part that the file names. */
import type { PictureDetail, PictureNode } from '../picture.ts';
import {
  type Anchor,
  belongsTo,
  type Core,
  circle,
  detailsOf,
  type Edge,
  leftToRight,
  type PartSymbol,
  type PortUse,
  path,
  rect,
  type Shape,
  spread,
} from './drawing.ts';

/** The port that the cable of the parking brake pulls at. */
export const parkingPort = 'parking-brake';

type Seat = Omit<Anchor, 'at'>;

const size = 76;
const middle = size / 2;
const hub = 42;

export const drumBrake: PartSymbol = {
  words: 'drum brake',
  draw: ({ node, ports }) => {
    const cylinders = topFirst(detailsOf(node, 'cylinder'));
    const levels = cylinders.length > 1 ? [20, 64] : [20];
    return wheel(node, ports, {
      cylinders,
      levels,
      halfWidth: 13,
      shapes: [
        circle(middle, hub, 34, 'body'),
        circle(middle, hub, 30, 'thin'),
        path(`M${middle - 12} 23A22 22 0 0 0 ${middle - 12} 61`, 'line'),
        path(`M${middle + 12} 23A22 22 0 0 1 ${middle + 12} 61`, 'line'),
        circle(middle, hub, 4.5, 'thin'),
        ...(cylinders.length > 1
          ? []
          : [path(`M${middle - 12} 62H${middle + 12}`, 'thin'), circle(middle, 62, 3.5, 'body')]),
        ...levels.flatMap((y, i) => wheelCylinder(y, cylinders[i]?.id)),
      ],
    });
  },
};

export const discBrake: PartSymbol = {
  words: 'disc brake',
  draw: ({ node, ports }) => {
    const calipers = topFirst([...detailsOf(node, 'caliper'), ...detailsOf(node, 'cylinder')]);
    const levels = calipers.length > 1 ? [17, 67] : [17];
    return wheel(node, ports, {
      cylinders: calipers,
      levels,
      halfWidth: 17,
      shapes: [
        circle(middle, hub, 30, 'body'),
        circle(middle, hub, 12, 'thin'),
        circle(middle, hub, 4, 'thin'),
        ...levels.flatMap((y, i) => caliper(y, calipers[i]?.id)),
      ],
    });
  },
};

/** The one that is called upper stands at the top, else the first in the text. */
function topFirst(cylinders: readonly PictureDetail[]): readonly PictureDetail[] {
  const height = ({ id }: PictureDetail) =>
    /(upper|top)[^.]*$/i.test(id) ? 0 : /(lower|bottom)[^.]*$/i.test(id) ? 2 : 1;
  return [...cylinders].sort((a, b) => height(a) - height(b));
}

function wheelCylinder(y: number, part: string | undefined): readonly Shape[] {
  return [
    rect([middle - 13, y - 7, 26, 14, 2], 'body', part),
    rect([middle - 10, y - 5, 4, 10], 'piston', part),
    rect([middle + 6, y - 5, 4, 10], 'piston', part),
  ];
}

function caliper(y: number, part: string | undefined): readonly Shape[] {
  const inner = y < hub ? y + 1 : y - 11;
  return [
    rect([middle - 17, y - 9, 34, 18, 3], 'body', part),
    rect([middle - 12, inner, 8, 10], 'piston', part),
    rect([middle + 4, inner, 8, 10], 'piston', part),
  ];
}

interface Wheel {
  readonly cylinders: readonly PictureDetail[];
  /** Heights of the cylinders in the symbol. */
  readonly levels: readonly number[];
  readonly halfWidth: number;
  readonly shapes: readonly Shape[];
}

function wheel(node: PictureNode, ports: readonly PortUse[], parts: Wheel): Core {
  const bleeders = detailsOf(node, 'bleeder').map((bleeder, i) => nipple(node, bleeder, i, parts));
  return {
    width: size,
    height: size + 2,
    label: 'below',
    shapes: [...parts.shapes, ...bleeders, ...parkingLever(node)],
    anchors: seats(node, ports, parts),
  };
}

/** A bleed nipple on the outer side of the cylinder that it vents. */
function nipple(
  node: PictureNode,
  bleeder: PictureDetail,
  index: number,
  { cylinders, levels, halfWidth }: Wheel,
): Shape {
  const owner = cylinders.findIndex((cylinder) => bleeder.id.startsWith(`${cylinder.id}.`));
  const level = levels[owner < 0 ? Math.min(index, levels.length - 1) : Math.min(owner, levels.length - 1)] ?? 20;
  const way = outboard(node) === 'left' ? -1 : 1;
  const x = middle + way * halfWidth;
  return path(`M${x} ${level - 3}l${way * 6} -5M${x + way * 4} ${level - 11}l${way * 5} 6`, 'line', bleeder.id);
}

function parkingLever(node: PictureNode): readonly Shape[] {
  return detailsOf(node, 'parking-brake').map((part) => {
    const way = outboard(node) === 'left' ? 1 : -1;
    return path(`M${middle + way * 8} 52L${middle + way * 38} 52M${middle + way * 8} 48v8`, 'thin', part.id);
  });
}

const outboard = (node: PictureNode): Edge => (node.side === 'right' ? 'right' : 'left');
const inboard = (node: PictureNode): Edge => (node.side === 'right' ? 'left' : 'right');

function seats(node: PictureNode, ports: readonly PortUse[], wheelParts: Wheel): readonly Seat[] {
  const { cylinders, levels, halfWidth } = wheelParts;
  const parking = ports.filter(({ id }) => id === parkingPort);
  const fluid = ports.filter((port) => !parking.includes(port));
  const levelOf = (port: PortUse) => {
    const owner = cylinders.findIndex((cylinder) => belongsTo(port, cylinder, node));
    return levels[Math.min(Math.max(owner, 0), levels.length - 1)] ?? 20;
  };
  const atTop = leftToRight(fluid.filter((p) => (p.flow === 'in' || p.flow === 'idle') && levelOf(p) === levels[0]));
  const places = spread(atTop.length, middle, 14, halfWidth * 2 - 8);
  const top = (levels[0] ?? 20) - (halfWidth > 14 ? 9 : 7);
  const flank = (port: PortUse, edge: Edge, y: number): Seat => ({
    port: port.id,
    edge,
    reach: { x: middle + (edge === 'left' ? -halfWidth : halfWidth), y },
  });
  return [
    ...atTop.map((port, i): Seat => ({ port: port.id, edge: 'top', reach: { x: places[i] ?? middle, y: top } })),
    ...fluid
      .filter((port) => !atTop.includes(port))
      .map((port) => flank(port, port.flow === 'loop' ? outboard(node) : inboard(node), levelOf(port))),
    ...parking.map(
      (port): Seat => ({
        port: port.id,
        edge: inboard(node),
        reach: { x: inboard(node) === 'left' ? 0 : size, y: 52 },
      }),
    ),
  ];
}
