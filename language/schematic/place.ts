/** Picture to places: the graph is made, the engine lays it out, and its answer is applied to symbols and lines. */
import { applied } from './layout/apply.ts';
import type { LayoutEngine } from './layout/engine.ts';
import { planOf } from './layout/plan.ts';
import type { Picture } from './picture.ts';
import type { Placement, PlaceResult } from './placed.ts';

export interface PlaceOptions {
  /** Where things lay before; with it a small edit moves little. */
  readonly previous?: Placement;
  /** Pictures in one lane replace each other while they wait for the engine. */
  readonly lane?: string;
}

/** Same picture, same previous placement: same result. Never rejects. */
export async function place(picture: Picture, engine: LayoutEngine, options: PlaceOptions = {}): Promise<PlaceResult> {
  const plan = planOf(picture, options.previous);
  const answer = await engine.layout(plan.graph, { lane: options.lane ?? 'picture' });
  return answer.kind === 'laid' ? { kind: 'placed', placed: applied(picture, plan, answer) } : answer;
}
