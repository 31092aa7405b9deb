/** Rows of the kinds that carry fluid from one port to another: runs of tube, hoses, low-pressure hoses. */
import type { KindRow } from './kind-row.ts';
import * as p from './properties.ts';

export const lines: readonly KindRow[] = [
  {
    keyword: 'run',
    title: 'a run of tube',
    about: 'One piece of rigid tube with a nut and a flare at each end.',
    within: ['file', 'drum-brake', 'disc-brake'],
    properties: [p.length, p.bendRadius, p.sleeve, p.rating, p.partNumber],
    ports: { least: 0, most: 0 },
    fluid: 'joined',
    symbol: 'line',
  },
  {
    keyword: 'hose',
    title: 'a brake hose',
    about:
      'A flexible hose between places that move against each other. Each end says its thread, seat and whether it swivels.',
    within: ['file', 'drum-brake', 'disc-brake'],
    properties: [p.length, p.bore, p.expansion, p.rating, p.dated, p.bendRadius, p.partNumber],
    ports: { least: 0, most: 0 },
    fluid: 'joined',
    symbol: 'line',
  },
  {
    keyword: 'feed-hose',
    title: 'a low-pressure feed hose',
    about: 'A hose from the reservoir to the master, on the low-pressure side of the seals.',
    within: ['file'],
    properties: [p.length, p.bore, p.dated, p.partNumber],
    ports: { least: 0, most: 0 },
    fluid: 'joined',
    symbol: 'line',
  },
];
