/** `run.centreline-length`: how long a run is along its centre line from flare face to flare face. */
import { type Estimate, type Si, si, writeEstimate, writeQuantity } from '../quantity/index.ts';
import { estimateFact } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { Route } from '../system/route.ts';
import type { FigureContext } from './context.ts';
import type { Figure, Input } from './figure.ts';
import { givenFact } from './given.ts';
import { knownResult, unknownResult } from './result.ts';
import type { Development } from './route-geometry.ts';
import { lengthWriting, routeComplaints, routeNeeds } from './run-route.ts';
import { asStated, development as developed } from './sources.ts';

/** In m. From the route; where that gives none or there is none, from the stated length. */
export function centrelineLength(run: Part, context: FigureContext): Figure<'length'> {
  const development = context.developmentOf(run);
  if (run.route === undefined || development === undefined) return fromStatement(run, []);
  const complaints = routeComplaints(run, development);
  const stated = estimateFact(run, properties.length);
  if (development.centrelineLength !== undefined || stated === undefined) {
    return fromRoute(run, run.route, development, complaints);
  }
  const needs = routeNeeds(run, development).map(({ name }) => name);
  return fromStatement(run, [`The route gives no length yet: it waits for ${needs.join(', ')}.`, ...complaints]);
}

/** How a stated length and the length of the route differ, where neither limits nor tape can explain it. */
export interface LengthsApart {
  readonly stated: Estimate<'length'>;
  readonly developed: Estimate<'length'>;
  /** Between the nearest limits, in m. */
  readonly by: Si<'length'>;
}

/** Compares the two lengths that a run may state; undefined where they agree or one is not known. */
export function lengthsApart(run: Part, context: Pick<FigureContext, 'developmentOf'>): LengthsApart | undefined {
  const stated = estimateFact(run, properties.length);
  const length = context.developmentOf(run)?.centrelineLength;
  if (stated === undefined || length === undefined) return undefined;
  const by = si('length', Math.max(stated.low - length.high, length.low - stated.high));
  const share = stated.about || length.about ? tapeError.about : tapeError.share;
  const explained = Math.max(tapeError.least, share * Math.max(stated.value, length.value));
  return by > explained ? { stated, developed: length, by } : undefined;
}

/** What a tape along a bent tube may be out by, in m and as a part of the length. Common practice. */
const tapeError = { least: 0.003, share: 0.01, about: 0.1 };

function frameOf(run: Part) {
  return { id: 'run.centreline-length', subject: run.id, title: 'centreline length', written: lengthWriting(run) };
}

function fromRoute(run: Part, route: Route, development: Development, complaints: readonly string[]): Figure<'length'> {
  const frame = frameOf(run);
  const bends = development.bends.length;
  const text = `${count(route.steps.length, 'step')} with ${count(bends, 'bend')}`;
  const taken: Input = { name: `route of ${run.label}`, text, origin: route.origin, source: undefined };
  const usesDefault = development.bends.some(({ radiusFrom }) => radiusFrom !== 'route');
  const length = development.centrelineLength;
  const apart = lengthsApart(run, { developmentOf: () => development });
  return {
    ...frame,
    result:
      length === undefined
        ? unknownResult('length', routeNeeds(run, development))
        : length.value > 0
          ? knownResult('length', length, run)
          : unknownResult('length', [{ name: `a route of ${run.label} with a length`, origin: route.origin }]),
    formula: 'straights from tangent to tangent + radius × angle (in rad) of each bend',
    inputs: [taken, ...(usesDefault ? [givenFact(run, properties.bendRadius).input] : [])],
    source: developed,
    notes: [...(apart ? [sayApart(run, apart)] : []), ...complaints],
  };
}

function fromStatement(run: Part, notes: readonly string[]): Figure<'length'> {
  const length = givenFact(run, properties.length);
  const neither = run.route === undefined && !run.facts.has(properties.length.key);
  const needs = neither
    ? [{ name: `length or route of ${run.label}`, origin: run.nameOrigin }]
    : length.kind === 'missing'
      ? length.needs
      : [];
  return {
    ...frameOf(run),
    result: length.kind === 'given' ? knownResult('length', length.estimate, run) : unknownResult('length', needs),
    formula: 'the stated length',
    inputs: [length.input],
    source: asStated,
    notes,
  };
}

function sayApart(run: Part, apart: LengthsApart): string {
  const like = lengthWriting(run);
  const [stated, length] = [apart.stated, apart.developed].map((each) => writeEstimate(each, { like }));
  const by = writeQuantity(apart.by, { unit: like.unit });
  return `The stated length of ${stated} does not agree with the ${length} of the route: they are ${by} apart. The route is taken; measure again.`;
}

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;
