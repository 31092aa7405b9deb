import fc from 'fast-check';
import { type Matrix, matrix, multiply, rotationMatrix } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { developRoute, type RouteItem } from '../../language/figures/route-geometry.ts';
import { type BentRoute, pointsOfRoute, type RoutePoint } from '../../language/figures/route-points.ts';
import { si } from '../../language/quantity/dimension.ts';
import { exactly } from '../../language/quantity/estimate.ts';

const length = fc.double({ min: 0.01, max: 0.6, noNaN: true }).map((value) => si('length', value));
const bend = fc.record({
  angle: fc.double({ min: 0.05, max: 2, noNaN: true }).map((value) => si('angle', value)),
  radius: fc.double({ min: 0.008, max: 0.05, noNaN: true }).map((value) => si('length', value)),
  rotation: fc.double({ min: -3.1, max: 3.1, noNaN: true }).map((value) => si('angle', value)),
});

/** Routes of up to six bends, the first of them lying to the left. */
const bentRoute: fc.Arbitrary<BentRoute> = fc
  .array(fc.tuple(length, bend), { minLength: 1, maxLength: 6 })
  .chain((parts) =>
    length.map((last) => ({
      straights: [...parts.map(([straight]) => straight), last],
      bends: parts.map(([, each], index) => (index === 0 ? { ...each, rotation: si('angle', 0) } : each)),
    })),
  );

const asItems = (points: readonly RoutePoint[]): readonly RouteItem[] =>
  points.map(({ point: [x, y, z], radius }) => ({
    kind: 'point',
    point: [exactly(x), exactly(y), exactly(z)],
    ...(radius === undefined ? {} : { radius: exactly(radius) }),
  }));

/** Forward along the tube by 4×4 matrices of mathjs: where the tube's end stands and how it points. */
function endByMatrices(route: BentRoute): { readonly point: number[]; readonly direction: number[] } {
  const shifted = (x: number, y: number, z: number) =>
    matrix([
      [1, 0, 0, x],
      [0, 1, 0, y],
      [0, 0, 1, z],
      [0, 0, 0, 1],
    ]);
  const turned = (angle: number, axis: readonly number[]) => {
    const rotation = rotationMatrix(angle, matrix([...axis]));
    const rows = [0, 1, 2].map((row) => [...[0, 1, 2].map((column) => Number(rotation.get([row, column]))), 0]);
    return matrix([...rows, [0, 0, 0, 1]]);
  };
  let frame = shifted(0, 0, 0);
  const go = (step: Matrix) => {
    frame = multiply(frame, step);
  };
  for (const [index, { angle, radius, rotation }] of route.bends.entries()) {
    go(shifted(route.straights[index] ?? 0, 0, 0));
    go(turned(rotation, [1, 0, 0]));
    go(shifted(radius * Math.sin(angle), radius * (1 - Math.cos(angle)), 0));
    go(turned(angle, [0, 0, 1]));
  }
  go(shifted(route.straights.at(-1) ?? 0, 0, 0));
  const at = (row: number, column: number) => Number(frame.get([row, column]));
  return { point: [0, 1, 2].map((row) => at(row, 3)), direction: [0, 1, 2].map((row) => at(row, 0)) };
}

const sameTurn = (a: number, b: number) => Math.cos(a - b) > 1 - 1e-9;

describe('a bent route as points', () => {
  it('ends where homogeneous matrices say', () => {
    fc.assert(
      fc.property(bentRoute, (route) => {
        const points = pointsOfRoute(route);
        const end = points.at(-1)?.point ?? [];
        for (const [axis, value] of endByMatrices(route).point.entries()) expect(end[axis]).toBeCloseTo(value, 9);
      }),
    );
  });

  it('comes back from its points as it was: lengths, angles, turns, total', () => {
    fc.assert(
      fc.property(bentRoute, (route) => {
        const back = developRoute(asItems(pointsOfRoute(route)));
        expect(back.problems).toEqual([]);
        for (const [index, straight] of route.straights.entries())
          expect(back.straights[index]?.value).toBeCloseTo(straight, 9);
        for (const [index, { angle, radius, rotation }] of route.bends.entries()) {
          expect(back.bends[index]?.angle?.value).toBeCloseTo(angle, 9);
          expect(back.bends[index]?.radius?.value).toBe(radius);
          expect(sameTurn(back.bends[index]?.rotation?.value ?? Number.NaN, rotation)).toBe(true);
        }
        const arcs = route.bends.reduce((total, { angle, radius }) => total + angle * radius, 0);
        const straights = route.straights.reduce((total, straight) => total + straight, 0);
        expect(back.centrelineLength?.value).toBeCloseTo(arcs + straights, 9);
      }),
    );
  });

  it('keeps its hand: a route and its mirror image differ in the sign of their turns only', () => {
    fc.assert(
      fc.property(bentRoute, (route) => {
        const mirrored = pointsOfRoute(route).map((each) => {
          const [x, y, z] = each.point;
          return { ...each, point: [x, si('length', -y), z] as const };
        });
        const [here, there] = [developRoute(asItems(pointsOfRoute(route))), developRoute(asItems(mirrored))];
        for (const [index, each] of here.bends.entries())
          expect(
            sameTurn(each.rotation?.value ?? Number.NaN, -(there.bends[index]?.rotation?.value ?? Number.NaN)),
          ).toBe(true);
      }),
    );
  });

  it('turns by the right hand along the way to go: left, then up, is a quarter turn', () => {
    const points = [
      [0, 0, 0],
      [1, 0, 0],
      [1, 1, 0],
      [1, 1, 1],
    ].map(([x, y, z], index) => ({
      point: [si('length', x ?? 0), si('length', y ?? 0), si('length', z ?? 0)] as const,
      ...(index === 1 || index === 2 ? { radius: si('length', 0.02) } : {}),
    }));
    expect(developRoute(asItems(points)).bends[1]?.rotation?.value).toBeCloseTo(Math.PI / 2, 12);
  });

  it('a hairpin becomes two corners and keeps its length and its width', () => {
    const leg = si('length', 0.1);
    const radius = si('length', 0.015);
    const route = { straights: [leg, leg], bends: [{ angle: si('angle', Math.PI), radius, rotation: si('angle', 0) }] };
    const points = pointsOfRoute(route);
    expect(points.at(-1)?.point.map((value) => Math.round(value * 1e9) / 1e9 + 0)).toEqual([0, 0.03, 0]);
    expect(developRoute(asItems(points)).centrelineLength?.value).toBeCloseTo(0.2 + 0.015 * Math.PI, 12);
  });
});
