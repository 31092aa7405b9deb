/** What gives way under pressure besides lines and fluid: caliper and pads, drum and shoes, the master itself. */
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { amountOf, needOf } from './sizes.ts';
import { endsOf, marksOf } from './spread.ts';
import type { Takings } from './taking.ts';

/** m³: the stated compliance of `holder` × pressure, an even share of it for each of `among`. */
export function giveTaking(
  part: Part,
  holder: Part,
  of: { readonly what: 'brake' | 'master'; readonly among: number },
): Takings {
  const compliance = amountOf(holder, properties.compliance);
  if (compliance === undefined) {
    const need = needOf(holder, properties.compliance);
    return { takings: [], lacks: [{ weight: 'brake', need }], assumptions: [] };
  }
  return {
    takings: [
      {
        part: part.id,
        what: of.what,
        marks: marksOf([compliance]),
        law: { kind: 'in-proportion', perPascal: endsOf((end) => compliance[end] / of.among) },
      },
    ],
    lacks: [],
    assumptions: [],
  };
}
