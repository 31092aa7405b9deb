/** residual-on-disc: a residual valve made for drums that holds its pressure in a caliper. */

import { writtenOf } from '../figures/given.ts';
import { writeStated } from '../quantity/index.ts';
import { residualUse } from '../standards/residual-use.ts';
import type { Circuit } from '../system/circuits.ts';
import { estimateFact, measureOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { outermost, type System } from '../system/system.ts';
import { stockLine } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { listedUpTo, roundly } from './wording.ts';

const disc = (residual: string) => `${stockLine}master main single {
  ${residual}
  port out: 3/8-24 inverted-flare
}
disc-brake front-left {
  caliper { port feed: 3/8-24 inverted-flare  bleeder {} }
}
run line of line { from main.out to front-left.caliper.feed }
`;

const inLine = (holds: string) =>
  disc('')
    .replace('from main.out to', 'from keep.out to')
    .concat(
      `residual-valve keep { ports in, out: 3/8-24 inverted-flare  holds ${holds} }\nrun feed of line { from main.out to keep.in }\n`,
    );

export const residualOnDisc: Rule = {
  code: 'residual-on-disc',
  severity: 'warning',
  acceptable: true,
  question: 'Is no more pressure held in a caliper than a disc brake bears at rest?',
  why: 'A drum brake has springs that work against the pressure that is held; a disc brake has none, so its pads drag and get hot.',
  source: residualUse.source,
  fires: [
    { title: 'a valve of a drum brake in the line of a disc brake', text: inLine('10 psi') },
    { title: 'the same inside the master, as when discs have taken the place of drums', text: disc('residual 10 psi') },
  ],
  silent: [
    { title: 'a valve made for discs', text: inLine('2 psi') },
    { title: 'a valve of which the pressure is not known', text: disc('residual ?') },
    {
      title: 'drums behind the valve',
      text: disc('residual 10 psi').replace('disc-brake', 'drum-brake').replaceAll('caliper', 'cylinder'),
    },
  ],
  check: ({ system }) => system.circuits.flatMap((circuit) => remarksOn(circuit, system)),
};

function remarksOn(circuit: Circuit, system: System): readonly Remark[] {
  const chamber = system.partById.get(circuit.chamber);
  if (chamber === undefined) return [];
  const holders = [chamber, outermost(system, chamber)].map((part) => ({ part, row: properties.builtInResidual }));
  const built = [...new Set([chamber, outermost(system, chamber)])]
    .flatMap(({ parts }) => parts.filter(({ kind }) => kind === 'residual-valve'))
    .map((part) => ({ part, row: properties.holds }));
  const inLines = circuit.reaches.flatMap(({ part: id }) => {
    const part = system.partById.get(id);
    return part?.kind === 'residual-valve' ? [{ part, row: properties.holds }] : [];
  });
  const seen = new Set<Part>();
  return [...holders, ...built, ...inLines].flatMap(({ part, row }): readonly Remark[] => {
    const stated = measureOf(part, row);
    const held = estimateFact(part, row);
    const like = stated && writtenOf(stated);
    if (seen.has(part) || stated === undefined || held === undefined || like === undefined) return [];
    seen.add(part);
    if (!(held.low > residualUse.discs.most)) return [];
    const calipers = calipersBehind(part, circuit, system);
    if (calipers.length === 0) return [];
    const names = listedUpTo(
      4,
      calipers.map(({ label }) => label),
    );
    return [
      {
        message: `${part.label} holds ${writeStated(stated)} in the line, and ${names} ${calipers.length === 1 ? 'is' : 'are'} on it: the pads drag and get hot. Drums are given about ${roundly(residualUse.drums.usual, like)}, discs about ${roundly(residualUse.discs.usual, like)} and that only where the master lies below them (common practice). Take the valve out of this line, or take one made for discs.`,
        origin: part.facts.get(row.key)?.origin ?? part.nameOrigin,
        subject: part.id,
        also: calipers.map(({ id }) => id),
      },
    ];
  });
}

/** For a valve in the line those that it stands before, for a chamber all of its circuit. */
function calipersBehind(part: Part, circuit: Circuit, system: System): readonly Part[] {
  return circuit.reaches.flatMap(({ part: id, valves }) => {
    const reached = system.partById.get(id);
    const isBehind = part.ports.length === 0 || part.kind !== 'residual-valve' || valves.includes(part.id);
    return reached?.kind === 'caliper' && isBehind ? [reached] : [];
  });
}
