import { describe, expect, it } from 'vitest';
import { estimate, figure, figuresIn, lacks, shown, value } from './ask.ts';
import { smallCar } from './small-car.ts';

const car = (changes: readonly (readonly [string, string])[] = []): string =>
  changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the car does not say ${from}`);
    return text.replace(from, to);
  }, smallCar.join('\n'));

const volume = (subject: string, id: string) => value(figuresIn(car()), subject, id);

describe('the fluid in a circuit', () => {
  it('is that of everything its chamber presses, without the reservoir', () => {
    const expected =
      volume('main.primary', 'chamber.volume') +
      ['to-front', 'to-front-left', 'to-front-right'].reduce((sum, run) => sum + volume(run, 'run.volume'), 0) +
      0.4e-6 +
      2 * 30e-6;
    expect(volume('main.primary', 'circuit.volume')).toBeCloseTo(expected, 15);
    expect(lacks(figuresIn(car()), 'main.primary', 'circuit.volume')).toEqual([]);
  });

  it('carries limits, roughness and assumptions of what is in it', () => {
    const figures = figuresIn(car([['about 900 mm', '900 mm']]));
    const front = estimate(figures, 'main.primary', 'circuit.volume');
    // 3/16 in × 0.028 in tube holds 8.76 mL per metre, so ± 5 mm are ± 0.0438 mL.
    expect((front.high - front.value) * 1e6).toBeCloseTo(0.0438, 4);
    expect(estimate(figuresIn(car()), 'main.primary', 'circuit.volume')).toMatchObject({ about: true, assumed: false });
    expect(estimate(figures, 'main.secondary', 'circuit.volume')).toMatchObject({ about: false, assumed: true });
  });

  it('says at least, and what is missing, where something is not known', () => {
    const figures = figuresIn(
      car([
        ['cup-gap 14 mm', 'cup-gap ?'],
        ['about 900 mm', '900 mm'],
        ['± 5 mm', ''],
      ]),
    );
    expect(lacks(figures, 'main.secondary', 'circuit.volume')).toEqual(['cup-gap of rear-left cylinder']);
    expect(shown(figures, 'main.secondary', 'circuit.volume')).toMatch(/^at least [\d.]+ mL \(assumed\)$/);
    expect(shown(figures, 'main.primary', 'circuit.volume')).toMatch(/^[\d.]+ mL$/);
  });

  it('with limits and something missing is at least its lower limit', () => {
    const figures = figuresIn(`
      master main single { bore 20 mm stroke 10 mm ± 1 mm port out: M10x1 bubble }
      run line { length ? from main.out }
    `);
    // π/4 · 20² mm² × 9 mm
    expect(shown(figures, 'main', 'circuit.volume')).toBe('at least 2.827 mL');
  });

  it('of which nothing is known is not known', () => {
    const figures = figuresIn('master main single { bore ? port out: 3/8-24 }');
    expect(lacks(figures, 'main', 'circuit.volume')).toEqual(['bore of main', 'stroke of main']);
    expect(shown(figures, 'main', 'circuit.volume')).toBe('not known');
    expect(shown(figures, 'system', 'system.volume')).toBe('not known');
  });

  it('stops at a part that does not say which ports share fluid, and asks for its path', () => {
    const figures = figuresIn(`
      master main single { bore 20 mm stroke 10 mm port out: M10x1 bubble }
      modulator unit { volume 20 mL port in: M10x1 bubble port out: M10x1 bubble }
      run first { tube 4.75 mm wall 0.7 mm length 1 m from main.out to unit.in }
      run second { tube 4.75 mm wall 0.7 mm length 1 m from unit.out }
    `);
    expect(lacks(figures, 'main', 'circuit.volume')).toEqual(['path of unit']);
    expect(value(figures, 'main', 'circuit.volume')).toBeCloseTo(
      value(figures, 'main', 'chamber.volume') + value(figures, 'first', 'run.volume'),
      15,
    );
    // The vehicle as a whole holds all of it, whichever circuit it belongs to.
    expect(value(figures, 'system', 'system.volume')).toBeCloseTo(
      value(figures, 'main', 'chamber.volume') + 2 * value(figures, 'first', 'run.volume') + 20e-6,
      15,
    );
  });
});

describe('a part that two circuits share', () => {
  const text = `
    master main tandem {
      bore 20 mm
      primary { stroke 10 mm port a: M10x1 bubble }
      secondary { stroke 10 mm port b: M10x1 bubble }
    }
    block joint { volume 3 mL ports a, b, c, d: M10x1 bubble path a, c path b, d }
    run first { tube 4.75 mm wall 0.7 mm length 1 m from main.primary.a to joint.a }
    run second { tube 4.75 mm wall 0.7 mm length 2 m from main.secondary.b to joint.b }
  `;

  it('is given to neither, by name, and counted once in the whole', () => {
    const figures = figuresIn(text);
    const share = ['share of joint in this circuit'];
    expect(lacks(figures, 'main.primary', 'circuit.volume')).toEqual(share);
    expect(lacks(figures, 'main.secondary', 'circuit.volume')).toEqual(share);
    const known = value(figures, 'main.primary', 'circuit.volume') + value(figures, 'main.secondary', 'circuit.volume');
    expect(value(figures, 'system', 'system.volume')).toBeCloseTo(known + 3e-6, 15);
    expect(lacks(figures, 'system', 'system.volume')).toEqual([]);
  });
});

describe('the fluid in the whole system', () => {
  it('is that of its circuits and of the reservoir', () => {
    const circuits = volume('main.primary', 'circuit.volume') + volume('main.secondary', 'circuit.volume');
    expect(volume('system', 'system.volume')).toBeCloseTo(circuits + 180e-6, 15);
  });

  it('counts no part that no chamber reaches, and says so', () => {
    const figures = figuresIn(`${car()} run spare of line { length 1 m }`);
    expect(value(figures, 'system', 'system.volume')).toBe(volume('system', 'system.volume'));
    expect(figure(figures, 'system', 'system.volume').notes).toContain(
      'Not counted, since no chamber reaches it: spare.',
    );
  });

  it('counts the hoses from the reservoir', () => {
    const figures = figuresIn(`${car()} feed-hose feed { bore 8 mm length 250 mm }`);
    expect((value(figures, 'system', 'system.volume') - volume('system', 'system.volume')) * 1e6).toBeCloseTo(
      4 * Math.PI,
      6,
    );
  });

  it('tells the parts kind by kind', () => {
    const inputs = figure(figuresIn(car()), 'system', 'system.volume').inputs.map(({ name }) => name);
    expect(inputs).toEqual([
      'primary main primary',
      'secondary main secondary',
      'reservoir pot',
      '2 × tee',
      '5 × run',
      'hose to-rear-left',
      '2 × caliper',
      '2 × cylinder',
    ]);
  });
});

describe('all figures', () => {
  it('stand in the order of the text, part by part, the whole last', () => {
    const subjects = figuresIn('tee b { ports x, y, z: 3/8-24 } run a { length 1 m }').all.map(
      ({ subject, id }) => `${subject} ${id}`,
    );
    expect(subjects).toEqual([
      'b junction.volume',
      'a run.centreline-length',
      'a run.cut-length',
      'a run.burst',
      'a run.burst-barlow',
      'a run.working-pressure',
      'a run.volume',
      'system system.volume',
    ]);
  });

  it('are the same whether asked for one by one or all together', () => {
    const figures = figuresIn(car());
    expect([...new Set(figures.all.map(({ subject }) => subject))].flatMap((subject) => figures.of(subject))).toEqual(
      figures.all,
    );
    expect(figures.of('nothing-of-that-name')).toEqual([]);
    expect(figures.find('to-front', 'run.volume')).toBe(figures.find('to-front', 'run.volume'));
  });

  it('are told apart by subject and id', () => {
    const keys = figuresIn(car()).all.map(({ subject, id }) => `${subject} ${id}`);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
