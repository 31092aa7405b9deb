/** `chamber.area` and `chamber.volume`: what a chamber of the master presses with and what it can push out. */
import { circleArea, combineEstimates, cylinderVolume, estimateOf, writeStated } from '../quantity/index.ts';
import { measureOf } from '../system/fact-of.ts';
import { isChamber } from '../system/fluid-graph.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Figure } from './figure.ts';
import { type Given, givenFact, inputsOf, needsOf } from './given.ts';
import { pistonArea } from './piston-area.ts';
import { knownResult, unknownResult } from './result.ts';
import { circles } from './sources.ts';
import { millilitres } from './writing.ts';

/** In m²; undefined for a tandem as a whole, whose chambers have it. */
export function chamberArea(chamber: Part, context: FigureContext): Figure<'area'> | undefined {
  if (!isChamber(chamber)) return undefined;
  return pistonArea(chamber, boreOf(chamber, context), { id: 'chamber.area', title: 'piston area' });
}

/** In m³: the whole stroke from rest to the stop. */
export function chamberVolume(chamber: Part, context: FigureContext): Figure<'volume'> | undefined {
  if (!isChamber(chamber)) return undefined;
  const bore = boreOf(chamber, context);
  const stroke = givenFact(chamber, properties.stroke);
  return {
    id: 'chamber.volume',
    subject: chamber.id,
    title: 'fluid in one full stroke',
    written: millilitres,
    result:
      bore.kind === 'given' && stroke.kind === 'given'
        ? knownResult(
            'volume',
            combineEstimates(
              'volume',
              (across, along) => cylinderVolume(circleArea(across), along),
              bore.estimate,
              stroke.estimate,
            ),
            chamber,
          )
        : unknownResult('volume', needsOf([bore, stroke])),
    formula: 'π/4 × bore² × stroke',
    inputs: inputsOf([bore, stroke]),
    source: circles,
    notes: cutOffNotes(chamber),
  };
}

/** A stepped tandem says a bore in each chamber; otherwise that of the master holds for both. */
function boreOf(chamber: Part, context: FigureContext): Given<'length'> {
  const master = chamber.parent === undefined ? undefined : context.system.partById.get(chamber.parent);
  const own = chamber.facts.has(properties.bore.key);
  return givenFact(own || master === undefined ? chamber : master, properties.bore);
}

function cutOffNotes(chamber: Part): readonly string[] {
  const cutOff = measureOf(chamber, properties.cutOff);
  if (cutOff === undefined || estimateOf(cutOff) === undefined) return [];
  return [`Of the stroke, ${writeStated(cutOff)} closes the way to the reservoir and moves nothing into the line.`];
}
