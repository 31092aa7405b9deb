/** Invisible plumb lines: a rear wheel stands under the front wheel of its side, as on the vehicle. */
import type { Side, Station } from '../picture.ts';
import { beginsWheelLine, type Structure, type Ways, waysOf } from './structure.ts';

export interface Guide {
  readonly above: number;
  readonly below: number;
}

const axles: readonly Station[] = ['front', 'rear'];
const sides: readonly Side[] = ['left', 'right'];

/** From the last wheel of a side on one axle to the line that comes down to the first wheel of that side on the next. */
export function guidesOf(structure: Structure, ranks: readonly number[]): readonly Guide[] {
  const fluid = structure.arcs.filter(({ carries }) => carries === 'fluid');
  const { out, into } = waysOf(fluid, structure.vertices.length);
  return sides.flatMap((side) => {
    const wheels = axles.flatMap((axle) => {
      const wheel = structure.vertices.findIndex(
        (vertex) => vertex.kind === 'part' && vertex.nodes[0].station === axle && vertex.nodes[0].side === side,
      );
      return wheel < 0 ? [] : [wheel];
    });
    return wheels.slice(1).flatMap((wheel, i): Guide[] => {
      const above = wheels[i] ?? 0;
      const level = ranks[above] ?? 0;
      if ((ranks[wheel] ?? 0) <= level) return [];
      return [{ above, below: topOfChain(wheel, level, { into, out, ranks, structure }) }];
    });
  });
}

interface Chart extends Ways {
  readonly ranks: readonly number[];
  readonly structure: Structure;
}

/** Up the one way that leads to the wheel, as long as it stays below the wheel of the axle before. */
function topOfChain(wheel: number, level: number, { into, out, ranks, structure }: Chart): number {
  let at = wheel;
  for (let steps = 0; steps < into.length; steps += 1) {
    const [before, ...others] = into[at] ?? [];
    if (before === undefined || others.length > 0 || (out[before] ?? []).length > 1) return at;
    if (beginsWheelLine(structure.vertices[before])) return at;
    if ((ranks[before] ?? 0) <= level) return at;
    at = before;
  }
  return at;
}
