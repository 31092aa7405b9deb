/** `stock` says once what is repeated; what a part says itself goes before it. */
import { describe, expect, test } from 'vitest';
import { readCircuit } from '../../support/read.ts';

const shelf = `
stock line {
  tube 3/16 in wall 0.028 in copper-nickel
  nut 3/8-24
  flare double-45
  bend-radius 1 in
  clip every 12 in
}
stock wheel-cylinder cylinder {
  bore 7/8 in
  ends double
  port feed: 3/8-24 inverted-flare
  port other: 3/8-24 inverted-flare
  bleeder { height 400 mm }
}
`;

const partsOf = (text: string, others: Record<string, string> = {}) => {
  const { planned, problems } = readCircuit(shelf + text, others);
  expect(problems).toEqual([]);
  return planned.partById;
};
const part = (parts: ReturnType<typeof partsOf>, id: string) => [...parts.values()].find((each) => each.id === id);

test('stock without a kind is a run; it makes no part by itself', () => {
  const parts = partsOf('run a of line');
  expect([...parts.keys()]).toEqual(['a']);
  expect(part(parts, 'a')).toMatchObject({ kind: 'run', stock: 'line', tube: { material: 'copper-nickel' } });
});

test('a tube, nut, flare, clip or fact of its own takes the place of that of the stock, the rest stays', () => {
  const a = part(partsOf('run a of line { tube 1/4 in wall 0.035 in steel  bend-radius 2 in }'), 'a');
  expect(a?.tube).toMatchObject({ material: 'steel', diameter: { value: 0.00635 } });
  expect(a?.facts.get('bend-radius')).toMatchObject({ stated: { value: 0.0508 } });
  expect(a?.ports[0]?.connection).toMatchObject({ nut: { kind: 'known' }, flare: 'double-45' });
  expect(a?.clip).toMatchObject({ kind: 'every' });
});

test('one end may have a nut and flare of its own', () => {
  const a = part(
    partsOf('tee t { ports a, b, c: M10x1 bubble }\nrun a of line { from t.a { nut M10x1 flare bubble } }'),
    'a',
  );
  expect(a?.ports.map(({ connection }) => connection)).toMatchObject([
    { nut: { thread: { name: 'M10x1' } }, flare: 'bubble' },
    { nut: { thread: { name: '3/8-24' } }, flare: 'double-45' },
  ]);
});

describe('a sub-part of stock', () => {
  test('takes over ports and sub-parts', () => {
    const parts = partsOf('drum-brake w { cylinder of wheel-cylinder }');
    expect([...parts.keys()]).toEqual(['w', 'w.cylinder', 'w.cylinder.bleeder']);
    expect(part(parts, 'w.cylinder')?.ports.map(({ name }) => name)).toEqual(['feed', 'other']);
  });
  test('says its own port, fact and sub-part anew, each by its name', () => {
    const parts = partsOf(
      'drum-brake w { cylinder upper of wheel-cylinder { bore 1 in  port feed: M10x1 bubble  bleeder { height 500 mm } } }',
    );
    const upper = part(parts, 'w.upper');
    expect(upper?.facts.get('bore')).toMatchObject({ stated: { value: 0.0254 } });
    expect(upper?.facts.get('ends')).toMatchObject({ word: 'double' });
    expect(upper?.ports.map(({ name }) => name).sort()).toEqual(['feed', 'other']);
    expect(upper?.ports.find(({ name }) => name === 'feed')?.connection).toMatchObject({ seat: 'bubble' });
    expect(part(parts, 'w.upper.bleeder')?.facts.get('height')).toMatchObject({ stated: { value: 0.5 } });
  });
});

test('a hose of stock: the ends as the stock says, where they go as the hose says', () => {
  const parts = partsOf(`
    stock short-hose hose {
      from: 3/8-24 female inverted-flare fixed
      to: 3/8-24 male washer fixed
      bore 1/8 in
    }
    drum-brake w { cylinder { port feed: 3/8-24 washer } }
    hose h of short-hose { to w  length 12 in }
  `);
  expect(part(parts, 'h')?.ports.map(({ connection }) => connection)).toMatchObject([
    { gender: 'female', seat: 'inverted-flare', turning: 'fixed' },
    { gender: 'male', seat: 'washer', turning: 'fixed' },
  ]);
});

test('what is wrong in stock is said once, at the stock', () => {
  const { problems } = readCircuit('stock s tee { ports a, b, c: 3/8-24\n hole 3 psi }\ntee one of s\ntee two of s\n');
  expect(problems.map(({ code }) => code)).toEqual(['quantity']);
});

test('a name without stock is answered with what is near', () => {
  const { problems } = readCircuit(`${shelf}run a of lime`);
  expect(problems).toMatchObject([{ code: 'unknown-name', mends: [{ title: 'Write line' }] }]);
});

test('a part of stock of another kind is refused', () => {
  const { problems } = readCircuit(`${shelf}tee a of line`);
  expect(problems.map(({ message }) => message).join()).toMatch(/line.*run|run.*line/);
});

test('two of one name', () => {
  const { problems } = readCircuit(`${shelf}stock line { tube 1/4 in }`);
  expect(problems).toMatchObject([{ code: 'duplicate' }]);
});
