/** The route of a run, ready to develop, and what of it is missing or cannot be, in the words of the file. */
import {
  defaultUnitFor,
  type Estimate,
  estimateOf,
  exactly,
  type Stated,
  si,
  type WrittenUnit,
  writeQuantity,
} from '../quantity/index.ts';
import { estimateFact, factOrigin } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import type { RouteStep } from '../system/route.ts';
import type { Need } from './figure.ts';
import { writtenOf } from './given.ts';
import { type DevelopedBend, type Development, developRoute, type RouteItem } from './route-geometry.ts';
import { sayRouteProblem } from './route-problem.ts';

/** The route worked out; undefined for a part without one. */
export function developmentOf(part: Part): Development | undefined {
  if (part.route === undefined) return undefined;
  return developRoute(part.route.steps.map(itemOf), { bendRadius: estimateFact(part, properties.bendRadius) });
}

/** The bends of a run in the order of its route. */
export function bendsOf(part: Part): readonly DevelopedBend[] {
  return developmentOf(part)?.bends ?? [];
}

/** What has to be known, or mended, before the route has a length; empty once it has one. */
export function routeNeeds(part: Part, development: Development): readonly Need[] {
  if (development.centrelineLength !== undefined || part.route === undefined) return [];
  const { steps, origin } = part.route;
  const missing = development.missing.flatMap(({ item, what }): Need[] => {
    const step = steps[item];
    if (step === undefined || step.kind === 'turn') return []; // a turn changes no length
    if (what === 'radius' && 'radius' in step && step.radius === undefined) {
      return [{ name: `bend-radius of ${part.label}`, origin: factOrigin(part, properties.bendRadius) ?? step.origin }];
    }
    return [
      { name: `${what} of the ${step.kind} in step ${item + 1} of the route of ${part.label}`, origin: step.origin },
    ];
  });
  if (missing.length > 0) return missing;
  const at = development.problems[0]?.item ?? 0;
  return [{ name: `a route of ${part.label} that can be bent`, origin: steps[at]?.origin ?? origin }];
}

/** What is wrong with the route, each with the step that it is about. */
export function routeComplaints(part: Part, development: Development): readonly string[] {
  const { unit } = lengthWriting(part);
  const writer = {
    length: (value: Parameters<typeof writeQuantity<'length'>>[0]) => writeQuantity(value, { unit }),
    angle: (value: Parameters<typeof writeQuantity<'angle'>>[0]) =>
      writeQuantity(value, { unit: defaultUnitFor('angle', 'metric') }),
  };
  return development.problems.map(
    (problem) => `Step ${problem.item + 1} of the route: ${sayRouteProblem(problem, writer)}`,
  );
}

/** The unit of the run's lengths: that of its route or length, else what goes with its tube, else millimetres. */
export function lengthWriting(part: Part): WrittenUnit {
  const length = part.facts.get(properties.length.key);
  const said = [
    ...(part.route?.steps ?? []).flatMap(lengthsIn),
    ...(length?.kind === 'measure' ? [length.stated] : []),
  ];
  const written = said.map(writtenOf).find((each) => each?.unit.dimension === 'length');
  if (written !== undefined) return written;
  const tube = part.tube && writtenOf(part.tube.diameter);
  const unit = defaultUnitFor('length', tube?.unit.family ?? 'metric');
  return { unit, word: unit.symbol, style: 'fraction' };
}

function lengthsIn(step: RouteStep): readonly Stated[] {
  switch (step.kind) {
    case 'straight':
    case 'corner':
      return [step.length];
    case 'coil':
      return [step.diameter];
    case 'point':
      return [step.point.x, step.point.y, step.point.z];
    case 'bend':
    case 'turn':
      return [];
  }
}

function itemOf(step: RouteStep): RouteItem {
  switch (step.kind) {
    case 'straight':
    case 'corner':
      return { kind: step.kind, length: estimateOf(step.length) };
    case 'bend':
      return { kind: 'bend', angle: estimateOf(step.angle), ...radiusOf(step) };
    case 'turn':
      return { kind: 'turn', angle: estimateOf(step.angle) };
    case 'coil':
      return { kind: 'coil', turns: estimateOf(step.turns), diameter: estimateOf(step.diameter) };
    case 'point': {
      const { x, y, z } = step.point;
      return { kind: 'point', point: [estimateOf(x), estimateOf(y), estimateOf(z)], ...radiusOf(step) };
    }
  }
}

/** A radius of `?` is not known, which is not the same as left to the `bend-radius` of the run. */
function radiusOf(step: { readonly radius: Stated<'length'> | undefined }): { readonly radius?: Estimate<'length'> } {
  if (step.radius === undefined) return {};
  return { radius: estimateOf(step.radius) ?? exactly(si('length', Number.NaN)) };
}
