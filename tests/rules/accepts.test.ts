import { describe, expect, it } from 'vitest';
import { acceptMend, judge, notAcceptable, ruleOf } from '../../language/rules/index.ts';
import { mended } from '../support/mend.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

const openTee = `master main single { bore 3/4 in  port out: 3/8-24 inverted-flare }
run feed { tube 3/16 in steel  nut 3/8-24  flare double-45  from main.out to front.feed }
tee front { ports feed, left, right: 3/8-24 inverted-flare }
`;
const accepting = (target: string, rule = 'dead-end') =>
  `${openTee}\naccept ${rule} on ${target} 2026-03-05 because "on the bench, closed by hand"\n`;

const deadEndsOf = (text: string) => {
  const { findings, silenced } = judge(readCircuit(text), 'planned');
  return {
    spoken: findings.filter(({ code }) => code === 'dead-end').map(({ subject }) => subject),
    silenced: silenced.map(({ finding }) => finding.subject),
  };
};

describe('an accept', () => {
  it('silences the finding on what it names and leaves the others', () => {
    expect(deadEndsOf(openTee)).toEqual({ spoken: ['front.left', 'front.right'], silenced: [] });
    expect(deadEndsOf(accepting('front.left'))).toEqual({ spoken: ['front.right'], silenced: ['front.left'] });
  });

  it('silences what belongs to the part that it names', () => {
    expect(deadEndsOf(accepting('front'))).toEqual({ spoken: [], silenced: ['front.left', 'front.right'] });
  });

  it('says nothing of other rules, other parts, or parts whose name only begins alike', () => {
    const all = ['front.left', 'front.right'];
    expect(deadEndsOf(accepting('front', 'thread-mismatch')).spoken).toEqual(all);
    expect(deadEndsOf(accepting('feed')).spoken).toEqual(all);
    expect(deadEndsOf(accepting('circuit')).spoken).toEqual(all);
    expect(deadEndsOf(`${accepting('fron')}\ntee fron { ports a, b, c: M10x1 bubble }`).spoken).toEqual(all);
  });

  it('may name either end of a joint', () => {
    const joint = openTee.replace('nut 3/8-24', 'nut M10x1');
    for (const target of ['feed', 'feed.from', 'main.out', 'main']) {
      const { findings } = judge(
        readCircuit(`${joint}\naccept thread-mismatch on ${target} 2026-03-05 because "to be remade"`),
        'planned',
      );
      const atMain = findings.filter(({ code, also }) => code === 'thread-mismatch' && also?.includes('main.out'));
      expect(atMain).toEqual([]);
    }
  });

  it('does not take away what must be put right, and says so', () => {
    const bubble = openTee.replace('flare double-45', 'flare bubble');
    const text = `${bubble}\naccept flare-mismatch on feed.from 2026-03-05 because "it held so far"`;
    const { findings, silenced } = judge(readCircuit(text), 'planned');
    const [first, second] = findings.filter(({ code }) => code === 'flare-mismatch');
    expect(first?.message.endsWith(notAcceptable)).toBe(true);
    expect(second?.message.endsWith(notAcceptable)).toBe(false);
    expect(silenced).toEqual([]);
  });

  it('of a wrong thread does not hide a seat that cannot seal behind it', () => {
    const metric = openTee.replace('nut 3/8-24', 'nut M10x1').replace('flare double-45', 'flare bubble');
    const text = `${metric}\naccept thread-mismatch on feed.from 2026-03-05 because "to be remade"`;
    const { findings, silenced } = judge(readCircuit(text), 'planned');
    const first = findings.find(({ code, subject }) => code === 'thread-mismatch' && subject === 'feed.from');
    expect(first?.message).toContain('Besides');
    expect(first?.message.endsWith(notAcceptable)).toBe(true);
    expect(silenced).toEqual([]);
  });

  it('is written at the end of the file, with the day that the host gives', () => {
    const reading = readCircuit(openTee);
    for (const finding of judge(reading, 'planned').findings.filter(({ code }) => ruleOf(code)?.acceptable)) {
      const mend = acceptMend(finding, { today: '2026-03-05', uri: reading.uri, fileEnd: openTee.length });
      const text = mended(openTee, mend, reading.uri);
      expect(parseErrors(text)).toEqual([]);
      const after = judge(readCircuit(text), 'planned');
      expect(after.silenced.map((each) => each.finding.message)).toContain(finding.message);
      expect(after.findings.map((each) => each.message)).not.toContain(finding.message);
    }
  });
});

it('findings come by place, and the same text gives the same findings', () => {
  const { findings } = judge(readCircuit(openTee), 'found');
  const starts = findings.map(({ origin }) => origin.start);
  expect(starts).toEqual([...starts].sort((a, b) => a - b));
  expect(judge(readCircuit(openTee), 'found').findings).toEqual(findings);
});
