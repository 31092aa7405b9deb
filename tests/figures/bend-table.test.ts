/**
 * The table that a tube is bent by, against: a workshop note on a closed rectangle (S37: four 90° bends of 5/8 in radius
 * round 5 in by 7 in, arc .98 in, straights 5.75 in and 3.75 in) and its closed form; rotation matrices of an independent
 * library (mathjs) that bend a tube by the table and arrive where the points of the route say.
 */
import fc from 'fast-check';
import { add, cross, divide, type MathArray, matrix, multiply, norm, rotationMatrix, subtract } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type BendTable, bendTable } from '../../language/figures/bend-table.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

function tableOf(statements: string, name = 'line'): BendTable {
  const text = `run line {\n  tube 1/4 in\n  ${statements}\n}\nmirror line as other {}\n`;
  expect(parseErrors(text)).toEqual([]);
  const run = readCircuit(text).planned.parts.find((part) => part.name === name);
  const table = run && bendTable(run);
  if (table === undefined) throw new Error('no table');
  return table;
}

const inch = (metres: number | undefined): number => (metres ?? Number.NaN) / 0.0254;
const degrees = (radians: number | undefined): number => ((radians ?? Number.NaN) * 180) / Math.PI;

describe('the bend table', () => {
  it('of a rectangle of 5 in by 7 in from corner to corner', () => {
    // Begun in the middle of a short side, so that all four corners are bends.
    const { bends, lastStraight } = tableOf(
      'bend-radius 5/8 in\n  route corner 2.5 in, bend 90 deg, corner 7 in, bend 90 deg, corner 5 in, bend 90 deg, corner 7 in, bend 90 deg, corner 2.5 in',
    );
    const arc = (Math.PI / 2) * 0.625;
    expect(arc).toBeCloseTo(0.98, 2);
    expect(bends.map(({ straight }) => inch(straight?.value))).toEqual([
      expect.closeTo(1.875, 9),
      expect.closeTo(5.75, 9),
      expect.closeTo(3.75, 9),
      expect.closeTo(5.75, 9),
    ]);
    const starts = [1.875, 1.875 + arc + 5.75, 1.875 + 2 * arc + 9.5, 1.875 + 3 * arc + 15.25];
    for (const [index, { start, end }] of bends.entries()) {
      expect(inch(start?.value)).toBeCloseTo(starts[index] ?? Number.NaN, 9);
      expect(inch(end?.value)).toBeCloseTo((starts[index] ?? Number.NaN) + arc, 9);
    }
    expect(inch(lastStraight?.value)).toBeCloseTo(1.875, 9);
    // The whole loop: 22.927 in in S37, recomputed there.
    expect(inch(bends[3]?.end?.value) + inch(lastStraight?.value)).toBeCloseTo(22.927, 3);
  });

  it('gives rotations within half a turn either way', () => {
    const turned = (turn: string) =>
      degrees(
        tableOf(
          `route straight 3 in, bend 90 deg radius 1 in, straight 3 in, turn ${turn}, bend 45 deg radius 1 in, straight 3 in`,
        ).bends[1]?.rotation?.value,
      );
    expect(turned('90 deg')).toBeCloseTo(90, 9);
    expect(turned('270 deg')).toBeCloseTo(-90, 9);
    expect(turned('-200 deg')).toBeCloseTo(160, 9);
    expect(turned('180 deg')).toBeCloseTo(180, 9);
    expect(turned('-180 deg')).toBeCloseTo(180, 9);
    expect(turned('720 deg')).toBeCloseTo(0, 9);
  });

  it('of the other side turns the other way and is otherwise the same', () => {
    const route =
      'route straight 3 in, bend 90 deg radius 1 in, straight 4 in, turn 60 deg, bend 45 deg radius 2 in, straight 5 in';
    const [own, other] = [tableOf(route), tableOf(route, 'other')];
    expect(other.bends.map(({ rotation }) => degrees(rotation?.value))).toEqual([0, expect.closeTo(-60, 9)]);
    const unturned = ({ bends }: BendTable) => bends.map(({ rotation, ...rest }) => rest);
    expect(unturned(other)).toEqual(unturned(own));
  });

  it('carries limits, and leaves out what is not known', () => {
    const { bends } = tableOf(
      'route straight 3 in ± 1/4 in, bend 90 deg radius 1 in, straight ?, bend 45 deg radius 1 in, straight 2 in',
    );
    expect([inch(bends[0]?.start?.low), inch(bends[0]?.start?.high)]).toEqual([
      expect.closeTo(2.75, 9),
      expect.closeTo(3.25, 9),
    ]);
    expect(bends[1]?.straight).toBeUndefined();
    expect(bends[1]?.start).toBeUndefined();
    expect(bends[1]?.end).toBeUndefined();
  });
});

const rolled = (by: number, about: MathArray, what: MathArray): MathArray =>
  multiply(rotationMatrix(by, matrix(about)), matrix(what)).toArray();

/** Bends a tube by the table, from a point along a direction, and says where its other end comes to lie. */
function bentBy(table: BendTable, from: MathArray, along: MathArray, normal: MathArray): MathArray {
  let [here, u, n] = [from, along, normal];
  for (const { straight, rotation, angle, radius } of table.bends) {
    if (!straight || !rotation || !angle || !radius) throw new Error('not known');
    here = add(here, multiply(u, straight.value)) as MathArray;
    n = rolled(rotation.value, u, n);
    const side = cross(n, u) as MathArray;
    const centre = add(here, multiply(side, radius.value)) as MathArray;
    here = add(centre, rolled(angle.value, n, subtract(here, centre) as MathArray)) as MathArray;
    u = rolled(angle.value, n, u);
  }
  return add(here, multiply(u, table.lastStraight?.value ?? Number.NaN)) as MathArray;
}

it('bends a tube that ends where the last point of the route is', () => {
  const step = fc.tuple(
    fc.integer({ min: -400, max: 400 }),
    fc.integer({ min: -400, max: 400 }),
    fc.integer({ min: -400, max: 400 }),
  );
  fc.assert(
    fc.property(fc.array(step, { minLength: 2, maxLength: 5 }), (steps) => {
      const unit = (v: MathArray): MathArray => divide(v, norm(v)) as MathArray;
      const legs = steps.map((each) => [...each]);
      fc.pre(legs.every((leg) => Number(norm(leg)) > 150));
      const bent = legs
        .slice(1)
        .map((leg, index) => Number(norm(cross(unit(legs[index] ?? []), unit(leg)) as MathArray)));
      const straightOn = legs.slice(1).map((leg, index) => Number(multiply(unit(legs[index] ?? []), unit(leg))));
      fc.pre(bent.every((sine) => sine > 0.1) && straightOn.every((cosine) => cosine > -0.7));
      const points = [[0, 0, 0]];
      for (const leg of legs) points.push(leg.map((d, axis) => d + (points.at(-1)?.[axis] ?? 0)));
      const route = points.map(([x, y, z]) => `point (${x} mm, ${y} mm, ${z} mm)`).join(', ');
      const table = tableOf(`bend-radius 15 mm\n  route ${route}`);
      const [u, next] = [unit(legs[0] ?? []), unit(legs[1] ?? [])];
      const end = bentBy(table, [0, 0, 0], u, unit(cross(u, next) as MathArray));
      const off = Number(
        norm(
          subtract(
            end,
            (points.at(-1) ?? []).map((mm) => mm / 1000),
          ) as MathArray,
        ),
      );
      expect(off).toBeLessThan(1e-9);
    }),
    { numRuns: 60 },
  );
});
