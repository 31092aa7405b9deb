/** Broken text: one declaration that is wrong leaves all others alive, and any beginning of a file answers. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as ast from '../../../language/grammar/generated/ast.ts';
import { createLinewrightServices } from '../../../language/services.ts';
import type { FileReading } from '../../../language/system/system.ts';
import { examples, readExample } from '../../examples/examples.ts';
import { parseErrors, readCircuit } from '../../support/read.ts';

const { LangiumParser, Lexer } = createLinewrightServices().language.parser;

interface Stretch {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

function declarationsOf(text: string): readonly Stretch[] {
  return LangiumParser.parse<ast.File>(text).value.declarations.map((node) => ({
    name: nameOf(node),
    start: node.$cstNode?.offset ?? 0,
    end: node.$cstNode?.end ?? 0,
  }));
}

function nameOf(node: ast.Declaration): string {
  if (ast.isScrew(node)) return `screw ${node.male?.segments.map(({ $refText }) => $refText).join('.')}`;
  if (ast.isAccept(node)) return `accept ${node.rule}`;
  return 'name' in node ? `${node.$type} ${node.name}` : 'fluid';
}

/** The declarations that a change inside one of them takes along. */
function lostBy(change: string, whole: readonly Stretch[], at: number): readonly string[] {
  const left = new Set(declarationsOf(change).map(({ name }) => name));
  return whole.filter(({ name, start, end }) => !(start <= at && at < end) && !left.has(name)).map(({ name }) => name);
}

describe.each(examples.map((example) => [example.name, example] as const))('%s', (name, { text }) => {
  const whole = declarationsOf(text);
  const tokens = Lexer.tokenize(text).tokens;
  // Each token in turn of the example with most kinds of statements, samples of the others.
  const step = name === 'orchard-van/orchard-van.circuit' ? 1 : 7;

  test('is sound to begin with', () => {
    expect(parseErrors(text)).toEqual([]);
    expect(new Set(whole.map(({ name }) => name)).size).toBe(whole.length);
  });

  test('a token left out costs no other declaration', () => {
    const lost = tokens
      .filter((_token, index) => index % step === 0)
      .flatMap(({ image, startOffset }) => {
        const change = text.slice(0, startOffset) + text.slice(startOffset + image.length);
        const names = lostBy(change, whole, startOffset);
        return names.length === 0 ? [] : [`“${image}” at ${startOffset}: ${names.join(', ')}`];
      });
    expect(lost).toEqual([]);
  });

  test.each(['}', '{', ':', ',', '"', '?', '12', 'zzz', '@'])('a stray %s costs no other declaration', (stray) => {
    const lost = tokens
      .filter((_token, index) => index % 29 === 0)
      .flatMap(({ image, startOffset }) => {
        const change = `${text.slice(0, startOffset)}${stray} ${text.slice(startOffset)}`;
        const names = lostBy(change, whole, startOffset);
        return names.length === 0 ? [] : [`before “${image}” at ${startOffset}: ${names.join(', ')}`];
      });
    expect(lost).toEqual([]);
  });
});

/** What does not hold together in what was read, however little that is. */
function faultsOf({ found, planned, problems, toMeasure }: FileReading, length: number): readonly string[] {
  const faults: string[] = [];
  for (const { state, joints, circuits, portById, partById } of [found, planned]) {
    for (const { a, b } of joints)
      if (!portById.has(a) || !portById.has(b)) faults.push(`${state}: ${a} – ${b} joins ports that are not there`);
    for (const { part } of circuits.flatMap(({ reaches }) => reaches))
      if (!partById.has(part)) faults.push(`${state}: a circuit reaches ${part}, which is not there`);
  }
  for (const { origin, message } of problems) {
    if (message === '' || /undefined|NaN|\[object/.test(message)) faults.push(message);
    if (origin.start > origin.end || (origin.uri.endsWith('test.circuit') && origin.end > length))
      faults.push(`“${message}” stands outside the text`);
  }
  for (const { part, fact } of toMeasure) if (/undefined/.test(`${part} ${fact}`)) faults.push(`${part} ${fact}`);
  return faults;
}

describe('any beginning of an example answers', () => {
  test.each(examples.map((example) => [example.name, example] as const))('%s', (_name, example) => {
    const faults: string[] = [];
    for (let end = 0; end <= example.text.length; end += 31) {
      faults.push(...faultsOf(readExample(example, example.text.slice(0, end)), end));
    }
    expect(faults).toEqual([]);
  });

  test('and any stretch out of its middle, and any two stretches put together', () => {
    const stretch = fc
      .constantFrom(...examples)
      .chain((example) =>
        fc
          .tuple(fc.nat(example.text.length), fc.nat(400))
          .map(([start, length]) => example.text.slice(start, start + length)),
      );
    fc.assert(
      fc.property(stretch, stretch, (first, second) => {
        const text = first + second;
        expect(faultsOf(readCircuit(text), text.length)).toEqual([]);
      }),
      { numRuns: 300, seed: 1 },
    );
  });
});
