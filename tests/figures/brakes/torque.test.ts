import { describe, expect, it } from 'vitest';
import { brakeLaw } from '../../../language/figures/brakes/brake-law.ts';
import { brakeTorque } from '../../../language/figures/brakes/brake-torque.ts';
import { exactly, si } from '../../../language/quantity/index.ts';
import type { Part } from '../../../language/system/part.ts';
import { readCircuit } from '../../support/read.ts';
import { estimate, figure, figuresIn, lacks, shown, value } from '../ask.ts';
import { saloon, saloonDefaults } from '../vehicle/saloon.ts';

/** N·m of the one brake of a text at a pressure (Pa). */
function torqueOf(text: string, pressure: number): number {
  const brake: Part | undefined = readCircuit(text).planned.parts[0];
  const law = brake && brakeLaw(brake, 'forward');
  if (law === undefined) throw new Error('no fluid applies it');
  const result = brakeTorque(law, () => ({
    kind: 'known',
    dimension: 'pressure',
    estimate: exactly(si('pressure', pressure)),
    leftOut: [],
  }));
  if (result.kind === 'unknown') throw new Error(result.waitsFor.map(({ name }) => name).join(', '));
  return result.estimate.value;
}

const disc = (facts: string, caliper: string) =>
  `disc-brake front-left { push-out 0 bar ${facts} caliper { ${caliper} port feed: M10x1 bubble } }`;
const drum = (facts: string, cylinders = 'cylinder { bore 20 mm ends double port feed: M10x1 bubble }') =>
  `drum-brake rear-left { push-out 0 bar ${facts} drum 250 mm linings { friction 0.35 } ${cylinders} }`;
const areaOf20 = Math.PI * 1e-4;

describe('a disc brake', () => {
  // A student brake team's data sheet (2 pistons of 20 mm, π as 3.14): 3021980.813 Pa give 62.62753036 N·m as printed.
  it('of the data sheet gives 62.6 N·m at 3.02 MPa on one side', () => {
    const text = disc(
      'disc { effective-radius 82.5 mm } pads { friction 0.4 }',
      'mounting sliding bore 20 mm pistons 2',
    );
    // The sheet takes the friction of one face only.
    expect((torqueOf(text, 3021980.813) / 2) * (3.14 / Math.PI)).toBeCloseTo(62.62753036, 7);
  });

  // The pads of Bhandari, example 12.12, 100 mm to 150 mm: 125 mm by the rule of uniform wear (from memory).
  it('with the band of its pads stated acts at the middle of it', () => {
    const text = disc('disc { diameter 300 mm inner-diameter 200 mm } pads { friction 0.35 }', 'bore 54 mm pistons 1');
    const clamped = (Math.PI / 4) * 0.054 ** 2 * 1e6;
    expect(torqueOf(text, 1e6)).toBeCloseTo(2 * 0.35 * clamped * 0.125, 9);
  });

  it('fixed or sliding counts the pistons of one side once', () => {
    const facts = 'disc { effective-radius 100 mm } pads { friction 0.4 }';
    const sliding = torqueOf(disc(facts, 'mounting sliding bore 40 mm pistons 2'), 5e6);
    expect(torqueOf(disc(facts, 'mounting fixed bore 40 mm pistons 2'), 5e6)).toBe(sliding);
  });

  it('loses the efficiency of its caliper, where that is stated', () => {
    const facts = 'disc { effective-radius 100 mm } pads { friction 0.4 }';
    const whole = torqueOf(disc(facts, 'bore 40 mm pistons 2'), 5e6);
    expect(torqueOf(disc(facts, 'bore 40 mm pistons 2 efficiency 0.97'), 5e6)).toBeCloseTo(0.97 * whole, 9);
  });
});

describe('a drum brake', () => {
  // By the definition of the brake factor: friction force at the drum over the force of one piston.
  it('with a stated factor gives factor × force of one piston × radius', () => {
    const text = drum('shoes leading-trailing brake-factor 2.2');
    expect(torqueOf(text, 4e6)).toBeCloseTo(2.2 * 4e6 * areaOf20 * 0.125, 9);
  });

  it('does nothing up to its push-out pressure', () => {
    const text = drum('shoes servo brake-factor 5').replace('push-out 0 bar', 'push-out 4 bar');
    expect(torqueOf(text, 4e5)).toBe(0);
    expect(torqueOf(text, 14e5)).toBeCloseTo(5 * 1e6 * areaOf20 * 0.125, 9);
  });

  const two = `cylinder upper { bore 20 mm ends single port feed: M10x1 bubble }
    cylinder lower { bore 20 mm ends single port feed: M10x1 bubble }`;

  it('with two leading shoes shares the factor between its cylinders', () => {
    const text = drum('shoes two-leading brake-factor 3', two);
    expect(torqueOf(text, 4e6)).toBeCloseTo(3 * 4e6 * areaOf20 * 0.125, 9);
  });

  it('does not guess how two cylinders share leading and trailing shoes, or which shoe a step works', () => {
    const third = drum('brake-factor 2', two).replace('rear-left', 'rear-third');
    const twice = figuresIn(saloon({ more: third }));
    expect(lacks(twice, 'rear-third', 'brake.torque-at-push')).toContain(
      'how 2 cylinders of rear-third share its shoes',
    );
    const stepped = figuresIn(saloon({ rearBore: '20 mm second-bore 16 mm' }).replaceAll(' ends double', ''));
    expect(lacks(stepped, 'rear-left', 'brake.torque-at-push')).toEqual([
      'which shoe of rear-left the first piston of rear-left cylinder works',
    ]);
  });
});

describe('the saloon at 400 N', () => {
  // Worked apart from this program by formulas of the handbooks: 5.87708 MPa, discs and drums as stated.
  const figures = figuresIn(saloon());

  it('brakes with 1064.95 N·m at each front wheel and 345.109 N·m at each rear wheel', () => {
    expect(value(figures, 'front-left', 'brake.torque-at-push')).toBeCloseTo(1064.95, 2);
    expect(value(figures, 'rear-right', 'brake.torque-at-push')).toBeCloseTo(345.109, 3);
  });

  it('by shoe factors of 1.42964 and 0.540437', () => {
    expect(value(figures, 'rear-left', 'brake.factor')).toBeCloseTo(1.42964 + 0.540437, 5);
  });

  it('pulls with the torque over the radius of the tyre', () => {
    expect(2 * value(figures, 'front-left', 'brake.force-at-push')).toBeCloseTo(6983.31, 2);
    expect(2 * value(figures, 'rear-left', 'brake.force-at-push')).toBeCloseTo(2263.01, 2);
  });

  it('says what it waits for where it is not stated', () => {
    const unknown = figuresIn(saloon({ rearBrake: 'shoes two-leading push-out 5 bar drum 10 in', push: '' }));
    expect(lacks(unknown, 'front-left', 'brake.torque-at-push')).toEqual(['push of brakes']);
    const pushed = figuresIn(saloon({ rearBrake: 'shoes two-leading push-out 5 bar drum 10 in' }));
    expect(lacks(pushed, 'rear-left', 'brake.torque-at-push')).toEqual(['brake-factor of rear-left']);
  });

  it('takes the usual push-out where none is stated, and says so', () => {
    const silent = figuresIn(saloon({ frontBrake: 'disc { effective-radius 105 mm } pads { friction 0.38 }' }));
    expect(shown(silent, 'front-left', 'brake.torque-at-push')).toBe('about 1065 N·m');
    expect(figure(silent, 'front-left', 'brake.torque-at-push').notes).toContain(
      'The file states no push-out pressure of the brake: the usual one of its kind is taken.',
    );
  });
});

describe('friction', () => {
  const sensitivity = (brake: string) =>
    value(figuresIn(saloon({ rearBrake: brake })), 'rear-left', 'brake.friction-sensitivity');

  it('of pads counts in proportion', () => {
    expect(value(figuresIn(saloon()), 'front-left', 'brake.friction-sensitivity')).toBe(1);
  });

  // By differentiating the formula of the pivoted shoe: for a leading shoe 1 / (1 − rubbing / normal moment).
  it('of drum linings counts more the more the shoes lead', () => {
    const { rearBrake } = saloonDefaults;
    const [r, a, from, to, mu] = [114.3, 90, (20 * Math.PI) / 180, (125 * Math.PI) / 180, 0.36];
    const normal = a * ((to - from) / 2 - (Math.sin(2 * to) - Math.sin(2 * from)) / 4);
    const rubbing = mu * (r * (Math.cos(from) - Math.cos(to)) - (a / 2) * (Math.sin(to) ** 2 - Math.sin(from) ** 2));
    const [leading, trailing] = [1 / (1 - rubbing / normal), 1 / (1 + rubbing / normal)];
    const shares = (1.42964117 * leading + 0.54043657 * trailing) / (1.42964117 + 0.54043657);
    expect(sensitivity(rearBrake)).toBeCloseTo(shares, 5);
    expect(sensitivity(rearBrake.replace('leading-trailing', 'two-leading'))).toBeCloseTo(leading, 5);
  });
});

describe('reverse', () => {
  const geometry = 'pivot-radius 100 mm lever-arm 200 mm lining-start 35 deg lining-end 145 deg';
  const brake = (shoes: string, facts: string) =>
    figuresIn(saloon({ rearBrake: `shoes ${shoes} push-out 5 bar ${facts} drum 254 mm linings { friction 0.30 }` }));

  // The same drum as in the table of arrangements: 2.44042 forward, 0.957153 back.
  it('two leading shoes become two trailing ones', () => {
    const figures = brake('two-leading', geometry);
    expect(value(figures, 'rear-left', 'brake.factor')).toBeCloseTo(2.44042, 5);
    expect(value(figures, 'rear-left', 'brake.factor-reverse')).toBeCloseTo(0.957153, 5);
  });

  it('of a stated factor is told in words only', () => {
    const figures = brake('two-leading', 'brake-factor 2.44');
    expect(figures.find('rear-left', 'brake.factor-reverse')).toBeUndefined();
    expect(figure(figures, 'rear-left', 'brake.factor').notes.join()).toMatch(/In reverse both shoes trail/);
  });

  it('leading and trailing shoes brake the same', () => {
    expect(brake('leading-trailing', geometry).find('rear-left', 'brake.factor-reverse')).toBeUndefined();
  });

  // Statics of a floating primary shoe: 3.83566 at friction 0.30, some per cent high, so told as about.
  it('a servo brake is worked out from its own sizes', () => {
    const figures = brake(
      'servo',
      'cylinder-offset 100 mm adjuster-offset 100 mm anchor-offset 110 mm lining-arc 110 deg',
    );
    expect(value(figures, 'rear-left', 'brake.factor')).toBeCloseTo(3.83566, 5);
    expect(estimate(figures, 'rear-left', 'brake.factor').about).toBe(true);
  });

  it('shoes that jam by themselves have no factor', () => {
    const figures = figuresIn(
      saloon({
        rearBrake: `shoes two-leading push-out 5 bar pivot-radius 60 mm lever-arm 200 mm lining-start 20 deg
          lining-end 140 deg drum 300 mm linings { friction 0.9 }`,
      }),
    );
    expect(lacks(figures, 'rear-left', 'brake.factor')).toEqual([
      'sizes and friction of the shoes of rear-left with which the shoes do not grab by themselves',
    ]);
  });
});
