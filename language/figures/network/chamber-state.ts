/** How far a chamber's piston goes and what pressure it makes, pushed by a force, against its circuit and its stop. */
import { type Estimate, si } from '../../quantity/index.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { chamberArea } from '../chamber.ts';
import type { FigureContext } from '../context.ts';
import type { Need } from '../figure.ts';
import { givenFact, givenFigure } from '../given.ts';
import type { CircuitModel } from './circuit-model.ts';
import { shareClosed } from './displacement-laws.ts';
import { pressureUnder } from './pedal-laws.ts';
import type { Pressing } from './pressing.ts';
import { amountOf } from './sizes.ts';
import { against, type End, type Ends } from './spread.ts';

export interface ChamberModel {
  readonly part: Part;
  readonly circuit: CircuitModel;
  /** m² */
  readonly area: Estimate<'area'> | undefined;
  readonly stroke: Estimate<'length'> | undefined;
  readonly cutOff: Estimate<'length'> | undefined;
  /** Without these no pressure. */
  readonly areaNeeds: readonly Need[];
  readonly strokeNeeds: readonly Need[];
}

export function chamberModel(part: Part, circuit: CircuitModel, context: FigureContext): ChamberModel {
  const figure = chamberArea(part, context);
  const area = figure && givenFigure(figure, part);
  const stroke = givenFact(part, properties.stroke);
  return {
    part,
    circuit,
    area: area?.kind === 'given' ? area.estimate : undefined,
    stroke: stroke.kind === 'given' ? stroke.estimate : undefined,
    cutOff: amountOf(part, properties.cutOff),
    areaNeeds: [...(area?.kind === 'missing' ? area.needs : []), ...circuit.faults, ...undividedTandem(part)],
    strokeNeeds: stroke.kind === 'missing' ? stroke.needs : [],
  };
}

/** A tandem of which the file does not write the chambers: nothing says which of them presses which line. */
function undividedTandem(part: Part): readonly Need[] {
  if (part.variant !== 'tandem') return [];
  return [{ name: `primary and secondary chamber of ${part.label}`, origin: part.nameOrigin }];
}

/** `open`: its fluid escapes. Pressures in Pa, lengths in m, forces in N. */
export interface Pushed {
  pressure(force: Ends, end: End): number;
  stroke(force: Ends, end: End): number;
  /** m³ that leave the chamber: what lies behind the closed port, swept. */
  displaced(force: Ends): number;
  bottomed(force: Ends): boolean;
}

/**
 * A chamber of a single or tandem master. The piston of each finds the same force before it whatever the other one does:
 * a primary that has run onto the secondary passes on what its fluid does not hold, a secondary on its stop holds the
 * force that its fluid does not. So each is force over area, as long as its stroke lasts, and from its stop on the
 * pressure at which its circuit takes what the whole stroke displaces. Source: statics of the pistons.
 */
export function pushedChamber(
  chamber: ChamberModel & { readonly area: Estimate<'area'> },
  pressing: Pressing,
  state: { readonly open: boolean },
): Pushed {
  const { area, stroke, cutOff } = chamber;
  const free = (force: Ends, end: End) => pressureUnder(si('force', force[end]), area[against[end]]);
  const capacity = (end: End) =>
    stroke === undefined
      ? Number.POSITIVE_INFINITY
      : area[end] * Math.max(0, stroke[end] - (cutOff?.[against[end]] ?? 0));
  const pressure = (force: Ends, end: End): number => {
    if (state.open) return 0;
    const unhindered = free(force, end);
    if (pressing.takes(unhindered, against[end]) <= capacity(end)) return unhindered;
    return pressing.pressureFor(capacity(end), unhindered, against[end]);
  };
  // Before there is any force nothing has moved: what moves at once does so over the same small pressure as a gap.
  const begun = (force: Ends, end: End) => shareClosed(free(force, end));
  const unlimited = (force: Ends, end: End): number => {
    if (state.open) return Number.POSITIVE_INFINITY;
    const taken = pressing.takes(si('pressure', pressure(force, end)), end);
    return begun(force, end) * (cutOff?.[end] ?? 0) + taken / area[against[end]];
  };
  const stop = stroke ?? { low: Infinity, value: Infinity, high: Infinity };
  const strokeAt = (force: Ends, end: End): number =>
    state.open ? begun(force, end) * stop[end] : Math.min(stop[end], unlimited(force, end));
  return {
    pressure,
    stroke: strokeAt,
    displaced: (force) =>
      area.value * Math.max(0, strokeAt(force, 'value') - begun(force, 'value') * (cutOff?.value ?? 0)),
    bottomed: (force) =>
      stroke !== undefined &&
      (state.open ? begun(force, 'value') >= 1 : pressing.takes(free(force, 'value'), 'value') > capacity('value')),
  };
}
