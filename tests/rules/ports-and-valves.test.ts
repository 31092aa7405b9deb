import { describe, expect, it } from 'vitest';
import { oneCircuit, run, splitCar, stockLine } from '../../language/rules/example-parts.ts';
import { findingsOf } from '../support/findings.ts';
import { readCircuit } from '../support/read.ts';

const said = (code: string, text: string, state: 'found' | 'planned' = 'planned') =>
  findingsOf(code, text, state).map(({ message, severity, subject }) => ({ message, severity, subject }));

describe('Ports', () => {
  it('a tee with two is a warning that says what is written and what is missing', () => {
    const text = oneCircuit
      .replace('ports in, left, right: 3/8-24', 'ports in, left: 3/8-24')
      .replace(run('right-line', 'split.right', 'front-right.cylinder.feed'), '');
    const [finding, ...more] = said('port-count', text);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'warning', subject: 'split' });
    expect(finding?.message).toContain('split has 2 ports, in and left, and a tee has 3');
    expect(finding?.message).toContain('what joins two lines only is a union');
  });

  it('a port that is still to be fitted counts in the plan only', () => {
    const text = oneCircuit.replace(
      'tee split { ports in, left, right: 3/8-24 inverted-flare }',
      'tee split { ports in, left, right: 3/8-24 inverted-flare  to-fit port extra: 3/8-24 inverted-flare plugged }',
    );
    expect(said('port-count', text, 'found')).toEqual([]);
    expect(said('port-count', text)).toHaveLength(1);
  });

  it('a block with a valve for each circuit, each with its own ports, is as it should be', () => {
    const text = splitCar.replace(run('front-feed', 'main.primary.front', 'front-tee.in'), '').concat(`block valves {
  metering-valve front { ports in, out: 3/8-24 inverted-flare }
  proportioning-valve rear { ports in, out: 3/8-24 inverted-flare plugged }
}
${run('one', 'main.primary.front', 'valves.front.in')}${run('two', 'valves.front.out', 'front-tee.in')}`);
    expect(said('port-count', text)).toEqual([]);
    expect(said('valve-direction', text)).toEqual([]);
  });
});

describe('A valve the wrong way round', () => {
  const booster = (first: string, second: string) =>
    oneCircuit.replace(
      run('feed', 'main.out', 'split.in'),
      `booster servo { site line  ports in, out: 3/8-24 inverted-flare }\n${run('one', 'main.out', `servo.${first}`)}${run('two', `servo.${second}`, 'split.in')}`,
    );

  it('is found behind other valves, and for a booster in the line', () => {
    expect(said('valve-direction', booster('in', 'out'))).toEqual([]);
    const [finding] = said('valve-direction', booster('out', 'in'));
    expect(finding).toMatchObject({ severity: 'error', subject: 'servo' });
    expect(finding?.message).toContain('the pressure of main comes to its outlet first');
  });

  it('is not claimed where fluid gets to both sides of it by itself', () => {
    const text = `${stockLine}master main single { ports a, b: 3/8-24 inverted-flare }
check-valve valve { ports in, out: 3/8-24 inverted-flare }
${run('one', 'main.a', 'valve.in')}${run('two', 'main.b', 'valve.out')}`;
    expect(said('valve-direction', text)).toEqual([]);
  });
});

describe('The split that the vehicle states', () => {
  const crossed = splitCar
    .replace('from front-tee.right to front-right.', 'from front-tee.right to X.')
    .replace('from rear-tee.right to rear-right.', 'from rear-tee.right to front-right.')
    .replace('to X.', 'to rear-right.');

  it('is held against the wheels of each chamber, and the one that it is is named', () => {
    const [finding] = said('split-disagrees', `vehicle car { split front-rear }\n${crossed}`);
    expect(finding?.message).toContain('main primary brakes front-left and rear-right');
    expect(finding?.message).toContain('main secondary brakes front-right and rear-left');
    expect(finding?.message).toContain('write split diagonal');
  });

  it('is not asked of the vehicle as found while parts are still to be fitted', () => {
    const text = `vehicle car { split front-rear }\n${crossed}\nto-fit plug spare { port thread: 3/8-24 male inverted-flare }\n`;
    expect(said('split-disagrees', text, 'found')).toEqual([]);
    expect(said('split-disagrees', text, 'planned')).toHaveLength(1);
  });

  it('is not judged while it is not known at which wheel a brake sits', () => {
    const text = `vehicle car { split front-rear }\n${crossed.replaceAll('front-left', 'one')}`;
    expect(said('split-disagrees', text)).toEqual([]);
  });
});

describe('Residual pressure', () => {
  const car = (chamber: string) =>
    splitCar
      .replace('primary { port front:', `primary { ${chamber}  port front:`)
      .replaceAll(/drum-brake (front-\w+) \{\s+cylinder/g, 'disc-brake $1 { caliper')
      .replaceAll(/(front-\w+)\.cylinder/g, '$1.caliper');

  it('is told in the unit of the writer, with what discs bear', () => {
    const [finding] = said('residual-on-disc', car('residual 0.7 bar'));
    expect(finding).toMatchObject({ severity: 'warning', subject: 'main.primary' });
    expect(finding?.message).toContain('main primary holds 0.7 bar');
    expect(finding?.message).toContain('discs about 0.14 bar');
  });

  it('of the other chamber, with drums behind it, is no matter', () => {
    const text = car('').replace('secondary {', 'secondary { residual 10 psi ');
    expect(said('residual-on-disc', text)).toEqual([]);
  });

  it('is found in a valve that sits inside the master', () => {
    expect(said('residual-on-disc', car('residual-valve seat { holds 10 psi }'))).toHaveLength(1);
  });
});

describe('Worn parts', () => {
  it('are told in the words of the file, and stay an error in the circuit as found', () => {
    const text = 'drum-brake rear-left { drum { diameter 10.07 in  max-diameter 10.06 in } }\n';
    for (const state of ['found', 'planned'] as const) {
      const [finding] = said('worn-out', text, state);
      expect(finding?.severity).toBe('error');
      expect(finding?.message).toContain('is 10.07 in across, more than the 10.06 in that it may have at most');
    }
  });
});

describe('The name of a port that lies deeper', () => {
  it('is found in the sub-parts', () => {
    const text = oneCircuit.replace('to front-left.cylinder.feed', 'to front-left.feed');
    const [problem] = readCircuit(text).problems;
    expect(problem?.message).toContain('Did you mean cylinder.feed?');
    expect(problem?.mends?.[0]?.edits[0]?.text).toBe('cylinder.feed');
  });
});
