/** `run.working-pressure`: the pressure that a run may work at, by the common factor on bursting. */
import { estimateOf, isKnown, plainUnit, si, writeQuantity } from '../quantity/index.ts';
import { pressureMarks } from '../standards/line-pressure.ts';
import { burstingFactor, wallLoss } from '../standards/tube-strength-rules.ts';
import type { Part } from '../system/part.ts';
import type { Figure } from './figure.ts';
import { materialOf, tubePressure } from './run-burst.ts';
import { barlowBurst, firstYield } from './tube-strength.ts';

/**
 * In Pa, gauge: burst after Barlow over the factor, or first yield at the bore where that is lower still. Undefined for
 * a material that belongs in no brake line: a figure would speak for it.
 */
export function runWorkingPressure(run: Part): Figure<'pressure'> | undefined {
  if (materialOf(run)?.standing === 'never') return undefined;
  const figure = tubePressure(run, {
    id: 'run.working-pressure',
    title: 'working pressure',
    method: (diameter, wall, { leastTensile, leastYield }) =>
      si(
        'pressure',
        Math.min(
          barlowBurst(diameter, wall, leastTensile) / burstingFactor.least,
          firstYield(diameter, wall, leastYield),
        ),
      ),
    formula: `burst pressure (Barlow) / ${burstingFactor.least}, and no more than first yield at the bore`,
    source: burstingFactor.source,
  });
  return { ...figure, notes: [...figure.notes, ...outlook(run, figure)] };
}

/** What rust may leave of it, and how it stands against the most that a brake makes. */
function outlook(run: Part, { result, written: { unit } }: Figure<'pressure'>): readonly string[] {
  const [diameter, wall] = [run.tube?.diameter, run.tube?.wall].map((stated) => stated && estimateOf(stated));
  const material = materialOf(run);
  if (result.kind === 'unknown' || diameter === undefined || wall === undefined || material === undefined) return [];
  if (!isKnown(diameter) || !isKnown(wall)) return [];
  const whole = barlowBurst(diameter.value, wall.value, material.leastTensile);
  const rusted = barlowBurst(diameter.value, si('length', wall.value * (1 - wallLoss.share)), material.leastTensile);
  const { words, pressure } = pressureMarks.highestInService;
  const [left, most] = [rusted, pressure].map((each) => writeQuantity(each, { unit, precision: { significant: 3 } }));
  const factor = writeQuantity(si('number', whole / pressure), { unit: plainUnit, precision: { significant: 2 } });
  return [
    `With a third of its wall gone, where an inspection rejects it, it bursts at ${left} (Barlow).`,
    `Against ${words} (${most}) its factor on bursting is ${factor} (Barlow).`,
  ];
}
