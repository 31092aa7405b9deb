/** Every rule, and the judgement of a file by them in one of its states. */
import { figuresOf } from '../figures/index.ts';
import type { State } from '../system/presence.ts';
import type { FileReading } from '../system/system.ts';
import { notAcceptable, type Silenced, speaksOf } from './accepts.ts';
import { badDate } from './bad-date.ts';
import { badThread } from './bad-thread.ts';
import { banjoWashersRule } from './banjo-washers.ts';
import { circuitRules } from './circuit-rules.ts';
import { compressionJoint } from './compression-joint.ts';
import { deadEnd } from './dead-end.ts';
import { duplicate } from './duplicate.ts';
import { flareMismatch } from './flare-mismatch.ts';
import { genderMismatch } from './gender-mismatch.ts';
import { hoseCannotTurn } from './hose-cannot-turn.ts';
import { misplaced } from './misplaced.ts';
import { missing } from './missing.ts';
import { nutSize } from './nut-size.ts';
import { plainEnd } from './plain-end.ts';
import { portCount } from './port-count.ts';
import { portUsedTwice } from './port-used-twice.ts';
import { quantity } from './quantity.ts';
import type { Finding, Rule, RuleContext, Severity } from './rule.ts';
import { seatAndThread } from './seat-and-thread.ts';
import { seatMismatch } from './seat-mismatch.ts';
import { staleAcceptOf } from './stale-accept.ts';
import { taperInStraight } from './taper-in-straight.ts';
import { threadMismatch } from './thread-mismatch.ts';
import { unknownName } from './unknown-name.ts';
import { unknownWord } from './unknown-word.ts';
import { useFailed } from './use-failed.ts';

export { type AcceptPlace, acceptMend, notAcceptable, type Silenced } from './accepts.ts';
export type { Example, Finding, Remark, Rule, RuleContext, Severity } from './rule.ts';

const beforeAccepts: readonly Rule[] = [
  // the text
  quantity,
  unknownName,
  unknownWord,
  misplaced,
  missing,
  duplicate,
  badThread,
  badDate,
  useFailed,
  // the joints
  portCount,
  deadEnd,
  portUsedTwice,
  genderMismatch,
  threadMismatch,
  taperInStraight,
  seatMismatch,
  flareMismatch,
  seatAndThread,
  nutSize,
  plainEnd,
  compressionJoint,
  banjoWashersRule,
  hoseCannotTurn,
  ...circuitRules,
];

/** In the order in which they are listed to a reader: the text, the joints, the circuit, and last what accepts answer. */
export const rules: readonly Rule[] = [...beforeAccepts, staleAcceptOf(beforeAccepts)];

export interface Judgement {
  /** By file, place, severity. */
  readonly findings: readonly Finding[];
  /** What the file itself answers with `accept`. */
  readonly silenced: readonly Silenced[];
}

const byCode: ReadonlyMap<string, Rule> = new Map(rules.map((rule) => [rule.code, rule]));

/** The rule with this code. */
export function ruleOf(code: string): Rule | undefined {
  return byCode.get(code);
}

/** Whether the file may answer the finding with `accept`. */
export function isAcceptable(finding: Finding): boolean {
  return ruleOf(finding.code)?.acceptable === true && finding.binding !== true;
}

/** What the rules find in the file as found or as planned, less what it accepts. */
export function judge(reading: FileReading, state: State): Judgement {
  const system = reading[state];
  const findings: Finding[] = [];
  const silenced: Silenced[] = [];
  for (const finding of everyFinding({ reading, system, figures: figuresOf(system) })) {
    const accept = system.accepts.find((each) => speaksOf(each, finding));
    if (accept === undefined) findings.push(finding);
    else if (isAcceptable(finding)) silenced.push({ finding, accept });
    else findings.push({ ...finding, message: `${finding.message} ${notAcceptable}` });
  }
  return { findings: findings.sort(byPlace), silenced };
}

/** What the rules find, accepted or not, in the order of the rules. */
function everyFinding(context: RuleContext): readonly Finding[] {
  return rules.flatMap((rule) =>
    rule.check(context).map((remark) => ({ code: rule.code, severity: rule.severity, ...remark })),
  );
}

const worstFirst: Readonly<Record<Severity, number>> = { error: 0, warning: 1, question: 2, information: 3 };

function byPlace(a: Finding, b: Finding): number {
  return (
    compare(a.origin.uri, b.origin.uri) ||
    a.origin.start - b.origin.start ||
    worstFirst[a.severity] - worstFirst[b.severity] ||
    compare(a.code, b.code) ||
    compare(a.message, b.message)
  );
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
