/** Makes a rule of one kind of problem that reading the text finds, passing on what was said there. */
import type { Origin } from '../system/origin.ts';
import type { Problem, ProblemCode } from '../system/problem.ts';
import type { System } from '../system/system.ts';
import { allParts } from '../system/system.ts';
import type { Remark, Rule } from './rule.ts';

/** The rule of this problem code; what the text says wrongly cannot be accepted, only put right. */
export function problemRule(
  code: ProblemCode,
  about: Pick<Rule, 'question' | 'why' | 'source' | 'fires' | 'silent'>,
): Rule {
  return {
    code,
    severity: 'error',
    acceptable: false,
    ...about,
    check: ({ reading, system }) =>
      reading.problems.filter((problem) => problem.code === code).map((problem) => remarkOf(problem, system)),
  };
}

function remarkOf(problem: Problem, system: System): Remark {
  const { message, origin, related, mends } = problem;
  return {
    message,
    origin,
    subject: partAt(origin, system) ?? 'circuit',
    ...(related === undefined ? {} : { related }),
    ...(mends === undefined ? {} : { mends }),
  };
}

/** The innermost part whose declaration holds the place. */
function partAt(origin: Origin, system: System): string | undefined {
  const around = allParts(system).filter(
    ({ origin: whole }) => whole.uri === origin.uri && whole.start <= origin.start && origin.end <= whole.end,
  );
  return around.reduce<(typeof around)[number] | undefined>(
    (inner, part) =>
      inner === undefined || part.origin.end - part.origin.start <= inner.origin.end - inner.origin.start
        ? part
        : inner,
    undefined,
  )?.id;
}
