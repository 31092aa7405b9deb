/**
 * Tightening torques that public service manuals state for brake joints, each for its own vehicle: no standard fixes
 * them, so they show the range met and nothing more. The vehicle maker's manual is the rule.
 */

import { type Si, si } from '../quantity/dimension.ts';
import { published, type Source } from './source.ts';
import { sameTubeSize } from './tube-sizes.ts';
import { mm } from './written-units.ts';

export interface TorqueSeen {
  readonly joint: TorqueJoint;
  readonly low: Si<'torque'>;
  readonly high: Si<'torque'>;
  readonly source: Source;
}

/** `small-tube-nut`: a nut on 3/16 in or 4.75 mm tube that seals on a flare in the port. */
export type TorqueJoint = 'small-tube-nut' | 'banjo-bolt' | 'bleed-screw';

export const torquesSeen: readonly TorqueSeen[] = [
  row('small-tube-nut', 15, 15, 'flare nuts at hoses, master and wheel cylinders, in two passenger-car manuals'),
  row('small-tube-nut', 13, 13, 'pipe unions at a hydraulic unit, in a small-car manual'),
  row('small-tube-nut', 16, 16, 'pipe nuts with 12 mm hexagon at an anti-lock unit, in an electric-car manual'),
  row('small-tube-nut', 19, 19, 'line fittings at master cylinder and junction block, in a 1998 light-truck manual'),
  row('small-tube-nut', 21, 21, 'pipe fittings at combination valve and master cylinder, in a 2008 car manual'),
  row('banjo-bolt', 27, 27, 'banjo bolt, in a 1998 light-truck manual'),
  row('banjo-bolt', 34, 34, 'banjo bolt, in a passenger-car manual'),
  row('bleed-screw', 7, 9.8, 'bleed screws, in passenger-car manuals'),
];

function row(joint: TorqueJoint, low: number, high: number, text: string): TorqueSeen {
  return { joint, low: newtonMetres(low), high: newtonMetres(high), source: published(text) };
}

function newtonMetres(torque: number): Si<'torque'> {
  return si('torque', torque);
}

export interface TorqueRange {
  readonly low: Si<'torque'>;
  readonly high: Si<'torque'>;
  readonly source: Source;
}

/** The least and the most that the manuals state for a joint, in N·m. */
export function torqueRange(joint: TorqueJoint): TorqueRange {
  const rows = torquesSeen.filter((each) => each.joint === joint);
  return {
    low: si('torque', Math.min(...rows.map(({ low }) => low))),
    high: si('torque', Math.max(...rows.map(({ high }) => high))),
    source: published(`range of ${rows.length} figures in public service manuals, each for its own vehicle`),
  };
}

/** For the nut on a tube (outside diameter in m) in a port that seals inside; undefined where no figure was seen. */
export function tubeNutTorque(tubeOd: Si<'length'>): TorqueRange | undefined {
  return sameTubeSize(tubeOd, mm(4.75)) ? torqueRange('small-tube-nut') : undefined;
}
