import { expect, it } from 'vitest';
import { mended } from '../support/mend.ts';
import { readCircuit } from '../support/read.ts';
import { findingsOf } from './joint.ts';

const line = 'stock line { tube 3/16 in steel  nut 3/8-24  flare double-45 }\n';
const said = (text: string, state?: 'found' | 'planned') => findingsOf('port-used-twice', text, state);

it('names the lines, points at every joint and offers the free port beside', () => {
  const text = `${line}tee t { ports a, b: 3/8-24 inverted-flare  port c: M10x1 bubble }
run one of line { from t.a }
run two of line { from t.a }
`;
  const [finding] = said(text);
  expect(finding?.message).toBe('t.a takes one end, but one and two are joined to it. t.b of the same part is free.');
  expect(finding?.related?.map(({ message }) => message)).toEqual(['one is joined here', 'two is joined here']);
  const [mend] = finding?.mends ?? [];
  const after = mend ? mended(text, mend, readCircuit(text).uri) : '';
  expect(after).toContain('run two of line { from t.b }');
  expect(said(after)).toEqual([]);
});

it('offers no port that is cut otherwise, plugged or in use', () => {
  const text = `${line}tee t { port a: 3/8-24 inverted-flare  port b: 3/8-24 inverted-flare plugged  port c: M10x1 bubble }
run one of line { from t.a }
run two of line { from t.a }
`;
  expect(said(text)).toMatchObject([
    { message: expect.stringMatching(/It needs a tee, or a port of its own\.$/), mends: [] },
  ]);
});

it('a joint that both of its parts state is one joint said twice', () => {
  const text = `${line}run one of line { to two.from }\nrun two of line { from one.to }\n`;
  expect(said(text).map(({ severity, subject }) => [severity, subject])).toEqual([
    ['warning', 'one.to'],
    ['warning', 'two.from'],
  ]);
});

it('a line that is replaced by another takes turns with it, and a plug makes room for a line to be fitted', () => {
  const text = `${line}tee t { port a: 3/8-24 inverted-flare  port b: 3/8-24 inverted-flare plugged }
to-remove run one of line { from t.a }
to-fit run two of line { from t.a }
to-fit run three of line { from t.b }
`;
  expect(said(text, 'found')).toEqual([]);
  expect(said(text, 'planned')).toEqual([]);
});

it('counts a part that is screwed in as well as a line', () => {
  const text = `${line}tee t { ports a, b, c: 3/8-24 inverted-flare }
run one of line { from t.a }
pressure-switch stop-lamp { port thread: 3/8-24 male inverted-flare }
screw stop-lamp.thread into t.a
`;
  expect(said(text)).toMatchObject([{ subject: 't.a', also: ['one.from', 'stop-lamp.thread'] }]);
});
