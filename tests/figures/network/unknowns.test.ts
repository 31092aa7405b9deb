/** What is not known is named, and the rest keeps its numbers. */
import { describe, expect, it } from 'vitest';
import type { Need } from '../../../language/figures/index.ts';
import { figuresIn, lacks, shown, value } from '../ask.ts';
import { carFigures, carText, chamber, id, number, pressed } from './reference-car.ts';

const names = (needs: readonly Need[]) => needs.map(({ name }) => name);

describe('a push', () => {
  it('without a pedal waits for one', () => {
    const answer = pressed(figuresIn('fluid dot-4'), 300);
    expect(names(answer.waitsFor)).toEqual(['a pedal']);
    expect(answer.chambers).toEqual([]);
    expect(answer.pressureAt(id('anything'))).toBeUndefined();
  });

  it('on a pedal that pushes nothing waits for what it pushes', () => {
    const answer = pressed(figuresIn('pedal foot { ratio 5 }'), 300);
    expect(names(answer.waitsFor)).toEqual(['what foot pushes']);
  });

  it('goes to the one master that there is', () => {
    const text = 'pedal foot { ratio 5 } master main single { bore 20 mm port out: M10x1 bubble plugged }';
    const answer = pressed(figuresIn(text), 300);
    expect(number(answer.chambers[0]?.pressure)).toBeCloseTo(1500 / ((Math.PI / 4) * 0.02 ** 2), 3);
    expect(answer.assumptions).toContain('foot pushes main: there is no other.');
  });

  it('on two masters waits for the share of each', () => {
    const text = `pedal foot { ratio 5 pushes a, b }
master a single { bore 20 mm port out: M10x1 bubble plugged }
master b single { bore 20 mm port out: M10x1 bubble plugged }`;
    expect(names(pressed(figuresIn(text), 300).waitsFor)).toEqual(['share of the push of foot on each of a and b']);
  });

  it('with a lever that is not known still tells what the circuit lacks', () => {
    const answer = pressed(carFigures({ pedal: 'ratio ?', caliper: 'clearance ?' }), 300);
    expect(names(answer.waitsFor)).toEqual(expect.arrayContaining(['ratio of foot']));
    expect(answer.rodForce.kind).toBe('unknown');
    expect(answer.chambers.map(({ pressure }) => pressure.kind)).toEqual(['unknown', 'unknown']);
  });

  it('on a chamber without a bore leaves the other its pressure', () => {
    const answer = pressed(carFigures({ secondBore: 'bore ?' }), 400);
    expect(chamber(answer, 'main.primary').pressure.kind).toBe('known');
    expect(chamber(answer, 'main.secondary').pressure).toMatchObject({
      kind: 'unknown',
      waitsFor: [{ name: 'bore of main secondary' }],
    });
    expect(answer.pedalTravel.kind).toBe('unknown');
  });

  it('with no help stated waits for the gain and the knee of the booster', () => {
    const figures = carFigures({ pushes: 'helper', extra: 'booster helper { site pedal pushes main }' });
    expect(names(pressed(figures, 300).waitsFor)).toEqual(['gain of helper', 'knee of helper']);
  });

  it('of nothing moves nothing', () => {
    const answer = pressed(carFigures(), 0);
    expect(answer.chambers.map(({ pressure, stroke }) => [number(pressure), number(stroke)])).toEqual([
      [0, 0],
      [0, 0],
    ]);
    expect(answer.contributors).toEqual([]);
  });

  it('on chambers that share one line waits for the circuits to be parted', () => {
    const joined = `fluid dot-4
pedal foot { ratio 5 pushes main }
master main tandem { bore 20 mm
  primary { stroke 15 mm port a: M10x1 bubble }
  secondary { stroke 15 mm port b: M10x1 bubble } }
run line { tube 4.75 mm wall 0.7 mm steel nut M10x1 flare bubble length 0.3 m from main.primary.a to main.secondary.b }`;
    expect(names(pressed(figuresIn(joined), 300).waitsFor)).toEqual([
      'a circuit of its own for main primary, apart from main secondary',
      'a circuit of its own for main secondary, apart from main primary',
    ]);
  });
});

describe('figures at the stated push', () => {
  const stated = (pedal: string) => figuresIn(carText({ pedal }));

  it('come out in the writer’s units', () => {
    const figures = stated('ratio 6 efficiency 0.95 free-play 6 mm push 90 lbf');
    expect(shown(figures, 'foot', 'pedal.rod-force')).toBe('513 lbf');
    expect(shown(figures, 'main.primary', 'chamber.pressure-at-push')).toMatch(/ psi$/);
    expect(shown(figures, 'foot', 'pedal.travel-at-push')).toMatch(/ mm\)$/);
  });

  it('wait for the push by name', () => {
    const figures = stated('ratio 6');
    for (const [subject, figure] of [
      ['foot', 'pedal.travel-at-push'],
      ['main.primary', 'chamber.pressure-at-push'],
      ['main.secondary', 'chamber.reserve'],
      ['rear-left.cylinder', 'wheel.pressure-at-push'],
    ] as const) {
      expect(lacks(figures, subject, figure)).toEqual(['push of foot']);
    }
  });

  it('leave of the stroke what the push does not use', () => {
    const figures = stated('ratio 6 efficiency 0.95 free-play 6 mm push 400 N');
    const used = value(figures, 'main.primary', 'chamber.stroke-at-push');
    expect(value(figures, 'main.primary', 'chamber.reserve')).toBeCloseTo(25.7766e-3 - used, 12);
  });

  it('tell no reserve where the gaps are not known', () => {
    const figures = figuresIn(carText({ pedal: 'ratio 6 efficiency 0.95 push 400 N', caliper: 'clearance ?' }));
    expect(lacks(figures, 'main.primary', 'chamber.reserve')).toEqual([
      'clearance of front-left caliper',
      'clearance of front-right caliper',
    ]);
    expect(lacks(figures, 'main.primary', 'chamber.stroke-at-push')).toContain('clearance of front-left caliper');
  });

  it('keep the doubt of an assumed or rough fact', () => {
    const figures = figuresIn(
      carText({ pedal: 'ratio about 6 efficiency 0.95 push 400 N', bore: '? assume 22.225 mm' }),
    );
    expect(shown(figures, 'main.primary', 'chamber.pressure-at-push')).toBe('about 58.77 bar (assumed)');
  });
});
