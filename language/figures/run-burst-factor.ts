/** `run.burst-factor`: how many times the highest stated pressure of its circuit a run bears before it bursts. */
import { combineEstimates, plainUnit, writeEstimate, writtenIn } from '../quantity/index.ts';
import { burstingFactor } from '../standards/tube-strength-rules.ts';
import type { Part } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Figure } from './figure.ts';
import { givenFigure } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { runBurstBarlow } from './run-burst.ts';

/** A plain number; undefined where no line pressure was read. */
export function runBurstFactor(run: Part, { highestPressureAt }: FigureContext): Figure<'number'> | undefined {
  const stated = highestPressureAt(run);
  if (stated === undefined || !(stated.pressure.low > 0)) return undefined;
  const { pressure, written, where, origin } = stated;
  const burst = givenFigure(runBurstBarlow(run), run);
  const text = writeEstimate(pressure, { like: written });
  return {
    id: 'run.burst-factor',
    subject: run.id,
    title: 'factor on bursting',
    written: writtenIn(plainUnit),
    result:
      burst.kind === 'missing'
        ? unknownResult('number', burst.needs)
        : knownResult(
            'number',
            combineEstimates('number', (most, highest) => most / highest, burst.estimate, pressure),
            run,
          ),
    formula: 'burst pressure (Barlow) / highest line pressure read in its circuit',
    inputs: [burst.input, { name: `line-pressure read on ${where}`, text, origin, source: undefined }],
    source: burstingFactor.source,
    notes: [`The common rule for hydraulic lines asks for at least ${burstingFactor.least}.`],
  };
}
