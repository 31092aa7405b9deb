/** Text that nobody writes by hand: it gets an answer in reasonable time, nothing is lost and nothing is executed. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { whyUnreadable } from '../../../language/workspace/text-limits.ts';
import { parseErrors, readCircuit } from '../../support/read.ts';

const tee = (name: string): string => `tee ${name} {\n  ports a, b, c: 3/8-24 inverted-flare\n}\n`;

describe('texts in quotes are kept letter by letter', () => {
  test.each([
    'Van 🚐 "Daisy"',
    '<script>alert(1)</script>',
    'back\\slash and // no comment /* neither */',
    '$(ls) `ls` %n',
    'مكبح and 制動',
    '',
  ])('%s', (caption) => {
    const quoted = `"${caption.replace(/[\\"]/g, '\\$&')}"`;
    const text = `vehicle van ${quoted} {\n  class car\n}\n${tee('after')}`;
    expect(parseErrors(text)).toEqual([]);
    const { planned, problems } = readCircuit(text);
    expect(problems).toEqual([]);
    expect(planned.vehicle?.caption).toBe(caption);
    expect(planned.parts.map(({ name }) => name)).toEqual(['after']);
  });
});

describe('names', () => {
  test('in other alphabets', () => {
    const text = `${tee('bremse-für-oma')}${tee('тройник')}${tee('四通')}`;
    expect(parseErrors(text)).toEqual([]);
    expect(readCircuit(text).planned.parts.map(({ name }) => name)).toEqual(['bremse-für-oma', 'тройник', '四通']);
  });
  test('an emoji or markup is no name: said where it stands, and the next part lives', () => {
    for (const name of ['🚐', '<script>', "it's", 'a;b']) {
      const text = tee(name) + tee('after');
      expect(parseErrors(text)).not.toEqual([]);
      expect(readCircuit(text).planned.parts.map((part) => part.name)).toContain('after');
    }
  });
  test('words that JavaScript keeps for itself are names like others', () => {
    const words = ['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf', 'prototype'];
    const text = words.map(tee).join('');
    expect(parseErrors(text)).toEqual([]);
    const { planned, problems } = readCircuit(`${text}screw __proto__.a into constructor.b\n`);
    expect(problems).toEqual([]);
    expect(planned.parts.map(({ name }) => name)).toEqual(words);
    expect(planned.joints.map(({ a, b }) => `${a} – ${b}`)).toEqual(['__proto__.a – constructor.b']);
  });
  test('as facts, kinds, stock, rules and references they are unknown words', () => {
    for (const word of ['constructor', '__proto__', 'toString']) {
      for (const text of [
        `tee t { ${word} 3 mm }`,
        `tee t of ${word}`,
        `mirror ${word} as other`,
        `run r { tube 3/16 in  from ${word}.${word} }`,
        `tee t { 2026-03-02 ${word} 3 mm }`,
      ]) {
        const said = [...parseErrors(text), ...readCircuit(text).problems.map(({ message }) => message)];
        expect([text, said.length > 0]).toEqual([text, true]);
        expect(said.join()).not.toMatch(/native code|\[object/);
      }
    }
  });
});

describe('depth', () => {
  test('blocks in blocks in blocks', () => {
    const deep = 5000;
    const text = `${'block b {\n'.repeat(deep)}${'}\n'.repeat(deep)}${tee('after')}`;
    expect(parseErrors(text)).not.toEqual([]);
    expect(readCircuit(text).planned.parts.map(({ name }) => name)).toContain('after');
  });
  test('blocks that are never closed', () => {
    const { problems } = readCircuit('drum-brake b {\n'.repeat(3000));
    expect(problems.length).toBeGreaterThan(0);
  });
  test('a reference of ten thousand names', () => {
    const text = `run r { tube 3/16 in  from a${'.a'.repeat(10_000)} }\n${tee('after')}`;
    const { planned, problems } = readCircuit(text);
    expect(problems.map(({ code }) => code)).toContain('unknown-name');
    expect(planned.parts.map(({ name }) => name)).toEqual(['r', 'after']);
  });
  test('a mirror of a mirror of a mirror', () => {
    const count = 500;
    const chain = Array.from({ length: count }, (_, index) => `mirror t${index} as t${index + 1}\n`).join('');
    const { planned, problems } = readCircuit(`${tee('t0')}${chain}`);
    expect(problems).toEqual([]);
    expect(planned.parts).toHaveLength(count + 1);
  });
});

describe('size', () => {
  test('a thousand errors are a thousand findings, in order, and the last part lives', () => {
    const text = `${Array.from({ length: 1000 }, (_, index) => `tee t${index} {\n  hole 3 psi\n}\n`).join('')}${tee('after')}`;
    const { planned, problems } = readCircuit(text);
    expect(problems).toHaveLength(1000);
    const starts = problems.map(({ origin }) => origin.start);
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
    expect(planned.parts).toHaveLength(1001);
  });
  test('a thousand broken heads', () => {
    const text = `${'tee {\n  hole\n}\n'.repeat(1000)}${tee('after')}`;
    expect(parseErrors(text).length).toBeGreaterThan(0);
    expect(readCircuit(text).planned.parts.at(-1)?.name).toBe('after');
  });
  test('five megabytes are refused in words that say the limit; what is below it is read', () => {
    const comment = `// ${'what the builder thought about '.repeat(20)}\n`;
    const lines = (bytes: number): string => `${comment.repeat(Math.floor(bytes / comment.length))}${tee('after')}`;
    expect(whyUnreadable(lines(5 * 1024 ** 2))).toContain('5.0 MB; circuit files are read up to 4.0 MB');
    expect(readCircuit(lines(5 * 1024 ** 2)).planned.parts).toEqual([]);
    const large = lines(4 * 1024 ** 2 - 1000);
    expect(whyUnreadable(large)).toBeUndefined();
    expect(readCircuit(large).planned.parts.map(({ name }) => name)).toEqual(['after']);
  });
  test('half a megabyte of parts', () => {
    const text = Array.from({ length: 8000 }, (_, index) => tee(`t${index}`)).join('');
    const { planned, problems } = readCircuit(text);
    expect(problems).toEqual([]);
    expect(planned.parts).toHaveLength(8000);
  });
  test('one line of a megabyte', () => {
    const text = `vehicle van "${'x'.repeat(1_000_000)}" { class car }\n${tee('after')}`;
    expect(readCircuit(text).planned.vehicle?.caption).toHaveLength(1_000_000);
  });
  test('a number of ten thousand digits', () => {
    const text = `tee t { hole ${'9'.repeat(10_000)} mm }\n${tee('after')}`;
    const { planned, problems } = readCircuit(text);
    expect(problems.every(({ message }) => !/Infinity|NaN/.test(message))).toBe(true);
    expect(planned.parts.at(-1)?.name).toBe('after');
  });
});

describe('bytes', () => {
  test('a picture or a program read as text', () => {
    const binary = Array.from({ length: 20_000 }, (_, index) => String.fromCharCode((index * 7919) % 256)).join('');
    expect(parseErrors(binary)).not.toEqual([]);
    expect(readCircuit(binary).planned.parts).toEqual([]);
  });
  test('nothing, blanks, a byte-order mark, other ends of lines', () => {
    expect(parseErrors('')).toEqual([]);
    expect(parseErrors(' \t\r\n\n')).toEqual([]);
    expect(parseErrors(`\uFEFF${tee('t')}`)).toEqual([]);
    const windows = tee('t').replaceAll('\n', '\r\n');
    expect(parseErrors(windows)).toEqual([]);
    expect(readCircuit(windows).planned.parts.map(({ name }) => name)).toEqual(['t']);
  });
  test('any text at all answers', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        const { problems } = readCircuit(text);
        expect(problems.every(({ message }) => message.length > 0)).toBe(true);
      }),
      { numRuns: 500, seed: 2 },
    );
  });
  test('any heap of the notation’s own words answers', () => {
    const word = fc.constantFrom(
      ...'run hose tee master tandem primary port ports from to of on { } : , . ? assume about in mm 3/8-24 M10x1 3/16 12 "x" 2026-03-02 found done accept because vehicle fluid dot-4 stock mirror as screw into route straight bend 90 deg point ( ) clip every at nut flare tube wall to-fit to-remove use'.split(
        ' ',
      ),
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 60 }), (words) => {
        for (const text of [words.join(' '), words.join('\n')]) readCircuit(text);
      }),
      { numRuns: 400, seed: 3 },
    );
  });
});
