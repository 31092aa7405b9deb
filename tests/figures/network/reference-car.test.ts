/** The reference car against figures worked out beside this program. */
import { describe, expect, it } from 'vitest';
import { si } from '../../../language/quantity/index.ts';
import { carFigures, chamber, number, pressed, volumeOf } from './reference-car.ts';

const cm3 = 1e-6;
const MPa = 1e6;
const mm = 1e-3;
// The circuit-wide figures count 0.5 cm³ of air in the whole car: half of it in each circuit.
const air = si('volume', 0.25 * cm3);

describe('the reference car at 400 N', () => {
  const answer = pressed(carFigures(), 400, { air });

  // Own example D01 (arithmetic by an independent program): 22.225 mm bore, 6.0:1 at 0.95.
  it('makes the line pressure of the lever and the bore', () => {
    expect(number(chamber(answer, 'main.primary').pressure) / MPa).toBeCloseTo(5.87708, 5);
    expect(number(chamber(answer, 'main.secondary').pressure) / MPa).toBeCloseTo(5.87708, 5);
    expect(number(answer.rodForce)).toBeCloseTo(2280, 6);
  });

  // Own example D06, the same program: the volumes that add up to the pedal travel.
  it.each([
    ['front gaps', 1.14511, 'gap', 'front'],
    ['rear gaps', 0.790305, 'gap', 'rear'],
    ['front brakes giving way', 1.76312, 'brake', 'front'],
    ['rear brakes giving way', 1.4105, 'brake', 'rear'],
  ])('takes for %s %d cm³', (_, volume, what, where) => {
    const taken = volumeOf(answer, (each) => each.what === what && each.part.startsWith(where));
    expect(taken / cm3).toBeCloseTo(volume, 4);
  });

  // D06 rounds the limit of 571.106 to 0.314 cm³/(m·MPa); 0.66 cm³/ft at 1000 psi is 0.31406.
  it.each([
    ['front', 0.922701],
    ['rear', 0.553621],
  ])('takes for the swelling of the %s hoses what D06 says, to the rounding of its rate', (where, volume) => {
    const taken = volumeOf(answer, ({ what, part }) => what === 'hose' && part.startsWith(where));
    expect(taken / cm3 / volume).toBeCloseTo(0.31406 / 0.314, 4);
  });

  it('takes for the stretch of the tubes 2.6 % of what the fluid takes', () => {
    const tube = volumeOf(answer, ({ what }) => what === 'tube');
    // D06 counts no fluid in the hoses.
    const fluid = volumeOf(answer, ({ what, part }) => what === 'fluid' && !part.includes('hose'));
    expect(tube / cm3).toBeCloseTo(0.0137871, 4);
    expect(fluid / cm3).toBeCloseTo(0.532535, 3);
    expect((100 * tube) / fluid).toBeCloseTo(2.58896, 1);
  });

  it('takes for half a cubic centimetre of air 0.4915 cm³', () => {
    expect(volumeOf(answer, ({ what }) => what === 'air') / cm3).toBeCloseTo(0.491526, 6);
  });

  it('moves the pedal by what they add up to', () => {
    const hoses = volumeOf(answer, ({ what }) => what === 'hose');
    const hoseFluid = volumeOf(answer, ({ what, part }) => what === 'fluid' && part.includes('hose'));
    const others = 7.62321 * cm3 - (0.922701 + 0.553621) * cm3;
    const stroke = 0.8 * mm + (others + hoses + hoseFluid) / 387.948e-6;
    expect(number(answer.pedalTravel) / mm).toBeCloseTo((6 * stroke) / mm, 1);
  });
});

describe('the reference car with other bores', () => {
  // Own example D21: pressure at 400 N by bore.
  it.each([
    [19.05, 7.99936],
    [20.64, 6.81437],
    [22.225, 5.87708],
    [23.81, 5.12066],
    [25.4, 4.49964],
    [26.99, 3.9851],
    [28.575, 3.55527],
  ])('makes with %d mm %d MPa', (bore, pressure) => {
    const answer = pressed(carFigures({ bore: `${bore} mm` }), 400);
    expect(number(chamber(answer, 'main.primary').pressure) / MPa).toBeCloseTo(pressure, 5);
  });
});

describe('the reference car with a vacuum booster', () => {
  // Own example D09: 9 in diaphragm, 20 inHg, efficiency 0.95, ratio 4.5, pedal 4.0:1 at 0.95, 25.4 mm master.
  const figures = carFigures({
    bore: '25.4 mm',
    strokes: ['40 mm', '40 mm'],
    pedal: 'ratio 4 efficiency 0.95 free-play 0 mm',
    pushes: 'helper',
    extra: 'booster helper { site pedal gain 4.5 diaphragm 9 in vacuum 20 inHg efficiency 0.95 pushes main }',
  });

  it.each([
    [50, 1.68736],
    [100, 3.37473],
    [150, 5.06209],
    [200, 6.71153],
    [300, 7.46147],
    [400, 8.21141],
  ])('makes of %d N %d MPa', (push, pressure) => {
    const answer = pressed(figures, push);
    expect(number(chamber(answer, 'main.primary').pressure) / MPa).toBeCloseTo(pressure, 4);
  });

  it('is left with the lever alone when the booster has failed', () => {
    const answer = pressed(figures, 400, { failed: new Set(['helper' as never]) });
    expect(number(chamber(answer, 'main.primary').pressure) / MPa).toBeCloseTo(2.99976, 5);
  });
});
