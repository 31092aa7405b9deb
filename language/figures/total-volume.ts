/** Adds up the fluid in many parts, kind by kind, and keeps account of what is not known. */
import { notKnown, sumEstimates, writeEstimate } from '../quantity/index.ts';
import type { Part } from '../system/part.ts';
import type { Figure, Input, Need, Result } from './figure.ts';
import { eachOnce, unknownResult } from './result.ts';
import { writeResult } from './write-result.ts';
import { millilitres } from './writing.ts';

export interface Content {
  readonly part: Part;
  readonly figure: Figure<'volume'>;
}

export interface Total {
  readonly result: Result<'volume'>;
  /** One for each kind of part. */
  readonly inputs: readonly Input[];
}

/** In m³. What has no volume is left out by name; where nothing is known the total is unknown. */
export function totalOf(contents: readonly Content[], alsoMissing: readonly Need[]): Total {
  const missing = contents.flatMap(({ figure: { result } }) =>
    result.kind === 'unknown' ? result.waitsFor : result.leftOut,
  );
  const needs = eachOnce([...missing, ...alsoMissing]);
  const estimates = contents.flatMap(({ figure: { result } }) => (result.kind === 'known' ? result.estimate : []));
  const byKind = new Map<string, Content[]>();
  for (const content of contents) {
    const { kind } = content.part;
    const group = byKind.get(kind);
    if (group) group.push(content);
    else byKind.set(kind, [content]);
  }
  const result: Result<'volume'> =
    estimates.length === 0
      ? unknownResult('volume', needs)
      : { kind: 'known', dimension: 'volume', estimate: sumEstimates('volume', estimates), leftOut: needs };
  return { result, inputs: [...byKind.values()].map(inputOf) };
}

function inputOf(group: readonly Content[]): Input {
  const [only, ...more] = group;
  if (only !== undefined && more.length === 0) {
    const { part, figure } = only;
    const name = `${part.kind} ${part.label}`;
    return { name, text: writeResult({ ...figure, written: millilitres }), origin: part.nameOrigin, source: undefined };
  }
  const known = group.flatMap(({ figure: { result } }) => (result.kind === 'known' ? result.estimate : []));
  const unknown = group.length - known.length;
  const amount = known.length === 0 ? [] : [writeEstimate(sumEstimates('volume', known), { like: millilitres })];
  const gap = unknown === 0 ? [] : [known.length === 0 ? notKnown : `${unknown} of them ${notKnown}`];
  const name = `${group.length} × ${only?.part.kind ?? 'part'}`;
  return { name, text: [...amount, ...gap].join(', '), origin: undefined, source: undefined };
}
