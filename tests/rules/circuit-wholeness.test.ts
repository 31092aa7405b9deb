import { describe, expect, it } from 'vitest';
import { drumBrake, oneCircuit, run, singleMaster, splitCar, stockLine } from '../../language/rules/example-parts.ts';
import { findingsOf } from '../support/findings.ts';
import { readCircuit } from '../support/read.ts';

const seat = '3/8-24 inverted-flare';
const said = (code: string, text: string) => findingsOf(code, text).map(({ message }) => message);

describe('A wheel that nothing feeds', () => {
  it('says how far fluid gets from it, so that the gap can be found', () => {
    const [message] = said('unfed-wheel', oneCircuit.replace(run('feed', 'main.out', 'split.in'), ''));
    expect(message).toContain('From there fluid gets to split, left-line, right-line');
    expect(message).toContain('look for the gap there');
  });

  it('is not reported where a misspelt name may be the gap', () => {
    const text = oneCircuit.replace('to front-left.cylinder.feed', 'to front-lift.cylinder.feed');
    expect(readCircuit(text).problems.map(({ code }) => code)).toEqual(['unknown-name']);
    expect(said('unfed-wheel', text)).toEqual([]);
  });

  it('is one finding for two cylinders of one brake, and cannot be accepted away', () => {
    const text = `${oneCircuit}drum-brake rear-left {
  cylinder upper { port feed: ${seat}  bleeder {} }
  cylinder lower { port feed: ${seat}  bleeder {} }
}
accept unfed-wheel on rear-left 2026-03-05 because "to be piped"
`;
    const [message, ...more] = said('unfed-wheel', text);
    expect(more).toEqual([]);
    expect(message).toMatch(/^Nothing feeds rear-left: no chamber of a master reaches upper and lower/);
    expect(message).toContain('cannot be accepted away');
  });

  it('is one half of a caliper with two circuits', () => {
    const text = `${singleMaster}${stockLine}disc-brake front-left {
  caliper { ports upper, lower: ${seat}  path upper  path lower  bleeder {} }
}
${run('left-line', 'split.left', 'front-left.caliper.upper')}`;
    expect(said('unfed-wheel', text)).toEqual([
      'Nothing feeds the half of front-left caliper behind lower: no chamber of a master reaches it. Join it to a circuit with a run or hose.',
    ]);
  });

  it('is only judged in the state that is asked for', () => {
    const text = oneCircuit.replace('run feed', 'to-fit run feed');
    expect(findingsOf('unfed-wheel', text, 'found')).toHaveLength(2);
    expect(findingsOf('unfed-wheel', text, 'planned')).toEqual([]);
  });
});

describe('A cylinder without a bleeder', () => {
  it('is vented over a bridge that is a run of its own beside the brake', () => {
    const text = `${stockLine}${singleMaster}drum-brake front-left {
  cylinder lower { ports feed, bridge: ${seat} }
  cylinder upper { port bridge: ${seat}  bleeder {} }
}
${run('bridge', 'front-left.lower.bridge', 'front-left.upper.bridge')}${run('line', 'split.left', 'front-left.lower.feed')}`;
    expect(said('no-bleeder', text)).toEqual([]);
  });

  it('is not vented by the bleeder of another wheel', () => {
    const text = oneCircuit.replace('bleeder {}', '');
    expect(said('no-bleeder', text)).toEqual([
      'front-left cylinder has no bleeder, and no bridge leads to a cylinder that has one: air cannot get out of it. Write bleeder {} in it if it has one at its highest point; if it has none, fit a cylinder that has.',
    ]);
  });

  it('is asked about once where the file writes no bleeder at all', () => {
    const findings = findingsOf('no-bleeder', splitCar.replaceAll('bleeder {}', ''));
    expect(findings.map(({ severity, subject }) => [severity, subject])).toEqual([['question', 'circuit']]);
  });

  it('may be the slave of a clutch', () => {
    const text = `${oneCircuit}master clutch single { port out: ${seat} }
clutch-slave slave { port feed: ${seat} }
run pipe of line { from clutch.out to slave.feed }
`;
    expect(findingsOf('no-bleeder', text).map(({ subject }) => subject)).toEqual(['slave']);
  });
});

describe('Two chambers on one body of fluid', () => {
  const text = splitCar
    .replaceAll(/tee (front|rear)-tee \{ ports in, left, right:/g, 'cross $1-tee { ports in, left, right, extra:')
    .concat(run('across', 'front-tee.extra', 'rear-tee.extra'));

  it('are named with the way between them', () => {
    const [finding, ...more] = findingsOf('two-chambers', text);
    expect(more).toEqual([]);
    expect(finding?.message).toMatch(
      /^main primary and main secondary press the same fluid, over front-feed, front-tee, across, rear-tee and rear-feed:/,
    );
    expect(finding?.subject).toBe('across');
  });

  it('are accepted on any part of that way', () => {
    const accept = 'accept two-chambers on front-tee 2026-03-05 because "test rig"\n';
    expect(findingsOf('two-chambers', text + accept)).toEqual([]);
  });
});

describe('A ring', () => {
  const far = `cross far { ports a, b, c, spare: ${seat} }\n`;
  const ring = [
    stockLine,
    singleMaster,
    far,
    run('one', 'split.left', 'far.a'),
    run('two', 'split.right', 'far.b'),
  ].join('');

  it('names its parts and nothing that only hangs on it', () => {
    const [finding, ...more] = findingsOf(
      'ring',
      `${ring}${drumBrake('front-left')}${run('on', 'far.c', 'front-left.cylinder.feed')}`,
    );
    expect(more).toEqual([]);
    expect(finding?.message).toContain('split, far, one and two make a ring');
    expect(finding?.also).toEqual(['far', 'one', 'two']);
  });

  it('says what a second way past a valve does to the valve', () => {
    const text = `${stockLine}${singleMaster}tee far { ports a, b, c: ${seat} }
proportioning-valve limiter { ports in, out: ${seat} }
${run('one', 'split.left', 'limiter.in')}${run('two', 'limiter.out', 'far.a')}${run('past', 'split.right', 'far.b')}`;
    expect(said('ring', text)[0]).toContain('It goes past limiter, which then does nothing.');
  });

  it('is not made by writing one joint twice', () => {
    const text = `master main single { port out: ${seat} }
adapter step { port thread: ${seat} male  port out: ${seat} }
screw step.thread into main.out
screw step.thread into main.out
`;
    expect(said('ring', text)).toEqual([]);
  });
});

describe('Fluids that must not meet', () => {
  it('are told apart by reservoir, and the words say what they do', () => {
    const text = `fluid dot-4
master main single { port out: ${seat} plugged  reservoir { fluid mineral  feeds main } }
reservoir second { feeds main }
`;
    const [finding] = findingsOf('mixed-fluid', text);
    expect(finding?.message).toMatch(
      /^The fluids of main reservoir and second meet\. mineral oil and DOT 4 must not meet:/,
    );
    expect(finding?.severity).toBe('error');
  });
});

describe('An accept', () => {
  const accept = (rule: string, target: string) =>
    `${oneCircuit}accept ${rule} on ${target} 2026-03-05 because "as built"\n`;

  it('of a rule that does not exist names the nearest rules', () => {
    const [finding] = findingsOf('stale-accept', accept('single-point-of-failur', 'circuit'));
    expect(finding?.message).toContain('Did you mean single-point-of-failure?');
    expect(finding?.mends?.map(({ title }) => title)).toEqual([
      'Write single-point-of-failure',
      'Take this accept out',
    ]);
  });

  it('for a part that is not there names the nearest parts', () => {
    expect(said('stale-accept', accept('dead-end', 'front-lift'))[0]).toMatch(
      /^There is no front-lift in this file, so this accepts nothing\. Did you mean front-left/,
    );
  });

  it('stays as long as it answers a finding of either state', () => {
    const text = `${oneCircuit.replace('master main', 'to-remove master main').replace('main.out', 'old.out').replace('run feed', 'to-remove run feed').replace('master main', 'master old')}accept single-point-of-failure on circuit 2026-03-05 because "being split this spring"\n`;
    expect(findingsOf('single-point-of-failure', text, 'planned')).toEqual([]);
    expect(findingsOf('stale-accept', text, 'planned')).toEqual([]);
  });
});

describe('A part that is joined to nothing', () => {
  it('is greyed, and its open ports are not reported one by one', () => {
    const text = `${oneCircuit}tee spare { ports a, b, c: ${seat} }\n`;
    expect(findingsOf('unused', text).map(({ subject, unused }) => [subject, unused])).toEqual([['spare', true]]);
    expect(findingsOf('dead-end', text)).toEqual([]);
  });

  it('is not a reservoir that feeds a master from above', () => {
    expect(said('unused', `${oneCircuit}reservoir tank { port out: barb 8 mm  feeds main }\n`)).toEqual([]);
  });

  it('is greyed in the plan when its lines come off and it is forgotten', () => {
    const text = `${oneCircuit}union joint { ports a, b: ${seat} }
to-remove run old of line { from joint.a to joint.b }
`;
    expect(findingsOf('unused', text, 'found')).toEqual([]);
    expect(said('unused', text)).toEqual([
      'joint is joined to nothing. Join it, mark it to-remove if it comes off, or take it out of the file.',
    ]);
  });
});
