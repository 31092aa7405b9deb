import { describe, expect, it } from 'vitest';
import { type Finding, judge, rules } from '../../language/rules/index.ts';
import { mended } from '../support/mend.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

/** What each rule's examples offer to mend, in either state. */
const offers = rules.flatMap((rule) =>
  rule.fires.flatMap(({ title, text }) =>
    (['found', 'planned'] as const).flatMap((state) => {
      const reading = readCircuit(text);
      return judge(reading, state)
        .findings.filter((finding) => finding.code === rule.code)
        .flatMap((finding) =>
          (finding.mends ?? []).map((mend) => ({
            name: `${rule.code}, ${title}, ${state}: ${mend.title}`,
            ...{ code: rule.code, state, text, finding, mend, uri: reading.uri },
          })),
        );
    }),
  ),
);

const misfitCodes = ['gender-mismatch', 'thread-mismatch', 'taper-in-straight', 'seat-mismatch', 'flare-mismatch'];
const misfits = (findings: readonly Finding[]) =>
  findings
    .filter(({ code }) => [...misfitCodes, 'seat-and-thread', 'nut-size'].includes(code))
    .map((each) => each.message);

describe('every mend leaves a file that reads well, takes away its finding and makes no new misfit', () => {
  it.each(offers)('$name', ({ code, state, text, finding, mend, uri }) => {
    const after = mended(text, mend, uri);
    expect(parseErrors(after)).toEqual([]);
    const reading = readCircuit(after);
    expect(reading.problems.filter((problem) => problem.code !== code)).toEqual([]);
    const left = judge(reading, state).findings;
    expect(left.filter((each) => each.code === code && each.message === finding.message)).toEqual([]);
    const before = misfits(judge(readCircuit(text), state).findings);
    expect(misfits(left).filter((message) => !before.includes(message))).toEqual([]);
  });
});

it.each(['dead-end', 'port-used-twice', ...misfitCodes])('%s offers a mend', (code) => {
  expect(offers.map((offer) => offer.code)).toContain(code);
});
