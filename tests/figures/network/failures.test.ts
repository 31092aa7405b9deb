/** Stops, floors and leaks: what a chamber does when its stroke is used up or its fluid escapes. */
import { describe, expect, it } from 'vitest';
import { carFigures, chamber, ids, number, pressed, volumeOf } from './reference-car.ts';

const mm = 1e-3;
const A = (Math.PI / 4) * (22.225 * mm) ** 2;
const free = (2280 / A) as number;

describe('a leak', () => {
  const figures = carFigures({ strokes: ['18 mm', '16 mm'], pedal: 'ratio 6 efficiency 0.95 free-play 6 mm' });

  it('in front lets the primary piston run onto the secondary, which then makes all the pressure', () => {
    const answer = pressed(figures, 400, { failed: ids('front-left-hose') });
    const [primary, secondary] = answer.chambers;
    expect(primary).toMatchObject({ id: 'main.primary', bottomed: true, open: true });
    expect(number(primary?.pressure)).toBe(0);
    expect(number(primary?.stroke)).toBeCloseTo(18 * mm, 12);
    expect(number(secondary?.pressure)).toBeCloseTo(free, 3);
    expect(number(answer.pressureAt('front-right.caliper' as never))).toBe(0);
    expect(number(answer.pressureAt('rear-left.cylinder' as never))).toBeCloseTo(free, 3);
    const sound = pressed(figures, 400);
    const longer = 6 * (18 * mm - number(chamber(sound, 'main.primary').stroke));
    expect(number(answer.pedalTravel) - number(sound.pedalTravel)).toBeCloseTo(longer, 9);
  });

  it('behind lets the secondary piston run to its stop, and the front keeps its pressure', () => {
    const answer = pressed(figures, 400, { failed: ids('rear-right') });
    expect(number(chamber(answer, 'main.secondary').stroke)).toBeCloseTo(16 * mm, 12);
    expect(number(chamber(answer, 'main.primary').pressure)).toBeCloseTo(free, 3);
    expect(volumeOf(answer, ({ what }) => what === 'leak')).toBeCloseTo(A * 15.6 * mm, 12);
    expect(answer.contributors.find(({ what }) => what === 'leak')?.part).toBe('rear-right.cylinder');
  });

  it('in both leaves nothing', () => {
    const answer = pressed(figures, 400, { failed: ids('front-tee', 'rear-tee') });
    expect(answer.chambers.map(({ pressure }) => number(pressure))).toEqual([0, 0]);
    expect(number(answer.pedalTravel)).toBeCloseTo(6 * mm + 6 * 34 * mm, 9);
  });

  it('of one compartment empties its own chamber only', () => {
    const answer = pressed(figures, 400, { failed: ids('main.reservoir.two') });
    expect(answer.chambers.map(({ open }) => open)).toEqual([false, true]);
  });

  it('of the whole reservoir empties both', () => {
    const answer = pressed(figures, 400, { failed: ids('main.reservoir') });
    expect(answer.chambers.map(({ open }) => open)).toEqual([true, true]);
  });

  it('of a part that is not there changes nothing', () => {
    const answer = pressed(figures, 400, { failed: ids('no-such-part') });
    expect(answer.chambers.map(({ open }) => open)).toEqual([false, false]);
  });

  it('of a chamber whose stroke is not known leaves the travel unknown, by name', () => {
    const unknown = carFigures({ strokes: ['?', '16 mm'] });
    const answer = pressed(unknown, 400, { failed: ids('front-tee') });
    expect(number(chamber(answer, 'main.primary').pressure)).toBe(0);
    expect(answer.pedalTravel).toMatchObject({ kind: 'unknown', waitsFor: [{ name: 'stroke of main primary' }] });
    expect(number(chamber(answer, 'main.secondary').pressure)).toBeCloseTo(free, 3);
  });
});

describe('a stroke that is too short', () => {
  it('ends the pressure of its own circuit and leaves the other its force over area', () => {
    const answer = pressed(carFigures({ strokes: ['6 mm', '16 mm'] }), 400);
    const primary = chamber(answer, 'main.primary');
    expect(primary).toMatchObject({ bottomed: true, open: false });
    expect(number(primary.pressure)).toBeLessThan(free / 2);
    expect(number(primary.pressure)).toBeGreaterThan(0);
    expect(number(chamber(answer, 'main.secondary').pressure)).toBeCloseTo(free, 3);
  });

  it('does not close the gaps at all where they are too wide', () => {
    const answer = pressed(carFigures({ strokes: ['25 mm', '5 mm'], shoeClearance: '3 mm' }), 400);
    expect(number(chamber(answer, 'main.secondary').pressure)).toBeLessThan(1000);
  });

  it('leaves the pressure unknown where it is not known what gives way', () => {
    const answer = pressed(carFigures({ strokes: ['9 mm', '16 mm'], caliper: 'clearance ?' }), 400);
    const { pressure } = chamber(answer, 'main.primary');
    // Hoses, brakes giving way and fluid alone need less than this stroke, so the pressure may be all of it.
    expect(pressure.kind).toBe('known');
    expect(answer.assumptions).toContain(
      'main primary does not reach its stop: what its circuit takes up is not known in full.',
    );
    const short = pressed(carFigures({ strokes: ['2 mm', '16 mm'], caliper: 'clearance ?' }), 600);
    expect(chamber(short, 'main.primary').pressure).toMatchObject({
      kind: 'unknown',
      waitsFor: [{ name: 'clearance of front-left caliper' }, { name: 'clearance of front-right caliper' }],
    });
  });
});

describe('a stepped tandem', () => {
  // Closed form: p₂ = p₁ A₁/A₂, travel of the rod = V₁/A₁ + V₂/A₂ (Limpert, Brake Design and Safety, ch. 5, from memory).
  it('makes pressures in the ratio of its areas', () => {
    const answer = pressed(carFigures({ secondBore: 'bore 19.05 mm' }), 400);
    const [p1, p2] = answer.chambers.map(({ pressure }) => number(pressure));
    expect((p2 ?? 0) / (p1 ?? 1)).toBeCloseTo((22.225 / 19.05) ** 2, 9);
    const of = (name: string) => volumeOf(answer, ({ chamber: each }) => each === name);
    const small = (Math.PI / 4) * (19.05 * mm) ** 2;
    const rod = 0.8 * mm + of('main.primary') / A + of('main.secondary') / small;
    expect(number(answer.pedalTravel)).toBeCloseTo(6 * rod, 9);
  });
});

describe('the floor', () => {
  const at = (travel: string, push: number, failed: readonly string[] = []) =>
    pressed(carFigures({ pedal: `ratio 6 efficiency 0.95 free-play 6 mm travel ${travel}` }), push, {
      failed: ids(...failed),
    });

  it('is not met by a sound car', () => {
    expect(at('180 mm', 400)).toMatchObject({ atFloor: false });
  });

  it('takes the rest of the push where the travel is too short', () => {
    const answer = at('90 mm', 400);
    expect(answer.atFloor).toBe(true);
    expect(number(answer.pedalTravel)).toBeCloseTo(90 * mm, 9);
    const [primary, secondary] = answer.chambers;
    const rod = number(primary?.stroke) + number(secondary?.stroke);
    expect(6 * mm + 6 * rod).toBeCloseTo(90 * mm, 8);
    expect(number(primary?.pressure)).toBeLessThan(free);
    expect(number(primary?.pressure)).toBeCloseTo(number(secondary?.pressure), 3);
    const harder = at('90 mm', 800);
    expect(number(harder.chambers[0]?.pressure)).toBeCloseTo(number(primary?.pressure), 0);
  });

  it('is met before the surviving chamber presses, where the leaking one uses up the travel', () => {
    const answer = at('150 mm', 400, ['front-tee']);
    expect(answer.atFloor).toBe(true);
    expect(number(chamber(answer, 'main.secondary').pressure)).toBeLessThan(1000);
  });
});
