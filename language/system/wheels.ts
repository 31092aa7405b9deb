/** Where on the vehicle a wheel brake sits: which axle, which side, from its `wheel` fact, its name or its place. */
import type { Part } from './part.ts';

export type Axle = 'front' | 'rear';
/** `centre`: the one wheel of an axle that has one, said by `wheel front` or `wheel rear`. */
export type WheelSide = 'left' | 'centre' | 'right';

export interface Wheel {
  readonly axle: Axle | undefined;
  readonly side: WheelSide | undefined;
}

/** `nearside` and `offside` are missing on purpose: which side they mean depends on the country. */
const meanings: ReadonlyMap<string, { readonly axle?: Axle; readonly side?: 'left' | 'right' }> = new Map([
  ['front', { axle: 'front' }],
  ['rear', { axle: 'rear' }],
  ['left', { side: 'left' }],
  ['right', { side: 'right' }],
  ['lh', { side: 'left' }],
  ['rh', { side: 'right' }],
  ['fl', { axle: 'front', side: 'left' }],
  ['lf', { axle: 'front', side: 'left' }],
  ['fr', { axle: 'front', side: 'right' }],
  ['rf', { axle: 'front', side: 'right' }],
  ['rl', { axle: 'rear', side: 'left' }],
  ['lr', { axle: 'rear', side: 'left' }],
  ['rr', { axle: 'rear', side: 'right' }],
]);

/**
 * The wheel of a wheel brake; for a part in it ask about the brake, which may say it by a fact. The `wheel` fact counts
 * before the words of the name (`rear-left`, `fl`), those before the words of the place (`rear-axle`); what is not said,
 * or said both ways, is undefined.
 */
export function wheelOf(part: Part): Wheel {
  const fact = part.facts.get('wheel');
  const said = fact?.kind === 'word' ? saidBy(fact.word) : nothing;
  const named = saidBy(part.name);
  const placed = saidBy(part.place ?? '');
  const side = said.side ?? named.side ?? (fact === undefined ? placed.side : undefined);
  const alone = said.axle !== undefined && side === undefined;
  return { axle: said.axle ?? named.axle ?? placed.axle, side: alone ? 'centre' : side };
}

/** "front left", "rear"; undefined where nothing is known. */
export function wheelWords({ axle, side }: Wheel): string | undefined {
  const words = [axle, side === 'centre' ? undefined : side].filter((word) => word !== undefined);
  return words.length > 0 ? words.join(' ') : undefined;
}

const nothing: Wheel = { axle: undefined, side: undefined };

function saidBy(text: string): Wheel {
  const words = text.toLowerCase().split(/[^\p{L}\p{N}]+/u);
  const found = words.flatMap((word) => meanings.get(word) ?? []);
  return { axle: only(found.map(({ axle }) => axle)), side: only(found.map(({ side }) => side)) };
}

/** The one value among them, if all that are there agree. */
function only<T>(values: readonly (T | undefined)[]): T | undefined {
  const distinct = [...new Set(values.filter((value) => value !== undefined))];
  return distinct.length === 1 ? distinct[0] : undefined;
}
