/** `run.cut-length`: how long to cut the tube of a run, with what goes into the flare at each end. */
import { type Estimate, notKnown, sumEstimates, writeEstimate } from '../quantity/index.ts';
import { flareWords } from '../standards/flare-forms.ts';
import { flareAllowance } from '../standards/flares.ts';
import { commonPractice } from '../standards/source.ts';
import type { Part, Port } from '../system/part.ts';
import type { FigureContext } from './context.ts';
import type { Figure, Need } from './figure.ts';
import { type Given, givenFigure, inputsOf, needsOf } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import { lengthWriting } from './run-route.ts';
import { givenDiameter } from './run-tube.ts';
import { millimetres } from './writing.ts';

/** In m. */
export function cutLength(run: Part, context: FigureContext): Figure<'length'> {
  const centreline = context.centrelineLengthOf(run);
  const length = givenFigure(centreline, run);
  const diameter = givenDiameter(run);
  const allowances = run.ports.map((end) => givenAllowance(run, end, diameter));
  const terms = [length, ...allowances];
  const known = terms.flatMap((term) => (term.kind === 'given' ? term.estimate : []));
  return {
    id: 'run.cut-length',
    subject: run.id,
    title: 'cut length',
    written: lengthWriting(run),
    result:
      known.length === terms.length
        ? knownResult('length', sumEstimates('length', known), run)
        : unknownResult('length', needsOf(terms)),
    formula: 'centreline length + flare allowance at each end',
    inputs: inputsOf(terms),
    source: commonPractice('centreline length with the tube that each flare takes added; make a test flare on scrap'),
    notes: [
      ...centreline.notes,
      'Make a test flare on scrap of the same tube: tools take different amounts.',
      ...(context.developmentOf(run)?.bends.length ? [stretches] : []),
    ],
  };
}

const stretches = 'Tube stretches a little in every bend, so it may come out slightly long; dress the last end to fit.';

/** The tube that goes into the flare at one end, by its form and the size of the tube. */
function givenAllowance(run: Part, end: Port, diameter: Given<'length'>): Given<'length'> {
  const { connection, origin } = end;
  const where = `${end.name} end of ${run.label}`;
  const form = connection.kind === 'tube-end' ? connection.flare : undefined;
  if (form === undefined || form === 'unknown') return lacking([{ name: `flare at the ${where}`, origin }], where, end);
  if (diameter.kind === 'missing') return lacking(diameter.needs, where, end);
  const allowance = flareAllowance(form, diameter.estimate.value);
  const name = `allowance for ${flareWords[form]} at the ${where}`;
  if (allowance === undefined) {
    return lacking([{ name: `${name}, which no table gives for ${diameter.input.text} tube`, origin }], where, end);
  }
  const { about, assumed } = diameter.estimate;
  const estimate: Estimate<'length'> = {
    value: allowance.value,
    low: allowance.low,
    high: allowance.high,
    about,
    assumed,
  };
  const text = `${writeEstimate(estimate, { like: millimetres })}; ${allowance.why}`;
  return {
    kind: 'given',
    estimate,
    input: { name, text, origin, source: allowance.source },
    written: millimetres,
    leftOut: [],
  };
}

function lacking(needs: readonly Need[], where: string, end: Port): Given<'length'> {
  const name = `flare allowance at the ${where}`;
  return { kind: 'missing', needs, input: { name, text: notKnown, origin: end.origin, source: undefined } };
}
