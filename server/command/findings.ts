/** What is wrong with a circuit file in one of its states: broken text first-class beside what the rules find. */

import { type Finding, judge, type Severity, type Silenced, type State } from '../../language/index.ts';
import type { CircuitFile } from './circuit-file.ts';

export interface CheckedFile {
  readonly circuit: CircuitFile;
  /** In the order of the text. */
  readonly findings: readonly Finding[];
  /** What the file itself answers with `accept`. */
  readonly accepted: readonly Silenced[];
}

export function checkFile(circuit: CircuitFile, state: State): CheckedFile {
  const { findings, silenced } = judge(circuit.reading, state);
  const broken = circuit.syntax.map((problem): Finding => ({ severity: 'error', subject: 'circuit', ...problem }));
  const own = circuit.reading.uri;
  const all = [...broken, ...findings].toSorted(
    (a, b) =>
      Number(a.origin.uri !== own) - Number(b.origin.uri !== own) ||
      (a.origin.uri === b.origin.uri ? a.origin.start - b.origin.start : 0),
  );
  return { circuit, findings: all, accepted: silenced };
}

export type Tally = Readonly<Record<Severity, number>>;

export function tallyOf(findings: readonly Finding[]): Tally {
  const of = (severity: Severity): number => findings.filter((finding) => finding.severity === severity).length;
  return { error: of('error'), warning: of('warning'), question: of('question'), information: of('information') };
}
