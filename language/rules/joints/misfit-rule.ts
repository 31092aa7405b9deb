/** Makes the rule about one cause of misfit: message, what would fit, related places and mends are the same for all. */
import { flareWords } from '../../standards/flare-forms.ts';
import type { ThreadFact } from '../../system/connection.ts';
import type { Joint } from '../../system/joint.ts';
import type { Mend, Related } from '../../system/problem.ts';
import { oncePerPlace } from '../once-per-place.ts';
import type { Remark, Rule, RuleContext } from '../rule.ts';
import { adapterMend } from './adapter.ts';
import { boresSentence, endMend, type FittingEnd, fittingEnd } from './fitting-end.ts';
import { isLine, type Meeting, meetingsIn, type Side, sidesOf } from './meeting.ts';
import { type Cause, type Misfit, misfitOf } from './misfit.ts';
import { sharingStatement } from './own-statement.ts';

export interface MisfitAbout extends Omit<Rule, 'check'> {
  readonly cause: Cause;
}

/** The rule that speaks of every joint whose first fault is of this cause. */
export function misfitRule({ cause, ...about }: MisfitAbout): Rule {
  return {
    ...about,
    check: (context) => {
      const { system } = context;
      const misfits = meetingsIn(system)
        .map(misfitOf)
        .filter((misfit) => misfit !== undefined)
        .filter((misfit) => misfit.fault.cause === cause);
      if (misfits.length === 0) return [];
      const shared = sharingStatement(system);
      return oncePerPlace(misfits.map((misfit) => remarkOf(misfit, context, shared)));
    },
  };
}

function remarkOf(misfit: Misfit, context: RuleContext, shared: ReadonlySet<Joint>): Remark {
  const { meeting, fault, besides } = misfit;
  const { joint } = meeting;
  const fitting = meeting.kind === 'tube' && fault.cause !== 'gender' ? fittingEnd(meeting) : undefined;
  const adapter = adapterMend(meeting, context, shared);
  const mends: (Mend | undefined)[] = [
    meeting.kind === 'tube' && fitting ? endMend(meeting, fitting, context.system) : undefined,
    adapter,
  ];
  const also = besides.map((other) => ` Besides, ${other.besides}.`).join('');
  return {
    message: [`${fault.message}${also}`, ...advice(misfit, fitting)].join(' '),
    origin: joint.origin,
    subject: joint.a,
    also: [joint.b],
    related: related(meeting),
    mends: mends.filter((mend) => mend !== undefined),
    // Accepting the thread would hide the seat behind it.
    ...(besides.some(({ cause }) => cause === 'seat' || cause === 'flare') ? { binding: true } : {}),
  };
}

/** What to do next, in sentences. */
function advice({ meeting, fault }: Misfit, fitting: FittingEnd | undefined): readonly string[] {
  if (fitting && meeting.kind === 'tube') {
    const nut = fitting.nut && `the ${fitting.nut.name} nut`;
    const flare = fitting.flare && flareWords[fitting.flare];
    const both = [nut, flare].filter((word) => word !== undefined).join(' and ');
    return [`Make this end of ${meeting.tube.part.id} with ${both}.`];
  }
  if (fault.cause === 'seat') return ['Take an end made for this port, or an adapter with both seats.'];
  if (meeting.kind === 'unlike') return fault.cause === 'gender' ? [] : ['Take parts that belong together.'];
  if (fault.cause === 'gender') return ['An adapter or a union goes between them.'];
  const bores = meeting.kind === 'tube' ? boresSentence(meeting.tube.connection, meeting.port.connection) : undefined;
  return [...(bores === undefined ? [] : [bores]), 'Take an end with the thread of the port, or an adapter.'];
}

function related(meeting: Meeting): readonly Related[] {
  const sides = sidesOf(meeting);
  return sides.flatMap((side): Related[] => {
    if (!isLine(side.part))
      return [{ message: `${side.port.id} is ${connectionWords(side)}`, origin: side.port.origin }];
    const { connection } = side;
    if (connection.kind !== 'tube-end') return [];
    const said: Related[] = [];
    if (connection.nutOrigin) said.push({ message: `the nut of ${side.part.id}`, origin: connection.nutOrigin });
    if (connection.flareOrigin) said.push({ message: `the flare of ${side.part.id}`, origin: connection.flareOrigin });
    return said;
  });
}

function connectionWords({ connection }: Side): string {
  switch (connection.kind) {
    case 'threaded':
      return [threadName(connection.thread), connection.gender, connection.seat]
        .filter((word) => word !== undefined)
        .join(' ');
    case 'tube-end':
      return 'a tube end';
    case 'banjo':
      return 'a banjo eye';
    case 'barb':
      return 'a spigot for a low-pressure hose';
  }
}

const threadName = (fact: ThreadFact): string | undefined => (fact.kind === 'known' ? fact.thread.name : undefined);
