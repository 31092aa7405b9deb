/** How much fluid to buy, in bottles as sold: what the system holds, times a stated factor, grade by grade. */
import type { Figure, Figures } from '../figures/index.ts';
import { defaultUnitFor, type Si, si, writeQuantity } from '../quantity/index.ts';
import { type Bottle, bottlesFor, fillingFactor, fluidBottles } from '../standards/fluid-bottles.ts';
import { type FluidName, fluidNames, fluids } from '../standards/fluids.ts';
import { wordOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { allParts, type System } from '../system/system.ts';
import type { PartsRow } from './parts-row.ts';

const bare = {
  group: 'fluid',
  number: undefined,
  bought: undefined,
  arrived: undefined,
} as const satisfies Partial<PartsRow>;

/** One line for each grade; none in a system without fluid. */
export function fluidRows(system: System, figures: Figures): readonly PartsRow[] {
  const apart = allParts(system).filter((part) => isApart(part, system));
  const usual = system.fluids[0]?.grade;
  const whole = figures.find('system', 'system.volume');
  if (whole === undefined || (system.circuits.length === 0 && whole.result.kind === 'unknown')) return [];
  if (apart.length === 0) return [rowOf(usual, volumeIn(whole), system)];
  const others = apart.map((reservoir) =>
    rowOf(wordOf(reservoir, properties.fluidGrade), volumeFrom(reservoir, system, figures), system, reservoir),
  );
  const all = rowOf(usual, volumeIn(whole), system);
  return [{ ...all, remarks: [...all.remarks, alsoCounted] }, ...others];
}

/** A little too much of the usual fluid is better than a guess at what is in which circuit. */
const alsoCounted = 'The first line counts the circuits with the other fluid too.';

/** A reservoir with a fluid other than that of the file. */
function isApart(part: Part, { fluids: stated }: System): boolean {
  const own = part.kind === 'reservoir' ? wordOf(part, properties.fluidGrade) : undefined;
  return own !== undefined && own !== stated[0]?.grade;
}

interface Held {
  readonly volume: Si<'volume'> | undefined;
  /** What is not in it. */
  readonly lacking: readonly string[];
}

function volumeIn({ result }: Figure): Held {
  if (result.kind === 'unknown') return { volume: undefined, lacking: result.waitsFor.map(({ name }) => name) };
  const { high, value, about } = result.estimate;
  return { volume: si('volume', about ? value : high), lacking: result.leftOut.map(({ name }) => name) };
}

/** The reservoir with the circuits of the chambers that it feeds. */
function volumeFrom(reservoir: Part, system: System, figures: Figures): Held {
  const inside = new Set([reservoir.id, ...reservoir.parts.map(({ id }) => id)]);
  const fed = system.links.filter(({ verb, from }) => verb === 'feeds' && inside.has(from)).map(({ to }) => to);
  const chambers = system.circuits.map(({ chamber }) => chamber);
  const pressed = chambers.filter((chamber) => fed.some((to) => chamber === to || chamber.startsWith(`${to}.`)));
  const held = [
    figures.find(reservoir.id, 'reservoir.volume'),
    ...pressed.map((chamber) => figures.find(chamber, 'circuit.volume')),
  ].flatMap((figure) => (figure ? [volumeIn(figure)] : []));
  const known = held.flatMap(({ volume }) => volume ?? []);
  return {
    volume:
      known.length === 0
        ? undefined
        : si(
            'volume',
            known.reduce((sum, each) => sum + each, 0),
          ),
    lacking: held.flatMap(({ lacking }) => lacking),
  };
}

function rowOf(grade: string | undefined, { volume, lacking }: Held, system: System, reservoir?: Part): PartsRow {
  const name = fluidNames.find((each) => each === grade);
  const item = itemWords(name);
  const neededBy = reservoir
    ? [{ id: reservoir.id, label: `the circuit of ${reservoir.label}` }]
    : [{ id: 'system', label: system.vehicle?.caption ?? 'the whole system' }];
  const row = {
    ...bare,
    item,
    neededBy,
    measureFirst: name === undefined ? ['which fluid is in it'] : [],
    putRightFirst: [],
  };
  if (volume === undefined || !(volume > 0)) {
    return { ...row, amount: { kind: 'not-known' }, remarks: [`How much it holds waits for ${someOf(lacking)}.`] };
  }
  const wanted = si('volume', volume * fillingFactor.times);
  const least = lacking.length > 0 ? 'at least ' : '';
  return {
    ...row,
    amount: { kind: 'volume', cubicMetres: wanted, words: `${least}${litres(wanted)}` },
    remarks: [
      `It holds ${least}${litres(volume)}; ${fillingFactor.times} times that fills, bleeds and flushes it (common practice). As sold: ${bottleWords(wanted, fluidBottles.litres)}, or ${bottleWords(wanted, fluidBottles.pints)}.`,
      ...(lacking.length > 0 ? [`Not counted, since it is not known: ${someOf(lacking)}.`] : []),
      ...(name !== undefined && fluids[name].base === 'glycol' ? [drawsWater] : []),
    ],
  };
}

const drawsWater = 'Glycol fluid draws water: buy it fresh, and throw away what stays in an opened bottle.';

function itemWords(name: FluidName | undefined): string {
  if (name === undefined) return 'brake fluid, grade not stated';
  return fluids[name].base === 'mineral'
    ? 'mineral oil as the vehicle’s maker names it, in sealed bottles'
    : `${fluids[name].words} brake fluid, in sealed bottles`;
}

/** The first few, and how many more there are. */
function someOf(names: readonly string[]): string {
  const more = names.length - 4;
  return more > 0 ? `${names.slice(0, 4).join(', ')} and ${more} more` : names.join(', ');
}

const litre = defaultUnitFor('volume', 'metric');

const litres = (volume: Si<'volume'>): string =>
  writeQuantity(si('volume', Math.ceil(volume * 1e5 - 1e-6) / 1e5), { unit: litre });

function bottleWords(volume: Si<'volume'>, sold: readonly Bottle[]): string {
  return bottlesFor(volume, sold)
    .map(({ bottle, count }) => `${count} × ${bottle.words}`)
    .join(' and ');
}
