/** Takes a fact out of a part by its row, so that its dimension is known to the compiler and never guessed. */
import { type Dimension, type Estimate, estimateOf, type Stated } from '../quantity/index.ts';
import type { MeasureRow, WordRow } from './kinds/kind-row.ts';
import type { Origin } from './origin.ts';
import type { Fact, Measured } from './part.ts';

/** A part, the vehicle, a load case: whatever has facts. */
export interface WithFacts {
  readonly facts: ReadonlyMap<string, Fact>;
}

/** What is said, `?` included; undefined where nothing is. */
export function measureOf<D extends Dimension>(of: WithFacts, row: MeasureRow<D>): Stated<D> | undefined {
  const fact = of.facts.get(row.key);
  return fact !== undefined && isMeasured(fact, row.dimension) ? fact.stated : undefined;
}

/** The same in SI and ready to compute with; undefined for `?` too. */
export function estimateFact<D extends Dimension>(of: WithFacts, row: MeasureRow<D>): Estimate<D> | undefined {
  const stated = measureOf(of, row);
  return stated && estimateOf(stated);
}

/** The word of a closed list. */
export function wordOf(of: WithFacts, row: WordRow): string | undefined {
  const fact = of.facts.get(row.key);
  return fact?.kind === 'word' ? fact.word : undefined;
}

/** Where the fact is stated, with `?` too. */
export function factOrigin(of: WithFacts, row: { readonly key: string }): Origin | undefined {
  return of.facts.get(row.key)?.origin;
}

function isMeasured<D extends Dimension>(fact: Fact, dimension: D): fact is Measured<D> {
  return fact.kind === 'measure' && fact.dimension === dimension;
}
