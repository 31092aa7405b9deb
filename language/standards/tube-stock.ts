/** How brake tube is sold and what is lost in cutting it: where a cutting plan starts unless the writer says otherwise. */

import { commonPractice } from './source.ts';
import { inch, mm } from './written-units.ts';

export const tubeStock = {
  /** 25 ft, the usual roll. */
  coil: inch(300),
  coilSource: commonPractice('brake tube is sold in rolls of 25 ft (7.62 m); straight lengths differ by shop'),
  /** A wheel cutter takes no chips, but its end is faced square before it is flared. */
  kerf: mm(1),
  kerfSource: commonPractice('1 mm a cut for the cutter and for facing the end square'),
  /** Long enough to hold in a flaring bar and to flare at both ends. */
  testPiece: mm(100),
  testPieceSource: commonPractice('100 mm (4 in) of each tube for a test flare at both ends'),
} as const;
