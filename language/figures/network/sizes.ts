/** Facts as the network computes with them: what is negative where it cannot be is as good as not stated. */
import { alike, type Dimension } from '../../quantity/dimension.ts';
import type { Estimate } from '../../quantity/index.ts';
import { estimateFact, factOrigin } from '../../system/fact-of.ts';
import type { MeasureRow } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import type { Need } from '../figure.ts';
import { givenFact } from '../given.ts';

/** More than zero, else undefined. */
export function sizeOf<D extends Dimension>(part: Part, row: MeasureRow<D>): Estimate<D> | undefined {
  const given = givenFact(part, row);
  return given.kind === 'given' ? given.estimate : undefined;
}

/** Zero or more, else undefined; a lower limit below zero counts as zero. */
export function amountOf<D extends Dimension>(part: Part, row: MeasureRow<D>): Estimate<D> | undefined {
  const estimate = estimateFact(part, row);
  if (estimate === undefined || !(estimate.value >= 0)) return undefined;
  return { ...estimate, low: alike(estimate.value, Math.max(0, estimate.low)) };
}

/** "slope of rear-limiter" */
export function needOf(part: Part, row: MeasureRow): Need {
  return { name: `${row.key} of ${part.label}`, origin: factOrigin(part, row) ?? part.nameOrigin };
}
