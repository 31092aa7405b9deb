import { describe, expect, it } from 'vitest';
import type { State } from '../../language/system/presence.ts';
import { readCircuit } from '../support/read.ts';

/** Chamber → the parts that share fluid with it, nearest first. */
function reached(text: string, state: State = 'planned'): Record<string, string[]> {
  const reading = readCircuit(text);
  expect(reading.problems).toEqual([]);
  return Object.fromEntries(
    reading[state].circuits.map((circuit) => [circuit.label, circuit.reaches.map(({ part }) => `${part}`)]),
  );
}

const tandem = `
master main tandem {
  primary { stroke 16 mm port out: 3/8-24 inverted-flare }
  secondary { stroke 14 mm port out: 3/8-24 inverted-flare }
}`;

describe('a hydraulic circuit', () => {
  it('is what shares fluid with one chamber of a tandem', () => {
    const circuits = reached(`${tandem}
      tee rear-tee { ports feed, left, right: 3/8-24 inverted-flare }
      drum-brake rear-left { cylinder { port feed: 3/8-24 inverted-flare } }
      drum-brake rear-right { cylinder { port feed: 3/8-24 inverted-flare } }
      disc-brake front-left { caliper { mounting sliding port feed: M10x1 bubble } }
      run rear-feed { from main.primary.out to rear-tee.feed }
      run left-pipe { from rear-tee.left to rear-left.cylinder.feed }
      run right-pipe { from rear-tee.right to rear-right.cylinder.feed }
      run front-feed { from main.secondary.out to front-left.caliper.feed }`);
    expect(circuits).toEqual({
      'main primary': [
        'main.primary',
        'rear-feed',
        'rear-tee',
        'left-pipe',
        'right-pipe',
        'rear-left.cylinder',
        'rear-right.cylinder',
      ],
      'main secondary': ['main.secondary', 'front-feed', 'front-left.caliper'],
    });
  });

  it('of a single master begins at the master itself', () => {
    const circuits = reached(`
      master main single { bore 1 in port out: 3/8-24 inverted-flare }
      drum-brake rear { cylinder { port feed: 3/8-24 inverted-flare } }
      run pipe { from main.out to rear.cylinder.feed }`);
    expect(circuits).toEqual({ main: ['main', 'pipe', 'rear.cylinder'] });
  });

  it('goes on through valves and names them in order', () => {
    const reading = readCircuit(`
      master main single { port out: 3/8-24 inverted-flare }
      residual-valve keeper { holds 10 psi ports in, out: 3/8-24 inverted-flare }
      proportioning-valve share { split-point 30 bar ports in, out: 3/8-24 inverted-flare }
      drum-brake rear { cylinder { port feed: 3/8-24 inverted-flare } }
      run one { from main.out to keeper.in }
      run two { from keeper.out to share.in }
      run three { from share.out to rear.cylinder.feed }`);
    const reach = reading.planned.circuits[0]?.reaches.find(({ part }) => part === 'rear.cylinder');
    expect(reach).toMatchObject({ valves: ['keeper', 'share'], joints: 6, doubtful: false });
  });

  it('goes through a valve only as the valve lets it: a path of its own is refused', () => {
    const reading = readCircuit(`
      master main single { port out: 3/8-24 inverted-flare }
      proportioning-valve share { split-point 30 bar ports in, out: 3/8-24 inverted-flare path in, out }
      run one { from main.out to share.in }`);
    expect(reading.problems.map(({ message }) => message)).toEqual([
      'a proportioning valve has no path; fluid goes through it from in to out.',
    ]);
  });

  it('is cut at the spool of a pressure-differential valve', () => {
    const circuits = reached(`${tandem}
      pressure-differential-valve warn {
        ports front-in, front-out, rear-in, rear-out: 3/8-24 inverted-flare
        path front-in, front-out
        path rear-in, rear-out
      }
      run a { from main.secondary.out to warn.front-in }
      run b { from main.primary.out to warn.rear-in }`);
    expect(circuits).toEqual({
      'main primary': ['main.primary', 'b', 'warn'],
      'main secondary': ['main.secondary', 'a', 'warn'],
    });
  });

  it('is in doubt behind a unit that does not say what its ports share', () => {
    const reading = readCircuit(`
      master main single { port out: M10x1 bubble }
      modulator unit { ports in, left, right: M10x1 bubble }
      disc-brake front-left { caliper { port feed: M10x1 bubble } }
      run a { from main.out to unit.in }
      run b { from unit.left to front-left.caliper.feed }`);
    const doubt = reading.planned.circuits[0]?.reaches.map(({ part, doubtful }) => [part, doubtful]);
    expect(doubt).toEqual([
      ['main', false],
      ['a', false],
      ['unit', false],
      ['b', true],
      ['front-left.caliper', true],
    ]);
  });

  it('prefers a certain longer way to a doubtful short one', () => {
    const reading = readCircuit(`
      master main single { ports one, two: M10x1 bubble }
      modulator unit { ports in, out: M10x1 bubble }
      tee t { ports a, b, c: M10x1 bubble }
      union u1 { ports a, b: M10x1 bubble }
      union u2 { ports a, b: M10x1 bubble }
      run short { from main.one to unit.in }
      run shorter { from unit.out to t.a }
      run long1 { from main.two to u1.a }
      run long2 { from u1.b to u2.a }
      run long3 { from u2.b to t.b }`);
    const tee = reading.planned.circuits[0]?.reaches.find(({ part }) => part === 't');
    expect(tee).toMatchObject({ doubtful: false });
  });

  it('does not reach the reservoir, which lies on the other side of the seals', () => {
    const circuits = reached(`
      master main single { port inlet: barb 8 mm port out: 3/8-24 inverted-flare }
      reservoir tank { port outlet: barb 8 mm }
      feed-hose supply { from tank.outlet to main.inlet }`);
    expect(circuits).toEqual({ main: ['main'] });
  });

  it('differs between what was found and what is planned', () => {
    const text = `
      to-remove master old single { port out: 3/8-24 inverted-flare }
      to-fit master main tandem { primary { port out: 3/8-24 inverted-flare } secondary { port out: 3/8-24 inverted-flare } }
      drum-brake rear { cylinder { port feed: 3/8-24 inverted-flare } }
      run pipe { to-remove from old.out to-fit from main.primary.out to rear.cylinder.feed }`;
    expect(reached(text, 'found')).toEqual({ old: ['old', 'pipe', 'rear.cylinder'] });
    expect(reached(text, 'planned')).toEqual({
      'main primary': ['main.primary', 'pipe', 'rear.cylinder'],
      'main secondary': ['main.secondary'],
    });
  });
});
