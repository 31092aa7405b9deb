/** Hoses and other parts whose maker allows less than the stated push makes in their circuit. */
import type { Figures } from '../figures/index.ts';
import { writeResult } from '../figures/index.ts';
import { estimateFact } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { allParts, type System } from '../system/system.ts';
import type { Remark } from './rule.ts';
import { written } from './wording.ts';

/** Silent behind valves, which may hold pressure back, and where the limits leave it open. */
export function aboveRatingAtPush(system: System, figures: Figures): readonly Remark[] {
  return allParts(system).flatMap((rated) => remarksOn(rated, system, figures).slice(0, 1));
}

function remarksOn(rated: Part, system: System, figures: Figures): readonly Remark[] {
  const fact = rated.facts.get(properties.rating.key);
  const rating = estimateFact(rated, properties.rating);
  if (fact === undefined || rating === undefined) return [];
  return system.circuits.flatMap(({ chamber, label, reachOf }): readonly Remark[] => {
    const reach = reachOf.get(rated.id);
    if (reach === undefined || reach.valves.length > 0 || reach.doubtful) return [];
    const reached = figures.find(chamber, 'chamber.pressure-at-push');
    if (reached?.result.kind !== 'known' || !(reached.result.estimate.low > rating.high)) return [];
    const master = system.partById.get(chamber);
    return [
      {
        message: `${rated.label} is rated ${written(rating.high, reached.written)}, and the push that the pedal states makes ${writeResult(reached)} in ${label}, as long as its stroke lasts. Check the push and the bore; fit one that is rated above what the circuit reaches.`,
        origin: fact.origin,
        subject: rated.id,
        also: [chamber],
        related:
          master === undefined ? [] : [{ message: `the pressure is made in ${label}`, origin: master.nameOrigin }],
      },
    ];
  });
}
