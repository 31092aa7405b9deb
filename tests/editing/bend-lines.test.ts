/** The bends of a run as a hover tells them. */
import { expect, it } from 'vitest';
import { bendLines } from '../../language/editing/bend-lines.ts';
import { partIdOf } from '../../language/system/part.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

function told(route: string): readonly string[] {
  const text = `run feed {\n  tube 3/16 in wall 0.028 in steel\n  ${route}\n}\n`;
  expect(parseErrors(text)).toEqual([]);
  const run = readCircuit(text).planned.partById.get(partIdOf(['feed']));
  if (run === undefined) throw new Error('the run is not there');
  return bendLines(run).map(({ text: line }) => line);
}

// Arc of a bend: radius times angle in radians, plane geometry. 20 mm × π/2 = 31.4 mm, 20 mm × π/4 = 15.7 mm.
it('tells each bend with its turn and where it begins and ends', () => {
  expect(
    told(
      'route straight 100 mm, bend 90 deg radius 20 mm, straight 50 mm, turn -90 deg, bend 45 deg radius 20 mm, straight 60 mm',
    ),
  ).toEqual([
    'Bends, marked from the face of the flare at the from end:',
    '1: 90° about radius 20 mm, begins at 100 mm, ends at 131.4 mm',
    '2: turn 90° anticlockwise, then 45° about radius 20 mm, begins at 181.4 mm, ends at 197.1 mm',
  ]);
});

it('tells a bend back in the same plane as a turn by half', () => {
  expect(
    told(
      'route straight 100 mm, bend 30 deg radius 20 mm, straight 50 mm, turn 180 deg, bend 30 deg radius 20 mm, straight 60 mm',
    )[2],
  ).toMatch(/^2: turn 180°, then 30° /);
  expect(
    told(
      'route straight 100 mm, bend 30 deg radius 20 mm, straight 50 mm, bend 30 deg radius 20 mm, straight 60 mm',
    )[2],
  ).toMatch(/^2: in the same plane 30° /);
});

it('says what is not known, and gives no mark behind it', () => {
  expect(told('route straight ?, bend 90 deg radius 20 mm, straight 60 mm')).toEqual([
    'Bends, marked from the face of the flare at the from end:',
    '1: 90° about radius 20 mm, begins at not known, ends at not known',
  ]);
});

it('tells nothing of a run without bends', () => {
  expect(told('length 300 mm')).toEqual([]);
  expect(told('route straight 300 mm')).toEqual([]);
});
