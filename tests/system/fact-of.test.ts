import { describe, expect, it } from 'vitest';
import { estimateFact, factOrigin, measureOf, wordOf } from '../../language/system/fact-of.ts';
import { properties } from '../../language/system/kinds/index.ts';
import { partIdOf } from '../../language/system/part.ts';
import { readCircuit } from '../support/read.ts';

const text = 'drum-brake left { shoes servo cylinder { bore 1 in cup-gap ? stroke ? assume 5 mm port feed: 3/8-24 } }';
const { partById } = readCircuit(text).planned;
const at = (path: string) => {
  const part = partById.get(partIdOf(path.split('.')));
  if (part === undefined) throw new Error(`no part ${path}`);
  return part;
};

describe('a fact of a part', () => {
  const cylinder = at('left.cylinder');

  it('comes as it is stated, and ready to compute with', () => {
    expect(measureOf(cylinder, properties.bore)).toMatchObject({ kind: 'exact', value: 0.0254 });
    expect(estimateFact(cylinder, properties.bore)).toMatchObject({ value: 0.0254, assumed: false });
    expect(estimateFact(cylinder, properties.stroke)).toMatchObject({ value: 0.005, assumed: true });
  });

  it('that is a question mark is stated and has no number', () => {
    expect(measureOf(cylinder, properties.cupGap)).toEqual({ kind: 'unknown' });
    expect(estimateFact(cylinder, properties.cupGap)).toBeUndefined();
  });

  it('that is not said is undefined', () => {
    expect(measureOf(cylinder, properties.height)).toBeUndefined();
    expect(wordOf(cylinder, properties.ends)).toBeUndefined();
    expect(factOrigin(cylinder, properties.height)).toBeUndefined();
  });

  it('may be a word, and no measure is taken for one', () => {
    expect(wordOf(at('left'), properties.shoes)).toBe('servo');
    expect(wordOf(cylinder, { ...properties.ends, key: 'bore' })).toBeUndefined();
    expect(measureOf(cylinder, { ...properties.area, key: 'bore' })).toBeUndefined();
  });

  it('says where it stands', () => {
    const origin = factOrigin(cylinder, properties.cupGap);
    expect(origin && text.slice(origin.start, origin.end)).toBe('cup-gap ?');
  });
});
