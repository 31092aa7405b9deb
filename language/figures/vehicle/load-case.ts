/** A load case of the file as statics needs it: what it weighs, and where its centre of gravity lies. */
import { combineEstimates, type Dimension, type Estimate, mapEstimate, sumEstimates } from '../../quantity/index.ts';
import { standardGravity } from '../../standards/gravity.ts';
import { factOrigin, measureOf, type WithFacts } from '../../system/fact-of.ts';
import { type MeasureRow, properties } from '../../system/kinds/index.ts';
import type { Origin } from '../../system/origin.ts';
import type { LoadCase, Vehicle } from '../../system/vehicle.ts';
import type { Input, Need } from '../figure.ts';
import { type Given, givenSize, inputsOf, needsOf } from '../given.ts';
import type { Loaded } from './statics.ts';

/** What is known of a load case; each is absent where its facts are. */
export interface LoadFacts {
  readonly load: LoadCase;
  readonly mass: Derived<'mass'>;
  /** Share of the mass that rests on the front axle. */
  readonly frontShare: Derived<'number'>;
  readonly behindFront: Derived<'length'>;
  readonly wheelbase: Given<'length'>;
  readonly gravityHeight: Given<'length'>;
}

export interface Derived<D extends Dimension> {
  readonly estimate: Estimate<D> | undefined;
  readonly givens: readonly Given[];
  readonly formula: string;
}

/** Axle masses count before a total with a centre of gravity. */
export function loadFacts(load: LoadCase, vehicle: Vehicle): LoadFacts {
  const named = `load ${load.name}`;
  const of = <D extends Dimension>(row: MeasureRow<D>) => given(load, row, { name: named, origin: load.origin });
  const wheelbase = given(vehicle, properties.wheelbase, { name: vehicle.name, origin: vehicle.nameOrigin });
  const common = { load, wheelbase, gravityHeight: of(properties.gravityHeight) };
  const [front, rear, mass, behind] = [
    of(properties.front),
    of(properties.rear),
    of(properties.mass),
    of(properties.gravityBehindFront),
  ];
  const fromAxles = load.facts.has(properties.front.key) || load.facts.has(properties.rear.key);
  return { ...common, ...(fromAxles ? byAxles(front, rear, wheelbase) : byCentre(mass, behind, wheelbase)) };
}

type Shares = Pick<LoadFacts, 'mass' | 'frontShare' | 'behindFront'>;

function byAxles(front: Given<'mass'>, rear: Given<'mass'>, wheelbase: Given<'length'>): Shares {
  const axles = [front, rear];
  const both = front.kind === 'given' && rear.kind === 'given' ? ([front.estimate, rear.estimate] as const) : undefined;
  return {
    mass: { estimate: both && sumEstimates('mass', both), givens: axles, formula: 'front + rear' },
    frontShare: {
      estimate: both && combineEstimates('number', (ahead, behind) => ahead / (ahead + behind), ...both),
      givens: axles,
      formula: 'front / (front + rear)',
    },
    behindFront: {
      estimate:
        both &&
        (wheelbase.kind === 'given'
          ? combineEstimates('length', (a, b, long) => (long * b) / (a + b), ...both, wheelbase.estimate)
          : undefined),
      givens: [wheelbase, ...axles],
      formula: 'wheelbase × rear / (front + rear)',
    },
  };
}

function byCentre(mass: Given<'mass'>, behind: Given<'length'>, wheelbase: Given<'length'>): Shares {
  return {
    mass: { estimate: mass.kind === 'given' ? mass.estimate : undefined, givens: [mass], formula: 'as stated' },
    frontShare: {
      estimate:
        behind.kind === 'given' && wheelbase.kind === 'given'
          ? combineEstimates('number', (at, long) => 1 - at / long, behind.estimate, wheelbase.estimate)
          : undefined,
      givens: [behind, wheelbase],
      formula: '1 − cg-behind-front-axle / wheelbase',
    },
    behindFront: {
      estimate: behind.kind === 'given' ? behind.estimate : undefined,
      givens: [behind],
      formula: 'as stated',
    },
  };
}

export type LoadedCase =
  | {
      readonly kind: 'ready';
      readonly load: LoadCase;
      /** The middle values; limits and marks are those of the estimates below. */
      readonly loaded: Loaded;
      readonly weight: Estimate<'force'>;
      readonly from: readonly Estimate[];
      readonly inputs: readonly Input[];
    }
  | {
      readonly kind: 'waits';
      readonly load: LoadCase;
      readonly needs: readonly Need[];
      readonly inputs: readonly Input[];
    };

/** All that statics needs; the centre of gravity must lie between the axles. */
export function loadedCase({ load, mass, behindFront, wheelbase, gravityHeight }: LoadFacts): LoadedCase {
  const givens = [...new Set([...mass.givens, ...behindFront.givens, wheelbase, gravityHeight])];
  const inputs = inputsOf(givens);
  if (
    mass.estimate === undefined ||
    behindFront.estimate === undefined ||
    wheelbase.kind === 'missing' ||
    gravityHeight.kind === 'missing'
  ) {
    return { kind: 'waits', load, needs: needsOf(givens), inputs };
  }
  const weight = mapEstimate('force', (kilograms) => kilograms * standardGravity, mass.estimate);
  if (!(behindFront.estimate.value < wheelbase.estimate.value)) {
    const name = `cg-behind-front-axle of load ${load.name}, less than the wheelbase`;
    return { kind: 'waits', load, needs: [{ name, origin: load.origin }], inputs };
  }
  return {
    kind: 'ready',
    load,
    weight,
    loaded: {
      weight: weight.value,
      wheelbase: wheelbase.estimate.value,
      behindFront: behindFront.estimate.value,
      gravityHeight: gravityHeight.estimate.value,
    },
    from: [weight, behindFront.estimate, wheelbase.estimate, gravityHeight.estimate],
    inputs,
  };
}

function given<D extends Dimension>(
  of: WithFacts,
  row: MeasureRow<D>,
  whose: { readonly name: string; readonly origin: Origin },
): Given<D> {
  return givenSize({
    name: `${row.key} of ${whose.name}`,
    stated: measureOf(of, row),
    origin: factOrigin(of, row) ?? whose.origin,
  });
}
