import { describe, expect, it } from 'vitest';
import { si } from '../../language/quantity/index.ts';
import { brakingStandardsFor } from '../../language/standards/braking-standards.ts';
import { allowedDistance, meanDeceleration, steadyDeceleration } from '../../language/standards/stopping.ts';

const kilometresPerHour = (speed: number) => si('speed', speed / 3.6);
const milesPerHour = (speed: number) => si('speed', speed * 0.44704);
const feet = (length: number) => si('length', length * 0.3048);

describe('stopping distances', () => {
  // 49 CFR 571.135 S7.5.3, S7.7.4, S7.8.3, S7.9.3, S7.10.4, S7.14.3: distance at 100 km/h beside its formula.
  it.each([
    [0.006, 70],
    [0.0075, 85],
    [0.01, 110],
    [0.0158, 168],
    [0.0079, 89],
  ])('0.10 V + %d V² at 100 km/h is %d m', (k, metres) => {
    expect(Math.round(allowedDistance(k, kilometresPerHour(100)))).toBe(metres);
  });

  // The steady decelerations of the same formulas, and UN R13-H Annex 3 (from memory): 6.43 and 2.44 m/s².
  it.each([
    [0.006, 6.43],
    [0.0158, 2.44],
    [0.0067, 5.76],
  ])('0.10 V + %d V² means %d m/s²', (k, deceleration) => {
    expect(steadyDeceleration(k)).toBeCloseTo(deceleration, 2);
  });

  // UN R13 Annex 4, 2.2.1: 2 v²/150, 2 v²/130, 2 v²/115 stand beside 2.9, 2.5 and 2.2 m/s²; 93.3 m from 80 km/h.
  it.each([
    [2 / 150, 2.9],
    [2 / 130, 2.5],
    [2 / 115, 2.2],
  ])('the failed-circuit formulas of UN R13 agree with its decelerations', (k, deceleration) => {
    expect(steadyDeceleration(k)).toBeCloseTo(deceleration, 1);
  });

  it('a car stops from 80 km/h with a circuit failed in 93.3 m by UN R13', () => {
    expect(allowedDistance(2 / 150, kilometresPerHour(80))).toBeCloseTo(93.3333, 4);
  });

  // Gillespie, Fundamentals of Vehicle Dynamics, chapter 3, from memory: 60 mph in 218.6 ft is 17.72 ft/s².
  it('60 mph in 218.6 ft is 17.72 ft/s²', () => {
    expect(meanDeceleration(milesPerHour(60), feet(218.552)) / 0.3048).toBeCloseTo(17.7166, 3);
  });

  // 49 CFR 571.105 Table III prints 554 ft beside 7.0 ft/s² and 646 ft beside 6.0 ft/s² (60 mph).
  it.each([
    [554, 7],
    [646, 6],
  ])('%d ft from 60 mph is %d ft/s²', (distance, deceleration) => {
    expect(meanDeceleration(milesPerHour(60), feet(distance)) / 0.3048).toBeCloseTo(deceleration, 1);
  });
});

describe('standards by class and year', () => {
  const all = ['car', 'light-goods'].flatMap((vehicleClass) =>
    [1961, 1971, 1980, 1995, 2000, 2010].flatMap((year) =>
      brakingStandardsFor({ vehicleClass, year }).map(({ standard }) => standard),
    ),
  );
  const namesFor = (vehicleClass: string, year: number) =>
    brakingStandardsFor({ vehicleClass, year }).map(({ standard, standing }) => `${standard.name} ${standing}`);

  it('are those that stood in the year', () => {
    expect(namesFor('car', 1971)).toEqual(['49 CFR 571.105 as first issued of its year']);
    expect(namesFor('car', 1985)).toEqual(['49 CFR 571.105 of its year']);
    expect(namesFor('car', 2010)).toEqual(['49 CFR 571.135 of its year', 'UN Regulation No. 13-H of its year']);
    expect(namesFor('light-goods', 1990)).toEqual(['49 CFR 571.105 of its year']);
  });

  it('of the year of change are both', () => {
    expect(namesFor('car', 2000)).toContain('49 CFR 571.105 of its year');
    expect(namesFor('car', 2000)).toContain('49 CFR 571.135 of its year');
  });

  it('of a year before all of them is the first that came', () => {
    expect(namesFor('light-goods', 1961)).toEqual(['49 CFR 571.105 later']);
    expect(namesFor('car', 1930)).toEqual(['49 CFR 571.105 as first issued later']);
  });

  it('are none for a class that the table does not know', () => {
    expect(namesFor('other', 1990)).toEqual([]);
  });

  it('name the section of every number', () => {
    for (const { service, circuitFailed, push, lockOrder, utilisation, parking } of all) {
      for (const rule of [service, circuitFailed, push, lockOrder, utilisation, parking]) {
        if (rule) expect(rule.source.text).toMatch(/571\.\d+|R13-H/);
      }
    }
  });

  // 49 CFR 571.135 S7.12.2 and 571.105 S5.2(a): 400 N and 90 lbf by hand, 500 N and 125 lbf by foot.
  it('limit the hand to about 400 N in every parking test', () => {
    for (const { parking } of all) {
      if (parking === undefined) continue;
      expect(parking.hand).toBeGreaterThanOrEqual(400);
      expect(parking.hand).toBeLessThan(400.4);
    }
  });
});
