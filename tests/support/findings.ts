/** What one rule finds in a circuit written in a test. */
import { type Finding, judge } from '../../language/rules/index.ts';
import type { State } from '../../language/system/presence.ts';
import { parseErrors, readCircuit } from './read.ts';

/** The findings of the rule, accepted ones left out; the text must follow the grammar. */
export function findingsOf(code: string, text: string, state: State = 'planned'): readonly Finding[] {
  const errors = parseErrors(text);
  if (errors.length > 0) throw new Error(`The text of the test does not parse: ${errors.join(' ')}`);
  return judge(readCircuit(text), state).findings.filter((finding) => finding.code === code);
}
