import { describe, expect, it } from 'vitest';
import { figuresOf } from '../../language/figures/index.ts';
import { rules } from '../../language/rules/index.ts';
import type { Rule } from '../../language/rules/rule.ts';
import { parseErrors, readCircuit } from '../support/read.ts';

/** What the rule says of either state of a circuit. */
function remarksOn(text: string, rule: Rule) {
  const reading = readCircuit(text);
  return (['found', 'planned'] as const).flatMap((state) =>
    rule.check({ reading, system: reading[state], figures: figuresOf(reading[state]) }),
  );
}

describe.each(rules.map((rule) => [rule.code, rule] as const))('%s', (code, rule) => {
  it.each(rule.fires.map((example) => [example.title, example.text]))('speaks of %s', (_, text) => {
    expect(parseErrors(text)).toEqual([]);
    expect(readCircuit(text).problems.filter((problem) => problem.code !== code)).toEqual([]);
    expect(remarksOn(text, rule)).not.toEqual([]);
  });

  it.each(rule.silent.map((example) => [example.title, example.text]))('is silent on %s', (_, text) => {
    expect(parseErrors(text)).toEqual([]);
    expect(readCircuit(text).problems).toEqual([]);
    expect(remarksOn(text, rule)).toEqual([]);
  });

  it('is put to a reader as a question, with a reason, a source and examples of both kinds', () => {
    expect(rule.question).toMatch(/^[A-Z].*\?$/);
    expect(rule.why).toMatch(/^[A-Z].*\.$/);
    expect(rule.source.text).not.toBe('');
    expect(rule.fires.length).toBeGreaterThan(0);
    expect(rule.silent.length).toBeGreaterThan(0);
  });

  it('speaks in whole sentences of something that is there', () => {
    for (const { text } of rule.fires) {
      const reading = readCircuit(text);
      for (const remark of remarksOn(text, rule)) {
        expect(remark.message).toMatch(/[.?!]$/);
        expect(remark.origin.uri).toBe(reading.uri);
        const known = [reading.found, reading.planned].some(({ partById, portById }) =>
          [...partById.keys(), ...portById.keys()].some((id) => id === remark.subject),
        );
        expect(known || remark.subject === 'circuit').toBe(true);
      }
    }
  });
});

it('each code is the code of one rule', () => {
  const codes = rules.map((rule) => rule.code);
  expect(new Set(codes).size).toBe(codes.length);
  for (const code of codes) expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
});
