/** What the fluid itself loses of its volume under pressure, and free air in it. */
import { type Estimate, type Si, si } from '../../quantity/index.ts';
import { type Fluid, fluidNames, fluids } from '../../standards/fluids.ts';
import { wordOf } from '../../system/fact-of.ts';
import { properties } from '../../system/kinds/index.ts';
import type { Part, PartId } from '../../system/part.ts';
import type { System } from '../../system/system.ts';
import type { FigureContext } from '../context.ts';
import { fluidSqueeze } from './displacement-laws.ts';
import { against, endsOf, marksOf, unmarked } from './spread.ts';
import { noTakings, type Taking, type Takings } from './taking.ts';

const onePascal = si('pressure', 1);

/** m³; `share` is the part of it that belongs to this circuit: one of how many bodies of fluid the part holds. */
export function fluidTaking(part: Part, context: FigureContext, of: { fluid: Fluid; bodies: number }): Takings {
  const figure = context.volumeOf(part);
  if (figure === undefined) return noTakings;
  const { result } = figure;
  if (result.kind === 'unknown') {
    const need = { name: `fluid in ${part.label}`, origin: part.nameOrigin };
    const group = { lead: 'fluid in', label: part.label };
    return { takings: [], lacks: [{ weight: 'small', need, group }], assumptions: [] };
  }
  const held = shared(result.estimate, of.bodies);
  const modulus = { low: of.fluid.bulkModulus.low, high: of.fluid.bulkModulus.high, value: middleOf(of.fluid) };
  return {
    takings: [
      {
        part: part.id,
        what: 'fluid',
        marks: marksOf([result.estimate]),
        law: {
          kind: 'in-proportion',
          perPascal: endsOf((end) => fluidSqueeze(held[end], onePascal, modulus[against[end]])),
        },
      },
    ],
    lacks: [],
    assumptions: [],
  };
}

const middleOf = ({ bulkModulus: { low, high } }: Fluid): Si<'pressure'> => si('pressure', (low + high) / 2);

/** Of a part with several bodies of fluid nothing says how much is in each: an even share, within none and all. */
function shared(volume: Estimate<'volume'>, bodies: number): Pick<Estimate<'volume'>, 'low' | 'value' | 'high'> {
  if (bodies <= 1) return volume;
  return { low: si('volume', 0), value: si('volume', volume.value / bodies), high: volume.high };
}

export function airTaking(chamber: PartId, air: Si<'volume'>): Taking {
  return { part: chamber, what: 'air', marks: unmarked, law: { kind: 'air', volume: air } };
}

/** The fluid that a chamber is filled with: that of the reservoir over it, else the one that the file names. */
export function fluidOf(feeders: readonly Part[], system: System): Fluid | undefined {
  const own = feeders
    .filter(({ kind }) => kind === 'reservoir')
    .map((reservoir) => named(wordOf(reservoir, properties.fluidGrade)))
    .find((fluid) => fluid !== undefined);
  if (own !== undefined) return own;
  const [general, ...more] = system.fluids;
  return more.length > 0 ? undefined : named(general?.grade);
}

function named(grade: string | undefined): Fluid | undefined {
  const name = fluidNames.find((each) => each === grade);
  return name && fluids[name];
}
