/** Symbols of other consumers: clutch slave cylinder and plain actuator. */
import { type PartSymbol, path, rect } from './drawing.ts';
import { row } from './ports.ts';

export const clutchSlave: PartSymbol = {
  words: 'clutch slave cylinder',
  draw: ({ ports }) => ({
    width: 70,
    height: 34,
    label: 'below',
    shapes: [
      rect([2, 6, 42, 22, 2]),
      rect([4, 8, 18, 18], 'fluid'),
      rect([22, 6, 7, 22], 'piston'),
      path('M29 17H62', 'line'),
      path('M66 4L60 17L66 30', 'line'),
    ],
    anchors: row(ports, 'top', 6, 26),
  }),
};

export const actuator: PartSymbol = {
  words: 'cylinder',
  draw: ({ ports }) => ({
    width: 34,
    height: 62,
    label: 'right',
    shapes: [
      rect([4, 3, 26, 42, 2]),
      rect([6, 5, 22, 14], 'fluid'),
      rect([4, 19, 26, 7], 'piston'),
      path('M17 26V60M11 60H23', 'line'),
    ],
    anchors: row(ports, 'top', 3, 34),
  }),
};
