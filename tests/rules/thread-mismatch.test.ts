import { describe, expect, it } from 'vitest';
import { mended } from '../support/mend.ts';
import { readCircuit } from '../support/read.ts';
import { findingsOf, hoseInPort, misfitsIn, tubeInPort } from './joint.ts';

// SAE J512, inverted-flare series: tube and thread (3/16 and 1/4 in as printed in trade lists, the others from memory).
const j512 = [
  ['1/8 in', '5/16-28'],
  ['3/16 in', '3/8-24'],
  ['1/4 in', '7/16-24'],
  ['5/16 in', '1/2-20'],
  ['3/8 in', '5/8-18'],
  ['7/16 in', '11/16-18'],
  ['1/2 in', '3/4-18'],
] as const;

// ISO 4038 / SAE J1290: pipe and thread (4.75 mm as printed in trade lists, the others from memory).
const iso4038 = [
  ['4.75 mm', 'M10x1'],
  ['6 mm', 'M12x1'],
  ['8 mm', 'M14x1.5'],
] as const;

const says = (text: string) => {
  const [finding, ...more] = misfitsIn(text);
  expect(more).toEqual([]);
  return finding;
};

describe('the nuts of SAE J512', () => {
  it.each(j512)('%s tube with its %s nut fits its own port', (tube, nut) => {
    const text = tubeInPort({ port: `${nut} inverted-flare`, tube, nut, flare: 'double-45' });
    expect(misfitsIn(text)).toEqual([]);
    expect(findingsOf('nut-size', text)).toEqual([]);
  });

  const wrong = j512.flatMap(([tube, nut]) =>
    j512.filter(([, port]) => port !== nut).map(([, port]) => [tube, nut, port]),
  );
  it.each(wrong)('%s tube with a %s nut does not go into a %s port', (tube, nut, port) => {
    const finding = says(tubeInPort({ port: `${port} inverted-flare`, tube, nut, flare: 'double-45' }));
    expect(finding).toMatchObject({
      code: 'thread-mismatch',
      severity: 'error',
      subject: 'line.from',
      also: ['main.out'],
    });
    expect(finding?.message).toContain(`The nut of line is ${nut} (`);
    expect(finding?.message).toContain(`but main.out is ${port} (`);
  });
});

describe('the nuts of ISO 4038', () => {
  it.each(iso4038)('%s pipe with its %s nut fits its own port', (tube, nut) => {
    const text = tubeInPort({ port: `${nut} bubble`, tube, nut, flare: 'bubble' });
    expect(misfitsIn(text)).toEqual([]);
    expect(findingsOf('nut-size', text)).toEqual([]);
  });

  it.each(j512)('no nut of theirs goes into the port for %s tube', (_, port) => {
    for (const [tube, nut] of iso4038) {
      const finding = says(tubeInPort({ port: `${port} inverted-flare`, tube, nut, flare: 'double-45' }));
      expect(finding?.code).toBe('thread-mismatch');
    }
  });
});

describe('how a wrong thread shows', () => {
  const shown = (nut: string, port: string) =>
    says(tubeInPort({ port: `${port} inverted-flare`, nut, flare: 'double-45' }))?.message;

  // Trade lists warn of this pair: 9.53 × 1.058 mm against 10 × 1 mm.
  it('3/8-24 and M10x1 start into each other and strip, whichever is the nut', () => {
    for (const [nut, port] of [
      ['M10x1', '3/8-24'],
      ['3/8-24', 'M10x1'],
    ] as const)
      expect(shown(nut, port)).toContain('they start into each other and strip. It may hold until the first hard push');
  });

  it('a nut smaller than the core of the port drops in', () => {
    expect(shown('3/8-24', '1/2-20')).toContain('It drops in without catching a thread.');
  });

  it('a nut bigger than the port does not start', () => {
    expect(shown('1/2-20', '3/8-24')).toContain('It is too big to start.');
  });

  it('the same diameter with another pitch binds', () => {
    expect(shown('M11x1.25', 'M11x1.5')).toContain('It binds after a turn or two; forced further, the threads strip.');
  });

  it('a nut a little smaller with the same pitch hangs by its tips', () => {
    expect(shown('M10x1', 'M10.5x1')).toContain('It goes in loose and hangs by the tips of its threads.');
  });

  it('sizes are told with both threads', () => {
    expect(shown('M10x1.25', '3/8-24')).toContain(
      'M10x1.25 (10 mm across, pitch 1.25 mm), but main.out is 3/8-24 (9.525 mm across, pitch 1.06 mm)',
    );
    expect(shown('M10x1', '3/8-24')).toContain('3/8-24 is 9.53 mm with 1.06 mm pitch, M10x1 is 10 mm with 1 mm pitch');
  });

  it('two inch threads are told in inches', () => {
    expect(shown('3/8-24', '1/2-20')).toContain(
      '3/8-24 (3/8 in across, 24 threads to the inch), but main.out is 1/2-20 (1/2 in across, 20 threads to the inch)',
    );
    expect(shown('7/16-24', '7/16-20')).toContain('Both are 7/16 in across');
  });
});

describe('what would fit', () => {
  it('is the listed nut for this tube, in this run alone', () => {
    const text = `stock line { tube 3/16 in steel  nut M10x1  flare double-45 }
master main single { bore 3/4 in  ports a, b: 3/8-24 inverted-flare }
run one of line { from main.a }
run two of line { from main.b { flare double-45 } }
`;
    const reading = readCircuit(text);
    const findings = findingsOf('thread-mismatch', text);
    expect(findings.map(({ subject }) => subject)).toEqual(['one.from', 'two.from']);
    const after = findings.map(({ mends }) => {
      const nut = mends?.find(({ title }) => title === 'Make this end with nut 3/8-24');
      return nut && mended(text, nut, reading.uri);
    });
    expect(after[0]).toContain('run one of line { from main.a { nut 3/8-24 } }');
    expect(after[1]).toContain('from main.b { flare double-45 nut 3/8-24 }');
    expect(findingsOf('thread-mismatch', after[0] ?? '').map(({ subject }) => subject)).toEqual(['two.from']);
    expect(findingsOf('thread-mismatch', after[1] ?? '').map(({ subject }) => subject)).toEqual(['one.from']);
  });

  it('takes the flare with it where that is wrong too, and says both in one finding', () => {
    const text = tubeInPort({ port: 'M10x1 bubble', nut: '3/8-24', flare: 'double-45' });
    const finding = says(text);
    expect(finding?.message).toContain(
      'Besides, line has a 45° double flare at main.out, which has a bubble-flare seat',
    );
    expect(finding?.message).toMatch(/Make this end of line with the M10x1 nut and a bubble flare\.$/);
    const [mend] = finding?.mends ?? [];
    expect(mend && misfitsIn(mended(text, mend, readCircuit(text).uri))).toEqual([]);
  });

  it('is an oversize nut where one is made for the tube', () => {
    const finding = says(tubeInPort({ port: '9/16-18 inverted-flare', nut: '3/8-24', flare: 'double-45' }));
    expect(finding?.message).toContain('Make this end of line with the 9/16-18 nut.');
  });

  it('is another end or an adapter where no nut is listed, and the bores that are made are named', () => {
    const finding = says(
      tubeInPort({ port: '3/8-24 inverted-flare', tube: '1/4 in', nut: '7/16-24', flare: 'double-45' }),
    );
    expect(finding?.message).toContain('No 3/8-24 nut is listed for 1/4 in tube; they are made for 3/16 in tube.');
    expect(finding?.mends?.map(({ title }) => title)).toEqual(['Fit an adapter between main.out and the end of line']);
  });

  it('leaves the circuit as found as it is when an adapter is to be fitted', () => {
    const text = tubeInPort({ port: '3/8-24 inverted-flare', nut: 'M10x1', flare: 'bubble' });
    const [, adapter] = says(text)?.mends ?? [];
    const after = adapter ? mended(text, adapter, readCircuit(text).uri) : '';
    expect(misfitsIn(after)).toEqual([]);
    const { found, planned } = readCircuit(after);
    expect(found.joints.map(({ a, b }) => `${a} ${b}`)).toEqual(['line.from main.out']);
    expect(planned.joints.map(({ a, b }) => `${a} ${b}`)).toEqual([
      'line.from main-out-adapter.line',
      'main-out-adapter.shank main.out',
    ]);
    expect(findingsOf('thread-mismatch', after, 'found')).toHaveLength(1);
  });
});

describe('silent where it cannot know', () => {
  it.each([
    ['a thread still to be measured', tubeInPort({ port: '? inverted-flare', nut: 'M10x1', flare: 'double-45' })],
    ['a nut still to be measured', tubeInPort({ port: '3/8-24 inverted-flare', nut: '?', flare: 'double-45' })],
    ['a port without a thread', tubeInPort({ port: 'female', nut: '3/8-24', flare: 'double-45' })],
    ['a hose end that says nothing', 'master main single { bore 3/4 in  port out: 3/8-24 }\nhose h { from main.out }'],
    ['one thread spelled in two ways', hoseInPort('3/8 UNF inverted-flare', '0.375-24 male inverted-flare')],
  ])('%s', (_, text) => expect(misfitsIn(text)).toEqual([]));
});

it('says once what one line does wrong on both sides of a vehicle, and names both', () => {
  const text = `tee axle { ports feed, left, right: 3/8-24 inverted-flare }
run left-line { tube 3/16 in steel  nut M10x1  flare double-45  from axle.left }
mirror left-line as right-line
`;
  const [finding, ...more] = findingsOf('thread-mismatch', text);
  expect(more).toEqual([]);
  expect(finding && text.slice(finding.origin.start, finding.origin.end)).toBe('axle.left');
  expect(finding?.message).toContain('The same line speaks for right-line.from.');
  // An adapter would serve one side only; the nut serves both.
  expect(finding?.mends?.map(({ title }) => title)).toEqual(['Make this end with nut 3/8-24']);
  const [nut] = finding?.mends ?? [];
  expect(nut && findingsOf('thread-mismatch', mended(text, nut, readCircuit(text).uri))).toEqual([]);
});
