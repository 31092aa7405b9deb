/** Every keyword and every unit word stays usable as a name, wherever a name may stand. */
import { describe, expect, test } from 'vitest';
import { parseErrors, readCircuit } from '../../support/read.ts';
import { keywords, keywordsThatAreWords, unitsThatAreWords } from './words.ts';

const words = [...new Set([...keywordsThatAreWords, ...unitsThatAreWords])];

/** A circuit in which one word names everything that can have a name. */
const everywhere = (word: string): string => `
use ${word} from "spares.circuit"

vehicle ${word} "Named ${word}" {
  fixed ${word}
  sprung axle on ${word} travel 100 mm
  load ${word} { front 500 kg }
}

stock spare-plug plug {
  port ${word}: 3/8-24 male inverted-flare
}

to-fit plug second of spare-plug on ${word}
to-fit screw second.${word} into ${word}.${word}

drum-brake brake on axle {
  cylinder ${word} {
    bore 7/8 in
    port ${word}: 3/8-24 inverted-flare
    port other: 3/8-24 inverted-flare
  }
}

run line {
  tube 3/16 in wall 0.028 in steel
  nut 3/8-24
  flare double-45
  from ${word}.free
  to brake.${word}.${word}
  length 10 in
}

accept dead-end on brake.${word}.other 2026-03-05 because "a gauge goes here"
accept ${word} on ${word}.third 2026-03-05 because "a rule may have any name"
`;

const spares = (word: string): string => `
tee ${word} {
  ports ${word}, free, third: 3/8-24 inverted-flare
}
`;

/** A circuit in which the word names the stock, the mirrored part and its image. */
const copies = (word: string): string => `
vehicle van {
  fixed frame
}

stock ${word} tee {
  ports ${word}, b, c: 3/8-24 inverted-flare
}

tee first of ${word} on frame
mirror first as ${word}
mirror ${word} as third on frame

block valve-block {
  ports ${word}, in-2, out: 3/8-24 inverted-flare
  path ${word}, out
}

pedal lever {
  pushes ${word}
}
`;

test('the words are taken from the grammar and the units', () => {
  expect(words).toEqual(expect.arrayContaining(['run', 'to', 'from', 'of', 'on', 'in', 'UNF', 'G', 'dot-5.1', 'thou']));
  expect(words.length).toBeGreaterThan(200);
});

test('the keywords that are no names are those that do not begin with a letter', () => {
  const others = keywords.filter((word) => !keywordsThatAreWords.includes(word));
  expect(others.filter((word) => /[A-Za-z]/.test(word))).toEqual(['37-degree', '45-degree']);
});

describe.each(words)('%s', (word) => {
  test('names a part, a port, a sub-part, a place, a load case, a rule, and is referred to', () => {
    const text = everywhere(word);
    expect(parseErrors(text)).toEqual([]);
    const { problems, planned } = readCircuit(text, { 'spares.circuit': spares(word) });
    expect(problems).toEqual([]);
    expect(planned.parts.map(({ name }) => name)).toEqual([word, 'second', 'brake', 'line']);
    expect(planned.parts.find(({ name }) => name === 'second')?.place).toBe(word);
    expect(planned.joints.map(({ a, b }) => `${a} – ${b}`)).toEqual([
      `line.from – ${word}.free`,
      `line.to – brake.${word}.${word}`,
      `second.${word} – ${word}.${word}`,
    ]);
    expect(planned.accepts.map(({ target }) => target)).toEqual([
      { kind: 'path', path: `brake.${word}.other` },
      { kind: 'path', path: `${word}.third` },
    ]);
    expect(planned.vehicle?.name).toBe(word);
    expect(planned.vehicle?.loads.map(({ name }) => name)).toEqual([word]);
  });

  test('names stock, a mirrored part and its image, and a port in a path', () => {
    const text = copies(word);
    expect(parseErrors(text)).toEqual([]);
    const { problems, planned } = readCircuit(text);
    expect(problems).toEqual([]);
    expect(planned.parts.map(({ name }) => name)).toEqual(['first', word, 'third', 'valve-block', 'lever']);
    expect(planned.parts.find(({ name }) => name === 'third')?.ports.map(({ name }) => name)).toEqual([word, 'b', 'c']);
    expect(planned.parts.find(({ name }) => name === 'valve-block')?.paths).toEqual([[word, 'out']]);
    expect(planned.links.map(({ to }) => to)).toEqual([word]);
  });
});

test('a part called circuit is accepted for by one of its ports or sub-parts; the word alone means the whole', () => {
  const accept = (target: string): unknown =>
    readCircuit(`accept dead-end on ${target} 2026-03-05 because "a test"`).planned.accepts.map((each) => each.target);
  expect(accept('circuit')).toEqual([{ kind: 'circuit' }]);
  expect(accept('circuit.left')).toEqual([{ kind: 'path', path: 'circuit.left' }]);
});
