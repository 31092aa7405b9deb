/** The rules that look at the circuit as a whole, its lines and its values, in the order in which a reader meets them. */
import { aluminiumTube } from './aluminium-tube.ts';
import { bendTight } from './bend-tight.ts';
import { clipsApart } from './clips-apart.ts';
import { copperTube } from './copper-tube.ts';
import { hoseAge } from './hose-age.ts';
import { hoseTooShort } from './hose-too-short.ts';
import { lengthDisagrees } from './length-disagrees.ts';
import { magnitude } from './magnitude.ts';
import { mixedFluid } from './mixed-fluid.ts';
import { noBleeder } from './no-bleeder.ts';
import { residualOnDisc } from './residual-on-disc.ts';
import { rigidOverSprung } from './rigid-over-sprung.ts';
import { ring } from './ring.ts';
import type { Rule } from './rule.ts';
import { shortStraight } from './short-straight.ts';
import { singlePointOfFailure } from './single-point-of-failure.ts';
import { splitDisagrees } from './split-disagrees.ts';
import { tubeStrength } from './tube-strength.ts';
import { twoChambers } from './two-chambers.ts';
import { unfedWheel } from './unfed-wheel.ts';
import { unstatedPaths } from './unstated-paths.ts';
import { unused } from './unused.ts';
import { unworkableRoute } from './unworkable-route.ts';
import { valveDirection } from './valve-direction.ts';
import { wheelUnknown } from './wheel-unknown.ts';
import { wornOut } from './worn-out.ts';

export const circuitRules: readonly Rule[] = [
  unfedWheel,
  noBleeder,
  singlePointOfFailure,
  splitDisagrees,
  twoChambers,
  ring,
  valveDirection,
  residualOnDisc,
  mixedFluid,
  wheelUnknown,
  unstatedPaths,
  rigidOverSprung,
  hoseTooShort,
  bendTight,
  unworkableRoute,
  shortStraight,
  lengthDisagrees,
  clipsApart,
  aluminiumTube,
  copperTube,
  tubeStrength,
  hoseAge,
  wornOut,
  magnitude,
  unused,
];
