/** Valves in the way: what reaches the wheels, and what is told where a valve is not known. */
import { describe, expect, it } from 'vitest';
import type { PortId } from '../../../language/system/part.ts';
import { figuresIn } from '../ask.ts';
import { carFigures, carText, chamber, id, number, pressed } from './reference-car.ts';

const bar = 1e5;
const ports = 'ports in, out: 3/8-24 inverted-flare';
const onward = 'run rear-on of line { length 0.2 m from valve.out to rear-tee.feed }';
const rearAt = (rearValve: string, push = 400) => pressed(carFigures({ rearValve: `${rearValve}\n${onward}` }), push);
/** Fitted the wrong way round: the master feeds its outlet. */
const turnedAt = (rearValve: string) => {
  const text = carText({ rearValve: `${rearValve}\n${onward}` });
  return pressed(
    figuresIn(text.replace('to valve.in', 'to valve.out').replace('from valve.out', 'from valve.in')),
    400,
  );
};
const rear = (answer: ReturnType<typeof pressed>) => answer.pressureAt(id('rear-left.cylinder'));

describe('behind a valve', () => {
  // Common practice for reducing valves: p = knee + slope × (p₁ − knee).
  it('that proportions stands the reduced pressure', () => {
    const answer = rearAt(`proportioning-valve valve { ${ports} split-point 30 bar slope 0.4 }`);
    const p = number(chamber(answer, 'main.secondary').pressure);
    expect(number(rear(answer))).toBeCloseTo(30 * bar + 0.4 * (p - 30 * bar), 3);
    expect(number(answer.pressureAtPort('valve.in' as PortId))).toBeCloseTo(p, 3);
    expect(number(answer.pressureAtPort('valve.out' as PortId))).toBeCloseTo(number(rear(answer)), 6);
    expect(number(answer.pressureAt(id('valve')))).toBeCloseTo(p, 3);
  });

  it('that proportions stands all of it below the split point, whatever the slope', () => {
    const answer = rearAt(`proportioning-valve valve { ${ports} split-point 30 bar slope ? }`, 150);
    expect(number(rear(answer))).toBeCloseTo(number(chamber(answer, 'main.secondary').pressure), 6);
  });

  it('that is not known stands a pressure that waits for it, and the front keeps its number', () => {
    const answer = rearAt(`proportioning-valve valve { ${ports} split-point 30 bar slope ? }`);
    expect(rear(answer)).toMatchObject({ kind: 'unknown', waitsFor: [{ name: 'slope of valve' }] });
    expect(answer.pressureAt(id('front-left.caliper'))).toMatchObject({ kind: 'known' });
    const { stroke } = chamber(answer, 'main.secondary');
    expect(stroke.kind === 'known' && stroke.leftOut.map(({ name }) => name)).toContain('slope of valve');
  });

  it('that meters stands nothing before it opens, and its fluid is not asked of the pedal', () => {
    const shut = rearAt(`metering-valve valve { ${ports} opens-at 6 bar full-at 22 bar }`, 30);
    expect(number(rear(shut))).toBe(0);
    expect(shut.contributors.some(({ part }) => part === 'rear-left.cylinder')).toBe(false);
    const open = rearAt(`metering-valve valve { ${ports} opens-at 6 bar full-at 22 bar }`, 400);
    expect(number(rear(open))).toBeCloseTo(number(chamber(open, 'main.secondary').pressure), 6);
  });

  it('that checks stands less by what opens it, and nothing the wrong way round', () => {
    const answer = rearAt(`check-valve valve { ${ports} cracking 0.5 bar }`);
    expect(number(chamber(answer, 'main.secondary').pressure) - number(rear(answer))).toBeCloseTo(0.5 * bar, 3);
    const turned = turnedAt(`check-valve valve { ${ports} cracking 0.5 bar }`);
    expect(number(rear(turned))).toBe(0);
    expect(number(chamber(turned, 'main.secondary').pressure)).toBeGreaterThan(50 * bar);
  });

  it('that proportions is not known the wrong way round', () => {
    const turned = turnedAt(`proportioning-valve valve { ${ports} split-point 30 bar slope 0.4 }`);
    expect(rear(turned)).toMatchObject({
      kind: 'unknown',
      waitsFor: [{ name: 'what valve does with flow from out to in' }],
    });
  });

  it('that holds residual pressure stands all of it', () => {
    const answer = rearAt(`residual-valve valve { ${ports} holds 10 psi }`);
    expect(number(rear(answer))).toBeCloseTo(number(chamber(answer, 'main.secondary').pressure), 6);
    expect(answer.pressureAssumptions.join(' ')).toContain('what it holds from an application before is not counted');
  });

  it('a booster in the line adds to it up to its knee', () => {
    const answer = rearAt(`booster valve { site line ${ports} gain 2 knee 40 bar }`);
    const p = number(chamber(answer, 'main.secondary').pressure);
    expect(number(rear(answer))).toBeCloseTo(p + 20 * bar, 3);
  });
});

describe('heights', () => {
  const column = (extra: string) => `fluid dot-4
pedal foot { ratio 5 pushes main }
master main single { bore 20 mm stroke 30 mm height 0.2 m port out: M10x1 bubble }
run line { tube 4.75 mm wall 0.7 mm steel nut M10x1 flare bubble length 2 m from main.out to slave.feed }
clutch-slave slave { bore 20 mm ${extra} port feed: M10x1 bubble }`;

  // Hydrostatics: ρ g h with 1050 kg/m³.
  it('add the column of fluid', () => {
    const above = pressed(figuresIn(column('height 1.2 m')), 100);
    const level = pressed(figuresIn(column('')), 100);
    const head = number(above.pressureAt(id('slave'))) - number(level.pressureAt(id('slave')));
    expect(head).toBeCloseTo(-1050 * 9.806_65 * 1, 1);
  });
});
