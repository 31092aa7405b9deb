/** tube-strength: a tube that bears too little against the highest pressure read in its circuit. */

import { pressuresReadIn, type StatedPressure } from '../figures/highest-pressure.ts';
import type { Figures } from '../figures/index.ts';
import { writeResult } from '../figures/index.ts';
import { writeEstimate } from '../quantity/index.ts';
import { burstingFactor } from '../standards/tube-strength-rules.ts';
import type { Part } from '../system/part.ts';
import { allParts } from '../system/system.ts';
import { placeOfFact } from './joints/own-statement.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';

const pressed = (pressure: string, tube = '3/16 in wall 0.028 in steel') => `master main single {
  port out: 3/8-24 inverted-flare
  ${pressure === '' ? '' : `2026-03-01 line-pressure ${pressure}`}
}
run line {
  tube ${tube}
  nut 3/8-24
  flare double-45
  from main.out
}
`;

export const tubeStrength: Rule = {
  code: 'tube-strength',
  severity: 'warning',
  acceptable: true,
  question: 'Does the tube bear the pressure of its circuit several times over?',
  why: 'Tube loses strength to rust, bends and age. The margin between the pressure it works at and the one it bursts at is what is left for them.',
  source: burstingFactor.source,
  fires: [
    { title: 'a pressure above a quarter of what the tube bursts at', text: pressed('250 bar') },
    { title: 'a wall that is too thin for the pressure', text: pressed('120 bar', '3/8 in wall 0.020 in copper') },
    { title: 'a pressure above bursting: an error', text: pressed('900 bar') },
  ],
  silent: [
    { title: 'a pressure of a hard stop', text: pressed('80 bar') },
    { title: 'a pressure that was not read', text: pressed('') },
    { title: 'tube of which the wall is not known', text: pressed('250 bar', '3/16 in wall ? steel') },
    { title: 'tube of a material that is not stated', text: pressed('250 bar', '3/16 in wall 0.028 in') },
  ],
  check: ({ system, figures }) => {
    const highestPressureAt = pressuresReadIn(system);
    return oncePerPlace(
      allParts(system)
        .filter(({ kind }) => kind === 'run')
        .flatMap((run) => remarksOn(run, highestPressureAt(run), figures)),
    );
  },
};

function remarksOn(run: Part, stated: StatedPressure | undefined, figures: Figures): readonly Remark[] {
  const factor = figures.find(run.id, 'run.burst-factor');
  const burst = figures.find(run.id, 'run.burst-barlow');
  if (factor?.result.kind !== 'known' || burst === undefined || stated === undefined || run.tube === undefined)
    return [];
  // Certain only if the best that the limits leave is still too little.
  const { high } = factor.result.estimate;
  if (!(high < burstingFactor.least)) return [];
  const { pressure, written, where, origin } = stated;
  return [
    {
      severity: high < 1 ? 'error' : 'warning',
      message: `${run.label} bursts at ${writeResult(burst)} (Barlow, least strength of its material), and ${writeEstimate(pressure, { like: written })} was read on ${where}: a factor of ${writeResult(factor)}. Hydraulic lines are given at least ${burstingFactor.least}. Check the reading; then take a thicker wall, a smaller or a stronger tube.`,
      origin: placeOfFact(run.tube.origin, run),
      subject: run.id,
      related: [{ message: 'the reading', origin }],
    },
  ];
}
