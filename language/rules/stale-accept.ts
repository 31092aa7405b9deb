/** stale-accept: an accept that answers nothing any more, or never did. */
import { figuresOf } from '../figures/index.ts';
import { commonPractice } from '../standards/source.ts';
import { nearest } from '../system/nearest.ts';
import { replace } from '../system/problem.ts';
import type { Accept } from '../system/record.ts';
import type { FileReading } from '../system/system.ts';
import { speaksOf } from './accepts.ts';
import { oneCircuit } from './example-parts.ts';
import type { Finding, Remark, Rule } from './rule.ts';
import { listed } from './wording.ts';

/** The rule over the accepts of findings of these other rules. It asks only the rules that accepts name. */
export function staleAcceptOf(others: readonly Rule[]): Rule {
  return {
    code: 'stale-accept',
    severity: 'warning',
    acceptable: false,
    question: 'Does every accept still answer a finding?',
    why: 'An accept that stays when its cause is gone would hide the next thing of that kind.',
    source: commonPractice('an exception is kept only as long as its cause'),
    fires: [
      { title: 'an accept of what is no longer found', text: accepting('dead-end', 'front-left') },
      { title: 'an accept of a rule that does not exist', text: accepting('single-point-failure', 'circuit') },
      { title: 'an accept for a part that is not there', text: accepting('dead-end', 'rear-left') },
    ],
    silent: [
      { title: 'an accept that answers a finding', text: accepting('single-point-of-failure', 'circuit') },
      { title: 'no accept', text: oneCircuit },
    ],
    check: ({ reading, system }) => {
      if (system.accepts.length === 0) return [];
      const byCode = new Map(others.map((rule) => [rule.code, rule]));
      const findings = findingsBy(reading);
      return system.accepts.flatMap((accept) => {
        const rule = byCode.get(accept.rule);
        if (rule === undefined) return [noSuchRule(accept, [...byCode.keys()])];
        return findings(rule).some((finding) => speaksOf(accept, finding)) ? [] : [answersNothing(accept, reading)];
      });
    },
  };
}

function accepting(rule: string, target: string): string {
  return `${oneCircuit}accept ${rule} on ${target} 2026-03-05 because "one circuit, as it was built"\n`;
}

/** What a rule finds in either state, worked out once: an accept speaks of both. */
function findingsBy(reading: FileReading): (rule: Rule) => readonly Finding[] {
  const contexts = [reading.found, reading.planned].map((system) => ({ reading, system, figures: figuresOf(system) }));
  const known = new Map<string, readonly Finding[]>();
  return (rule) => {
    const found =
      known.get(rule.code) ??
      contexts.flatMap((context) =>
        rule.check(context).map((remark) => ({ code: rule.code, severity: rule.severity, ...remark })),
      );
    known.set(rule.code, found);
    return found;
  };
}

function noSuchRule(accept: Accept, codes: readonly string[]): Remark {
  const close = nearest(accept.rule, codes);
  const hint = close.length > 0 ? `Did you mean ${listed(close, 'or')}?` : 'Take the line out.';
  return {
    message: `There is no rule called ${accept.rule}, so this accepts nothing. ${hint}`,
    origin: accept.ruleOrigin,
    subject: 'circuit',
    mends: [
      ...close.map((code) => ({ title: `Write ${code}`, edits: [replace(accept.ruleOrigin, code)] })),
      takeOut(accept),
    ],
  };
}

function answersNothing(accept: Accept, { found, planned }: FileReading): Remark {
  const { target } = accept;
  const path = target.kind === 'path' ? target.path : undefined;
  const paths = [found, planned].flatMap(({ partById, portById }): string[] => [
    ...partById.keys(),
    ...portById.keys(),
  ]);
  const isThere = path === undefined || paths.includes(path);
  const close = isThere || path === undefined ? [] : nearest(path, paths);
  const what = isThere
    ? `${accept.rule} finds nothing on ${path ?? 'the circuit'}, as found or as planned`
    : `There is no ${path} in this file`;
  const hint =
    close.length > 0 ? ` Did you mean ${listed(close, 'or')}?` : ' Take the line out: what it answered is gone.';
  return {
    message: `${what}, so this accepts nothing.${hint}`,
    origin: accept.origin,
    subject: isThere && path !== undefined ? path : 'circuit',
    unused: true,
    mends: [takeOut(accept)],
  };
}

const takeOut = (accept: Accept) => ({ title: 'Take this accept out', edits: [replace(accept.origin, '')] });
