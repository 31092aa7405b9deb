/** How two places of the vehicle move against each other: not at all, on rubber, or on springs. */
import type { Place } from './vehicle.ts';

export interface RelativeMotion {
  /** The freest of the links between the two. */
  readonly motion: Place['motion'];
  /** The places that move so, in the order of the text. */
  readonly moving: readonly Place[];
}

const freedom: Readonly<Record<Place['motion'], number>> = { fixed: 0, 'rubber-mounted': 1, sprung: 2 };

/**
 * How `a` moves against `b`, along the places that each of them stands on; a place that stands on none stands on the
 * vehicle itself. Undefined where one of the two is not declared.
 */
export function motionBetween(places: readonly Place[], a: string, b: string): RelativeMotion | undefined {
  const byName = new Map(places.map((place) => [place.name, place]));
  const [under, beneath] = [standing(a, byName), standing(b, byName)];
  if (under.size === 0 || beneath.size === 0) return undefined;
  const links = places.filter((place) => under.has(place) !== beneath.has(place));
  const most = Math.max(0, ...links.map(({ motion }) => freedom[motion]));
  const moving = links.filter(({ motion }) => freedom[motion] === most);
  return { motion: moving[0]?.motion ?? 'fixed', moving };
}

/** A place with all that carries it; a place that carries itself ends the walk. */
function standing(name: string, byName: ReadonlyMap<string, Place>): ReadonlySet<Place> {
  const found = new Set<Place>();
  let place = byName.get(name);
  while (place !== undefined && !found.has(place)) {
    found.add(place);
    place = place.parent === undefined ? undefined : byName.get(place.parent);
  }
  return found;
}
