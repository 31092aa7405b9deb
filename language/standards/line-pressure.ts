/** Pressures against which a line pressure in a file is judged: what brakes use, and what hoses are proved at. */

import type { Si } from '../quantity/dimension.ts';
import { commonPractice, fromMemory, published, type Source } from './source.ts';
import { megapascal, psi } from './written-units.ts';

export interface PressureMark {
  readonly words: string;
  readonly pressure: Si<'pressure'>;
  readonly source: Source;
}

/** Marks in rising order. */
export const pressureMarks = {
  hardStopWithoutBooster: {
    words: 'what an unassisted brake reaches in a hard stop',
    pressure: psi(1000),
    source: commonPractice('600 psi to 1000 psi at a hard stop, in several trade articles'),
  },
  panicWithBooster: {
    words: 'what an assisted brake reaches in a panic stop',
    pressure: psi(1500),
    source: commonPractice('1200 psi to 1500 psi with a booster, in several trade articles'),
  },
  highestInService: {
    words: 'the most that a strong booster or an anti-lock unit makes',
    pressure: megapascal(20),
    source: fromMemory('15 MPa to 20 MPa with a booster or an anti-lock unit'),
  },
  hoseProof: {
    words: 'the pressure that every brake hose must hold for two minutes',
    pressure: psi(4000),
    source: published('49 CFR 571.106 S5.3.2'),
  },
  hoseBurst: {
    words: 'the pressure at which hose over 1/8 in bore may burst',
    pressure: psi(5000),
    source: published('49 CFR 571.106 S5.3.2'),
  },
} as const satisfies Readonly<Record<string, PressureMark>>;

/** The highest mark that a line pressure (gauge, Pa) exceeds; undefined at or below the first. */
export function pressureMarkExceeded(pressure: Si<'pressure'>): PressureMark | undefined {
  return Object.values(pressureMarks)
    .filter((mark) => pressure > mark.pressure)
    .at(-1);
}
