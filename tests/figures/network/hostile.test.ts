/** Impossible and outlandish sizes: an answer or a name of what is wanting, never a number that is none. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { explainFigure, type Figures, figuresOf, type Result } from '../../../language/figures/index.ts';
import { readCircuit } from '../../support/read.ts';
import { carText, ids, pressed } from './reference-car.ts';

const numbers = fc.constantFrom('0', '-3', '1e-30', '5', '1e9', '1e300', '?', '3 .. 400', 'about 7', '? assume 9');
const size = (unit: string) => numbers.map((number) => number.replace(/(\d)( |$)/g, `$1 ${unit}$2`).trim());

const cars = fc.record({
  bore: size('mm'),
  secondBore: fc.option(
    size('mm').map((bore) => `bore ${bore}`),
    { nil: '' },
  ),
  strokes: fc.tuple(size('mm'), size('mm')),
  pedal: fc
    .tuple(numbers, numbers, size('mm'), size('mm'), size('N'))
    .map(
      ([ratio, efficiency, play, travel, back]) =>
        `ratio ${ratio} efficiency ${efficiency} free-play ${play} travel ${travel} return-force ${back} push 300 N`,
    ),
  shoeClearance: size('mm'),
  caliper: size('mm').map((clearance) => `clearance ${clearance}`),
  rearValve: fc.tuple(size('bar'), numbers).map(
    ([knee, slope]) =>
      `proportioning-valve valve { ports in, out: 3/8-24 inverted-flare split-point ${knee} slope ${slope} }
run rear-on of line { length 0.2 m from valve.out to rear-tee.feed }`,
  ),
  pushes: fc.constant('helper'),
  extra: fc
    .tuple(numbers, size('bar'))
    .map(([gain, knee]) => `booster helper { site pedal gain ${gain} knee ${knee} pushes main }`),
});

function judge(result: Result | undefined): void {
  if (result === undefined) return;
  if (result.kind === 'unknown') {
    expect(result.waitsFor.length).toBeGreaterThan(0);
    return;
  }
  const { low, value, high } = result.estimate;
  expect([low, value, high].every(Number.isFinite)).toBe(true);
  expect(low).toBeLessThanOrEqual(value);
  expect(value).toBeLessThanOrEqual(high);
}

it('come to finite numbers in order, or to a need with a name', () => {
  fc.assert(
    fc.property(cars, fc.constantFrom([], ['front-tee'], ['rear-left'], ['helper']), (car, failed) => {
      const figures: Figures = figuresOf(readCircuit(carText(car)).planned);
      for (const push of [0, 300, 1e9]) {
        const answer = pressed(figures, push, { failed: ids(...failed) });
        for (const { pressure, stroke } of answer.chambers) [pressure, stroke].forEach(judge);
        [answer.pedalTravel, answer.rodForce, answer.pistonForce].forEach(judge);
        for (const part of ids('rear-left.cylinder', 'front-right.caliper', 'valve')) judge(answer.pressureAt(part));
        for (const { volume } of answer.contributors) expect(Number.isFinite(volume.value)).toBe(true);
      }
      const told = figures.all.flatMap((figure) => explainFigure(figure).map(({ text }) => text)).join('\n');
      expect(told).not.toMatch(/NaN|Infinity|undefined/);
    }),
    { numRuns: 100 },
  );
});
