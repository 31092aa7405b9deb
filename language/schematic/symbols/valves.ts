/** Symbols of valves and switches: square control elements, after the ideas of ISO 1219-1. */
import { circle, type PartSymbol, path, rect, spring, word } from './drawing.ts';
import { row, throughPorts } from './ports.ts';

export const checkValve: PartSymbol = {
  words: 'check valve',
  draw: ({ ports }) => ({
    width: 30,
    height: 34,
    label: 'right',
    shapes: [
      path('M5 8L15 20L25 8', 'line'),
      circle(15, 11, 5.5, 'body'),
      path('M15 20V34', 'line'),
      path('M15 0V5', 'line'),
    ],
    anchors: throughPorts(ports, { width: 30, top: 0, bottom: 34 }),
  }),
};

export const residualValve: PartSymbol = {
  words: 'residual-pressure valve',
  draw: ({ ports }) => ({
    width: 34,
    height: 40,
    label: 'right',
    shapes: [
      rect([1, 1, 32, 38]),
      path('M17 1V9M17 25V39', 'line'),
      path('M8 25L17 12L26 25', 'line'),
      circle(17, 21, 4.5, 'body'),
      path('M17 26l-4 2l8 3l-8 3l4 2', 'thin'),
    ],
    anchors: throughPorts(ports, { width: 34, top: 1, bottom: 39 }),
  }),
};

/** The square with an arrow that closes against a spring, sensed from the outlet. */
export const proportioningValve: PartSymbol = {
  words: 'proportioning valve',
  draw: ({ ports }) => ({
    width: 54,
    height: 40,
    label: 'right',
    shapes: [
      rect([10, 4, 32, 32]),
      path('M26 4V30', 'line'),
      path('M26 35l-4.5 -8h9z', 'solid'),
      spring(42, 54, 20, 5, 4),
      path('M26 38H3V20H10', 'dashed'),
      path('M38 9L14 31', 'thin'),
    ],
    anchors: throughPorts(ports, { width: 52, top: 4, bottom: 36 }),
  }),
};

/** Held shut by a spring until the inlet overcomes it. */
export const meteringValve: PartSymbol = {
  words: 'metering valve',
  draw: ({ ports }) => ({
    width: 54,
    height: 40,
    label: 'right',
    shapes: [
      rect([10, 4, 32, 32]),
      path('M31 10V24', 'line'),
      path('M31 30l-4.5 -8h9z', 'solid'),
      path('M26 4V9M26 31V36', 'line'),
      spring(42, 54, 20, 5, 4),
      path('M26 2H3V20H10', 'dashed'),
    ],
    anchors: throughPorts(ports, { width: 52, top: 4, bottom: 36 }),
  }),
};

/** A spool between two circuits, with its warning switch. */
export const pressureDifferentialValve: PartSymbol = {
  words: 'pressure-differential valve',
  draw: ({ ports }) => ({
    width: 84,
    height: 40,
    label: 'right',
    shapes: [
      rect([0, 14, 84, 22]),
      path('M30 25H54', 'line'),
      rect([18, 16, 14, 18], 'piston'),
      rect([52, 16, 14, 18], 'piston'),
      spring(2, 17, 25, 5, 3),
      spring(67, 82, 25, 5, 3),
      path('M42 14V8M38 8H46L44 2', 'thin'),
      circle(42, 25, 2.5, 'body'),
    ],
    anchors: throughPorts(ports, { width: 84, top: 14, bottom: 36, gap: 54 }),
  }),
};

/** A unit whose inside the file does not describe: an enclosure in chain line. */
export const opaqueBlock: PartSymbol = {
  words: 'closed unit',
  draw: ({ ports }) => {
    const most = Math.max(
      ports.filter((port) => port.flow === 'in').length,
      ports.filter((port) => port.flow !== 'in').length,
    );
    const width = Math.max(72, most * 22 + 12);
    return {
      width,
      height: 48,
      label: 'right',
      shapes: [rect([0, 2, width, 44, 2], 'body'), path(`M6 8H${width - 6}V40H6Z`, 'dashed'), word(width / 2, 28, '?')],
      anchors: throughPorts(ports, { width, top: 2, bottom: 46, gap: 22 }),
    };
  },
};

export const pressureSwitch: PartSymbol = {
  words: 'switch',
  draw: ({ ports }) => ({
    width: 30,
    height: 36,
    label: 'right',
    shapes: [circle(15, 18, 13, 'body'), path('M7 22H12M18 22H23M12 22L19 14', 'line'), path('M15 5V10', 'thin')],
    anchors: row(ports, 'top', 5, 30),
  }),
};
