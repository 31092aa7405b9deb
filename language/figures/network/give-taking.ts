/** What gives way under pressure besides lines and fluid: caliper and pads, drum and shoes, the master itself. */
import { estimateFact, factOrigin } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part } from '../../system/part.ts';
import { endsOf, marksOf } from './spread.ts';
import type { Takings } from './taking.ts';

/** m³: the stated compliance of `holder` × pressure, an even share of it for each of `among`. */
export function giveTaking(
  part: Part,
  holder: Part,
  of: { readonly what: 'brake' | 'master'; readonly among: number },
): Takings {
  const compliance = estimateFact(holder, properties.compliance);
  if (compliance === undefined) {
    const origin = factOrigin(holder, properties.compliance) ?? holder.nameOrigin;
    const need = { name: `compliance of ${holder.label}`, origin };
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
