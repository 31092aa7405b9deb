/** Places a picture that must be placeable. */
import type { LayoutEngine } from '../../language/schematic/layout/engine.ts';
import type { Picture } from '../../language/schematic/picture.ts';
import { place } from '../../language/schematic/place.ts';
import type { Placed, Placement } from '../../language/schematic/placed.ts';

export async function placedBy(engine: LayoutEngine, picture: Picture, previous?: Placement): Promise<Placed> {
  const result = await place(picture, engine, previous === undefined ? {} : { previous });
  if (result.kind === 'placed') return result.placed;
  throw new Error(result.kind === 'refused' ? result.reason : 'The picture was superseded.');
}
