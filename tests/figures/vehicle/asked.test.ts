import { describe, expect, it } from 'vitest';
import { figure, figuresIn, lacks, value } from '../ask.ts';
import { saloon } from './saloon.ts';

const of = (vehicle: string, more: Parameters<typeof saloon>[0] = {}) => figuresIn(saloon({ vehicle, ...more }));
const informs = [
  'load.push-for-service-stop',
  'load.lock-order-lead',
  'load.utilisation-margin',
  'vehicle.service-deceleration-asked',
  'vehicle.failed-deceleration-asked',
];

describe('what standards ask', () => {
  it('is silent where class or year are not stated', () => {
    for (const vehicle of ['', 'class car', 'first-use 2005', 'class other first-use 2005']) {
      const ids = of(vehicle).all.map(({ id }) => id);
      expect(
        ids.filter((id) => informs.includes(id)),
        vehicle,
      ).toEqual([]);
    }
  });

  // 49 CFR 571.135 S7.5.3 and S7.10.4: 0.10 V + 0.0060 V² and 0.10 V + 0.0158 V².
  it('is told with its section, as information', () => {
    const figures = of('class car first-use 2005');
    expect(value(figures, 'system', 'vehicle.service-deceleration-asked')).toBeCloseTo(6.43, 2);
    const failed = figure(figures, 'system', 'vehicle.failed-deceleration-asked');
    expect(failed.source.text).toBe('49 CFR 571.135 S7.10.4');
    expect(failed.notes.join(' ')).toMatch(/no certificate/);
    expect(failed.notes.join(' ')).toMatch(/at most 500 N/);
  });

  it('says that a later standard does not bind', () => {
    const { notes } = figure(of('class light-goods first-use 1961'), 'system', 'vehicle.failed-deceleration-asked');
    expect(notes.join(' ')).toMatch(/came in 1983, after this vehicle, and does not bind it/);
  });

  it('tells the push for the stop that is asked, in the straight line of the pedal', () => {
    const figures = of('class car first-use 2005', {
      frontBrake: 'push-out 0 bar disc { effective-radius 105 mm } pads { friction 0.38 }',
      rearBrake: 'shoes leading-trailing push-out 0 bar brake-factor 2 drum 228.6 mm',
    });
    const ratio = value(figures, 'load driver', 'load.deceleration-at-push') / 400;
    const push = value(figures, 'load driver', 'load.push-for-service-stop');
    expect(push * ratio).toBeCloseTo(1 / (25.92 * 0.006), 3);
    const notes = figure(figures, 'load driver', 'load.push-for-service-stop').notes.join(' ');
    expect(notes).toMatch(/at most 500 N \(49 CFR 571\.135 S7\.5\)/);
  });

  it('says a push that no leg can give as out of reach, never as a number', () => {
    const figures = of('class car first-use 2005', {
      frontBrake: 'push-out 0.5 bar disc { effective-radius 10 mm } pads { friction 0.1 }',
      rearBore: '8 mm',
    });
    expect(lacks(figures, 'load driver', 'load.push-for-service-stop').join()).toMatch(/^more than 1300 N of push/);
  });

  it('finds the rear ahead where the rear is strong, and says so beside the section', () => {
    const strong = of('class car first-use 2005', { rearBore: '25.4 mm' });
    expect(value(strong, 'load driver', 'load.lock-order-lead')).toBeLessThan(0);
    expect(figure(strong, 'load driver', 'load.lock-order-lead').notes.join(' ')).toMatch(/the rear axle is ahead/);
    expect(value(of('class car first-use 2005'), 'load driver', 'load.lock-order-lead')).toBeGreaterThan(0);
  });

  // UN R13-H Annex 5 (from memory): z ≥ 0.1 + 0.7 (k − 0.2). All force on one axle wastes the other.
  it('finds the margin over the adhesion used, less than nothing without rear brakes worth the name', () => {
    expect(value(of('class car first-use 2005'), 'load driver', 'load.utilisation-margin')).toBeGreaterThan(0);
    const weak = of('class car first-use 2005', {
      rearBore: '6 mm',
      load: 'mass 1400 kg cg-behind-front-axle 1.500 m cg-height 0.560 m',
    });
    expect(value(weak, 'load driver', 'load.utilisation-margin')).toBeLessThan(0);
  });
});
