/** How tightly brake tube may be bent, in levels from what kinks to what a guide would like; radii to the centre line. */

import { type Si, si } from '../quantity/dimension.ts';
import { commonPractice, published, type Source } from './source.ts';
import { sameTubeSize } from './tube-sizes.ts';
import { mm } from './written-units.ts';

/** `stop`: likely to kink or crack; `rule`: below the rule of thumb; `avoid`: at need only; `guide`: a guide asks for more. */
export type BendLevel = 'stop' | 'rule' | 'avoid' | 'guide';

export interface BendLimit {
  readonly level: BendLevel;
  /** Bends below this radius are of this level or worse. */
  readonly radius: Si<'length'>;
  readonly words: string;
  readonly source: Source;
}

const threeDiameters = (tubeOd: Si<'length'>): BendLimit => ({
  level: 'rule',
  radius: si('length', 3 * tubeOd),
  words: 'less than three times the tube’s outside diameter, the rule of thumb with a bender',
  source: commonPractice('centre-line radius of three outside diameters'),
});

/** 4.75 mm (3/16 in) tube is the only size with published figures. */
const smallTube: readonly BendLimit[] = [
  {
    level: 'stop',
    radius: mm(12),
    words: 'less than 12 mm, the least that a vehicle maker allows',
    source: published('a vehicle maker’s workshop manual: minimum 12 mm'),
  },
  {
    level: 'avoid',
    radius: mm(20),
    words: 'less than 20 mm, which a vehicle maker asks to avoid',
    source: published('a vehicle maker’s workshop manual: below 20 mm to be avoided'),
  },
  {
    level: 'guide',
    radius: mm(25),
    words: 'less than 25 mm, the least in a guide for 4.75 mm steel pipe',
    source: published('DIN 74234 guide for 4.75 × 0.7 mm steel pipe, in a lift-truck manual'),
  },
];

const pinched = (tubeOd: Si<'length'>): BendLimit => ({
  level: 'stop',
  radius: si('length', 1.5 * tubeOd),
  words: 'less than one and a half times the tube’s outside diameter, where a quarter of the outer wall is drawn away',
  source: commonPractice('wall thinning D/(2R + D) at the outside of a bend; no published figure for this size'),
});

/** The limits for a tube (outside diameter in metres, positive), the tightest first. */
export function bendLimits(tubeOd: Si<'length'>): readonly BendLimit[] {
  const own = sameTubeSize(tubeOd, mm(4.75)) ? smallTube : [pinched(tubeOd)];
  return [...own, threeDiameters(tubeOd)].sort((a, b) => a.radius - b.radius);
}

/** The worst limit that a bend of this centre-line radius (metres) breaks on this tube; undefined when it breaks none. */
export function bendLimitBroken(radius: Si<'length'>, tubeOd: Si<'length'>): BendLimit | undefined {
  return bendLimits(tubeOd).find((limit) => radius < limit.radius - 1e-9);
}
