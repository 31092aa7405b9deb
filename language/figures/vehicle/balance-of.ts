/** Brakes and load case put together: a question of balance that can be answered, or what is missing for it. */
import type { Estimate } from '../../quantity/index.ts';
import type { Input, Need } from '../figure.ts';
import { eachOnce } from '../result.ts';
import type { AxleBrakes } from './axle-brakes.ts';
import { type LoadFacts, loadedCase } from './load-case.ts';
import type { BalanceQuestion } from './lock-order.ts';
import { inputsOnce } from './rough.ts';

export type BalanceOf =
  | {
      readonly kind: 'ready';
      readonly question: BalanceQuestion;
      readonly from: readonly Estimate[];
      readonly inputs: readonly Input[];
      readonly notes: readonly string[];
    }
  | { readonly kind: 'waits'; readonly needs: readonly Need[]; readonly inputs: readonly Input[] };

export function balanceOf(facts: LoadFacts, axles: AxleBrakes): BalanceOf {
  const loaded = loadedCase(facts);
  const inputs = [...loaded.inputs, ...inputsOnce(axles.inputs)];
  if (loaded.kind === 'waits' || axles.kind === 'waits') {
    const needs = [...(loaded.kind === 'waits' ? loaded.needs : []), ...(axles.kind === 'waits' ? axles.needs : [])];
    return { kind: 'waits', needs: eachOnce(needs), inputs };
  }
  return {
    kind: 'ready',
    question: { curve: axles.curve, loaded: loaded.loaded },
    from: [...loaded.from, ...axles.from],
    inputs,
    notes: axles.notes,
  };
}
