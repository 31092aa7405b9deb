/** What each valve lets through, from the facts that the file states of it. */
import { type Estimate, type Si, si } from '../../quantity/index.ts';
import { type MeasureRow, properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import { amountOf, needOf } from './sizes.ts';
import { against, type End, type Marks, marksOf, unmarked } from './spread.ts';
import { checked, lineBoosted, metered, proportioned } from './valve-laws.ts';

export interface ValveCurve {
  /** Gauge pressure behind it; undefined where a fact is missing that would be needed to tell. Rises with the inlet. */
  outlet(inlet: Si<'pressure'>, end: End): Si<'pressure'> | undefined;
  readonly needs: readonly Need[];
  readonly assumptions: readonly string[];
  readonly marks: Marks;
}

const nothing = si('pressure', 0);

/** `failed` is for a booster that does not help. */
export function valveCurve(valve: Part, way: { readonly backwards: boolean; readonly failed: boolean }): ValveCurve {
  if (way.backwards) return backwardsCurve(valve);
  switch (valve.kind) {
    case 'proportioning-valve':
      return proportioningCurve(valve);
    case 'metering-valve':
      return meteringCurve(valve);
    case 'check-valve':
      return checkCurve(valve);
    case 'booster':
      return way.failed ? passing([`${valve.label} does not help.`]) : boosterCurve(valve);
    case 'residual-valve':
      return passing([
        `${valve.label} passes the pressure on as it is; what it holds from an application before is not counted.`,
      ]);
    default:
      return passing([]);
  }
}

/** A valve that changes nothing while the pedal goes down. */
function passing(assumptions: readonly string[]): ValveCurve {
  return { outlet: (inlet) => inlet, needs: [], assumptions, marks: unmarked };
}

function backwardsCurve(valve: Part): ValveCurve {
  if (valve.kind === 'check-valve') {
    const assumptions = [`${valve.label} lets nothing pass from out to in.`];
    return { outlet: () => nothing, needs: [], assumptions, marks: unmarked };
  }
  const needs = [{ name: `what ${valve.label} does with flow from out to in`, origin: valve.nameOrigin }];
  return { outlet: () => undefined, needs, assumptions: [], marks: unmarked };
}

function proportioningCurve(valve: Part): ValveCurve {
  const splitPoint = factOf(valve, properties.splitPoint);
  const slope = factOf(valve, properties.slope);
  return {
    outlet: (inlet, end) => {
      if (splitPoint.estimate === undefined) return undefined;
      if (inlet <= splitPoint.estimate[end]) return inlet;
      if (slope.estimate === undefined) return undefined;
      return proportioned(inlet, splitPoint.estimate[end], slope.estimate[end]);
    },
    needs: [...splitPoint.needs, ...slope.needs],
    assumptions: [`${valve.label} follows its rising line; on the way back it lets go later.`],
    marks: marksIn([splitPoint.estimate, slope.estimate]),
  };
}

function meteringCurve(valve: Part): ValveCurve {
  const opensAt = factOf(valve, properties.opensAt);
  const fullAt = factOf(valve, properties.fullAt);
  return {
    outlet: (inlet, end) => {
      if (fullAt.estimate !== undefined && inlet >= fullAt.estimate[against[end]]) return inlet;
      if (opensAt.estimate === undefined) return undefined;
      if (inlet <= opensAt.estimate[against[end]]) return nothing;
      if (fullAt.estimate === undefined) return undefined;
      return metered(inlet, opensAt.estimate[against[end]], fullAt.estimate[against[end]]);
    },
    needs: [...opensAt.needs, ...fullAt.needs],
    assumptions: [`${valve.label} opens on a straight line from where it begins to pass to where it passes all.`],
    marks: marksIn([opensAt.estimate, fullAt.estimate]),
  };
}

function checkCurve(valve: Part): ValveCurve {
  const cracking = amountOf(valve, properties.crackingPressure);
  if (cracking === undefined) {
    return passing([`${valve.label} opens without pressure: what opens it is not stated.`]);
  }
  return {
    outlet: (inlet, end) => checked(inlet, cracking[against[end]]),
    needs: [],
    assumptions: [],
    marks: marksIn([cracking]),
  };
}

function boosterCurve(valve: Part): ValveCurve {
  const gain = factOf(valve, properties.gain);
  const knee = factOf(valve, properties.knee);
  return {
    outlet: (inlet, end) => {
      if (gain.estimate === undefined || knee.estimate === undefined) return undefined;
      return lineBoosted(inlet, gain.estimate[end], knee.estimate[end]);
    },
    needs: [...gain.needs, ...knee.needs],
    assumptions: [`${valve.label} gives as much fluid as it takes, and helps from the first pressure on.`],
    marks: marksIn([gain.estimate, knee.estimate]),
  };
}

function factOf<D extends 'pressure' | 'number'>(part: Part, row: MeasureRow<D>) {
  const estimate = amountOf(part, row);
  const needs: readonly Need[] = estimate === undefined ? [needOf(part, row)] : [];
  return { estimate, needs };
}

function marksIn(estimates: readonly (Estimate | undefined)[]): Marks {
  return marksOf(estimates.filter((estimate) => estimate !== undefined));
}
