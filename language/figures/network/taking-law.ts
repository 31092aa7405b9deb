/** The few laws by which things take up fluid, as data, so that a circuit of any size is pressed in one sum. */
import { type Si, si } from '../../quantity/index.ts';
import type { ExpansionClass, HoseClass } from '../../standards/hose.ts';
import { airSqueeze, hoseGrowth, shareClosed } from './displacement-laws.ts';
import type { End, Ends } from './spread.ts';

export type TakingLaw =
  /** m³ for each Pa. */
  | { readonly kind: 'in-proportion'; readonly perPascal: Ends }
  /** m³ that are taken up by `closes` Pa. */
  | { readonly kind: 'gap'; readonly volume: Ends; readonly closes: Ends }
  /** m of hose; at its low end it does not swell. */
  | { readonly kind: 'hose'; readonly hose: HoseClass; readonly expansion: ExpansionClass; readonly length: Ends }
  /** m³ at atmospheric pressure. */
  | { readonly kind: 'air'; readonly volume: Si<'volume'> };

/** m³ at a gauge pressure in Pa: zero for none, and never less for more. */
export function volumeTaken(law: TakingLaw, pressure: Si<'pressure'>, end: End): number {
  if (!(pressure > 0)) return 0;
  switch (law.kind) {
    case 'in-proportion':
      return law.perPascal[end] * pressure;
    case 'gap':
      return law.volume[end] * shareClosed(pressure, si('pressure', law.closes[end]));
    case 'hose':
      return end === 'low' ? 0 : hoseGrowth(law.hose, law.expansion, pressure) * law.length[end];
    case 'air':
      return airSqueeze(law.volume, pressure);
  }
}

/** What takes a share of it. */
export function shareOf(law: TakingLaw, share: number): TakingLaw {
  switch (law.kind) {
    case 'in-proportion':
      return { ...law, perPascal: times(law.perPascal, share) };
    case 'gap':
      return { ...law, volume: times(law.volume, share) };
    case 'hose':
      return { ...law, length: times(law.length, share) };
    case 'air':
      return { ...law, volume: si('volume', law.volume * share) };
  }
}

/** As few laws as take the same together, at the same pressure. */
export function lawsTogether(laws: readonly TakingLaw[]): readonly TakingLaw[] {
  const found = new Map<string, TakingLaw>();
  for (const law of laws) {
    const key = keyOf(law);
    const known = found.get(key);
    found.set(key, known === undefined ? law : together(known, law));
  }
  return [...found.values()];
}

/** Laws with one key differ in their amount only. */
function keyOf(law: TakingLaw): string {
  switch (law.kind) {
    case 'gap':
      return `gap ${law.closes.low} ${law.closes.value} ${law.closes.high}`;
    case 'hose':
      return `hose ${law.hose.words} ${law.expansion}`;
    default:
      return law.kind;
  }
}

function together(one: TakingLaw, other: TakingLaw): TakingLaw {
  if (one.kind === 'in-proportion' && other.kind === 'in-proportion') {
    return { ...one, perPascal: plus(one.perPascal, other.perPascal) };
  }
  if (one.kind === 'gap' && other.kind === 'gap') return { ...one, volume: plus(one.volume, other.volume) };
  if (one.kind === 'hose' && other.kind === 'hose') return { ...one, length: plus(one.length, other.length) };
  if (one.kind === 'air' && other.kind === 'air') return { ...one, volume: si('volume', one.volume + other.volume) };
  throw new Error(`Laws of the kinds ${one.kind} and ${other.kind} share a key.`);
}

const plus = (a: Ends, b: Ends): Ends => ({ low: a.low + b.low, value: a.value + b.value, high: a.high + b.high });
const times = (a: Ends, by: number): Ends => ({ low: a.low * by, value: a.value * by, high: a.high * by });
