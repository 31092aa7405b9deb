/** unstated-paths: a part with several ways through that does not say which of its ports share fluid. */
import { published } from '../standards/source.ts';
import { kindRow } from '../system/kinds/index.ts';
import type { Part } from '../system/part.ts';
import { allParts, type System } from '../system/system.ts';
import { splitCar } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { listed } from './wording.ts';

const warning = (inside: string) => `pressure-differential-valve warning {
  ports front-in, front-out, rear-in, rear-out: 3/8-24 inverted-flare
  ${inside}
}
run one { from main.primary.front to warning.front-in }
run two { from main.secondary.rear to warning.rear-in }
master main tandem {
  primary { port front: 3/8-24 inverted-flare }
  secondary { port rear: 3/8-24 inverted-flare }
}
`;

export const unstatedPaths: Rule = {
  code: 'unstated-paths',
  severity: 'question',
  acceptable: true,
  question: 'Which ports of the part share fluid?',
  why: 'Until that is said it cannot be told which wheels a leak leaves, or which circuit a wheel belongs to.',
  source: published('49 CFR 571.105 S4: subsystems of a split system are told apart by what a leak impairs'),
  fires: [
    { title: 'a warning valve without paths', text: warning('') },
    { title: 'a port in none of the paths', text: warning('path front-in, front-out') },
    {
      title: 'a tandem master without its chambers',
      text: 'master main tandem { ports a, b: 3/8-24 inverted-flare }\n',
    },
  ],
  silent: [
    {
      title: 'a warning valve that says both paths',
      text: warning('path front-in, front-out  path rear-in, rear-out'),
    },
    { title: 'a tandem master with its chambers', text: splitCar },
  ],
  check: ({ system }) => allParts(system).flatMap((part) => remarkOn(part, system)),
};

function remarkOn(part: Part, system: System): readonly Remark[] {
  const asked = (message: string): readonly Remark[] => [{ message, origin: part.nameOrigin, subject: part.id }];
  const isWhole = !part.parts.some(({ kind }) => kind === 'primary' || kind === 'secondary');
  if (part.kind === 'master' && part.variant === 'tandem' && isWhole) {
    return asked(
      `${part.label} is a tandem, and its chambers are not written, so its circuits cannot be told apart. Write its ports in primary { … } and secondary { … }.`,
    );
  }
  if (kindRow(part.kind).fluid !== 'paths') return [];
  const ports = part.ports.filter(({ id, connection }) => {
    const isPlugged = connection.kind === 'threaded' && connection.plugged;
    return system.jointsAt.has(id) && !isPlugged;
  });
  const open = ports.filter(({ name }) => !part.paths.some((path) => path.includes(name))).map(({ name }) => name);
  if (open.length === 0 || ports.length < 2) return [];
  return asked(
    part.paths.length === 0
      ? `${part.label} does not say which of its ports share fluid: ${listed(open)}. Write “path” and the ports of one way through, a line for each way.`
      : `${listed(open)} of ${part.label} ${open.length === 1 ? 'is' : 'are'} in no path, so nothing passes there. Add ${open.length === 1 ? 'it to the path that it belongs to' : 'them to the paths that they belong to'}.`,
  );
}
