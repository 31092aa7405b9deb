/** The bends of a run as they are worked at the bench: in order, each with its marks measured from end A (`from`). */
import { type Estimate, exactly, isKnown, si, sumEstimates } from '../quantity/index.ts';
import type { Part } from '../system/part.ts';
import { developmentOf } from './run-route.ts';

type Length = Estimate<'length'> | undefined;

/** Lengths in m along the centre line, angles in rad; undefined for what is not known or cannot be. */
export interface BendRow {
  /** Counted from 1. */
  readonly number: number;
  /** Straight tube from the end, or from where the bend before it ends; without coils. */
  readonly straight: Length;
  /** From the finished flare face of end A to where the bend begins, and to where it ends. */
  readonly start: Length;
  readonly end: Length;
  /** Roll from the plane of the bend before, right-handed along the way from A to B, in (-π, π]; zero for the first. */
  readonly rotation: Estimate<'angle'> | undefined;
  readonly angle: Estimate<'angle'> | undefined;
  readonly radius: Length;
}

export interface BendTable {
  readonly bends: readonly BendRow[];
  /** Straight tube behind the last bend, or all of a route without bends. */
  readonly lastStraight: Length;
}

/** The table of a run; undefined for a run without a route, or with one of which nothing can be laid out. */
export function bendTable(run: Part): BendTable | undefined {
  const development = developmentOf(run);
  if (development === undefined || development.straights.length === 0) return undefined;
  const { bends, straights } = development;
  return {
    bends: bends.map(({ start, angle, radius, rotation, arc }, index) => ({
      number: index + 1,
      straight: straights[index],
      start,
      end: reach(start, arc),
      rotation: rotation && withinHalfTurn(rotation),
      angle,
      radius,
    })),
    lastStraight: straights[bends.length],
  };
}

function reach(start: Length, arc: Length): Length {
  if (start === undefined || arc === undefined) return undefined;
  const end = sumEstimates('length', [start, arc]);
  return isKnown(end) ? end : undefined;
}

/** The same roll without whole turns in it, limits moved along. */
function withinHalfTurn(rotation: Estimate<'angle'>): Estimate<'angle'> {
  if (!isKnown(rotation)) return rotation;
  const turns = Math.ceil((rotation.value - Math.PI) / (2 * Math.PI) - 1e-9);
  if (turns === 0) return rotation;
  return sumEstimates('angle', [rotation, exactly(si('angle', -turns * 2 * Math.PI))]);
}
