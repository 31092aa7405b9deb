import { describe, expect, it } from 'vitest';
import { mended } from '../support/mend.ts';
import { readCircuit } from '../support/read.ts';
import { findingsOf } from './joint.ts';

const line = 'stock line { tube 3/16 in steel  nut 3/8-24  flare double-45 }\n';
const deadEnds = (text: string, state?: 'found' | 'planned') =>
  findingsOf('dead-end', text, state).map(({ subject }) => subject);
const wordsOf = (text: string) =>
  findingsOf('dead-end', text).map(({ origin }) => text.slice(origin.start, origin.end));

describe('an open port', () => {
  it('is judged in each state by itself: a port that a line leaves is open when the line is gone', () => {
    const text = `${line}tee a { ports x, y, z: 3/8-24 inverted-flare }
tee b { ports x, y, z: 3/8-24 inverted-flare }
run one of line { from a.x to b.x }
to-remove run two of line { from a.y to b.y }
to-fit run three of line { from a.z to b.z }
`;
    expect(deadEnds(text, 'found')).toEqual(['a.z', 'b.z']);
    expect(deadEnds(text, 'planned')).toEqual(['a.y', 'b.y']);
  });

  it('of the second chamber of a tandem is found though only the first is joined', () => {
    const text = `${line}master main tandem {
  bore 3/4 in
  primary { port a: 3/8-24 inverted-flare }
  secondary { port b: 3/8-24 inverted-flare }
}
tee t { ports x, y, z: 3/8-24 inverted-flare }
run one of line { from main.primary.a to t.x }
`;
    expect(deadEnds(text)).toEqual(['main.secondary.b', 't.y', 't.z']);
  });

  it('of a part made of stock, or of a mirrored one, is shown at the part', () => {
    const text = `${line}stock three-way tee { ports x, y, z: 3/8-24 inverted-flare }
tee left of three-way
mirror left as right
run one of line { from left.x to right.x }
`;
    expect(deadEnds(text)).toEqual(['left.y', 'left.z', 'right.y', 'right.z']);
    expect(wordsOf(text)).toEqual(['left', 'left', 'right', 'right']);
  });

  it.each([
    ['where the bleeder sits', 'ports feed, bleed: 3/8-24 inverted-flare  bleeder {}', []],
    ['called bleed where there is no bleeder', 'ports feed, bleed: 3/8-24 inverted-flare', ['left.cylinder.bleed']],
    ['on the reservoir’s side', 'port feed: 3/8-24 inverted-flare  port supply: barb 8 mm', []],
    ['plugged', 'port feed: 3/8-24 inverted-flare  port bridge: 3/8-24 inverted-flare plugged', []],
    ['with an unknown thread', 'port feed: 3/8-24 inverted-flare  port bridge: ?', ['left.cylinder.bridge']],
  ])('%s', (_, cylinder, open) => {
    const text = `${line}master main single { port out: 3/8-24 inverted-flare }
run one of line { from main.out to left.cylinder.feed }
drum-brake left { cylinder { ${cylinder} } }
`;
    expect(deadEnds(text)).toEqual(open);
  });

  it('is plugged in the plan by a plug to be fitted, in the circuit as found by one that was not written yet', () => {
    const text = `${line}master main single { ports out, spare: M10x1 bubble }
run one of line { from main.out }
`;
    const titles = (['planned', 'found'] as const).map((state) => {
      const finding = findingsOf('dead-end', text, state).find(({ subject }) => subject === 'main.spare');
      const [mend] = finding?.mends ?? [];
      const after = mend ? mended(text, mend, readCircuit(text).uri) : '';
      expect(deadEnds(after, state)).not.toContain('main.spare');
      expect(deadEnds(after, 'found').includes('main.spare')).toBe(state === 'planned');
      expect(after).toContain('port shank: M10x1 male bubble');
      return mend?.title;
    });
    expect(titles).toEqual(['Plug main.spare', 'Say that main.spare is plugged']);
  });

  it('gives the plug a name that is still free', () => {
    const text = `${line}master main single { ports out, spare: M10x1 bubble }
run one of line { from main.out }
to-remove tee main-spare-plug { ports a, b, c: M10x1 bubble }
`;
    const [mend] = findingsOf('dead-end', text).find(({ subject }) => subject === 'main.spare')?.mends ?? [];
    expect(mend?.edits[0]?.text).toContain('plug main-spare-plug-2 {');
  });
});

describe('a line', () => {
  it('that leads nowhere is shown at its name, with the word that is missing', () => {
    const text = `${line}master main single { port out: 3/8-24 inverted-flare }\nrun one of line { from main.out }\n`;
    expect(findingsOf('dead-end', text)).toMatchObject([
      { subject: 'one.to', message: 'The end of one leads nowhere: write “to” and the port that it goes to.' },
    ]);
    expect(wordsOf(text)).toEqual(['one']);
  });

  it('that nothing is joined to at all is not in the circuit', () => {
    expect(deadEnds(`${line}run one of line`)).toEqual([]);
  });

  it('with a misspelt target is spoken of once, and so is the port that was meant', () => {
    const text = `${line}master main single { port out: 3/8-24 inverted-flare }
tee t { ports feed, left, right: 3/8-24 inverted-flare }
run one of line { from main.out to t.feed }
run two of line { from t.lef }
run three of line { from t.right }
`;
    expect(deadEnds(text)).toEqual(['three.to']);
  });
});
