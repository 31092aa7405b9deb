/** What the standards of the vehicle's class and year ask, as information beside its figures. */
import { type Applying, type BrakingStandard, brakingStandardsFor } from '../../standards/braking-standards.ts';
import type { Source } from '../../standards/source.ts';
import { estimateFact, wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { System } from '../../system/system.ts';

export interface Asked<R> extends Applying {
  readonly rule: R;
}

/** None where class or year are not stated, or where no standard is known for them. */
function standardsOf({ vehicle }: System): readonly Applying[] {
  const vehicleClass = vehicle && wordOf(vehicle, properties.vehicleClass);
  const year = vehicle && estimateFact(vehicle, properties.firstUse);
  if (vehicleClass === undefined || year === undefined) return [];
  return brakingStandardsFor({ vehicleClass, year: year.value });
}

/** One rule of those standards, the most demanding of them first. */
export function askedOf<R>(
  system: System,
  pick: (standard: BrakingStandard) => R | undefined,
  demand: (rule: R) => number,
): readonly Asked<R>[] {
  return standardsOf(system)
    .flatMap((applying) => {
      const rule = pick(applying.standard);
      return rule === undefined ? [] : [{ ...applying, rule }];
    })
    .sort((a, b) => demand(b.rule) - demand(a.rule));
}

/** To whom it applies, and that this is no certificate. */
export function standing({ standard, standing: when }: Applying): string {
  const whose =
    when === 'later' ? `It came in ${standard.from}, after this vehicle, and does not bind it` : standard.binds;
  return `${standard.name}: ${whose}. For information; no certificate, and local law comes first.`;
}

/** "49 CFR 571.135 S7.5.3", with a word of doubt where the text was not at hand. */
export const sectionOf = ({ kind, text }: Source): string => (kind === 'from-memory' ? `${text} (from memory)` : text);
