/** split-disagrees: circuits that share the wheels out otherwise than the vehicle says. */
import { published } from '../standards/source.ts';
import { wordOf } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import type { PartId } from '../system/part.ts';
import { pressureBodiesOf } from '../system/pressure-bodies.ts';
import type { FileReading, System } from '../system/system.ts';
import { type WheelBrake, wheelBrakesOf } from '../system/wheel-brakes.ts';
import { splitCar } from './example-parts.ts';
import type { Remark, Rule } from './rule.ts';
import { listed } from './wording.ts';

const claiming = (split: string, text = splitCar) => `vehicle car { split ${split} }\n${text}`;

/** The lines of two wheels exchanged at the tees. */
const crossed = splitCar
  .replace('from front-tee.right to front-right.', 'from front-tee.right to X.')
  .replace('from rear-tee.right to rear-right.', 'from rear-tee.right to front-right.')
  .replace('to X.', 'to rear-right.');

export const splitDisagrees: Rule = {
  code: 'split-disagrees',
  severity: 'error',
  acceptable: true,
  question: 'Do the circuits share the wheels out as the vehicle says?',
  why: 'A line that goes to the wrong wheel leaves brakes after a leak that nobody counted on, and shows in no other way.',
  source: published('49 CFR 571.105 S4: subsystems of a split system are told apart by what a leak impairs'),
  fires: [
    { title: 'two lines exchanged, so that the split is diagonal', text: claiming('front-rear', crossed) },
    { title: 'a circuit for each axle where the vehicle says diagonal', text: claiming('diagonal') },
  ],
  silent: [
    { title: 'a circuit for each axle, as the vehicle says', text: claiming('front-rear') },
    { title: 'a diagonal split, as the vehicle says', text: claiming('diagonal', crossed) },
    { title: 'a vehicle that says nothing of its split', text: crossed },
    { title: 'a split of another kind', text: claiming('other', crossed) },
  ],
  check: ({ reading, system }) => {
    const claim = system.vehicle && wordOf(system.vehicle, properties.split);
    if (claim === undefined || !isKind(claim) || !isMeant(system, reading)) return [];
    const shares = sharesOf(system);
    if (shares === undefined || shares.length < 2 || isSplit[claim](shares)) return [];
    return [remarkOn(claim, shares, system)];
  },
};

/** What is still to be split is not yet as the vehicle says. */
const isMeant = (system: System, { found, planned }: FileReading): boolean =>
  system.state === 'planned' ||
  [found, planned].every(({ partById }) => [...partById.values()].every(({ presence }) => presence === 'kept'));

/** The wheels that one body of fluid brakes. */
interface Share {
  readonly chambers: readonly PartId[];
  readonly wheels: readonly WheelBrake[];
}

/** Undefined where it is not known which circuit reaches which wheel, or where a wheel sits. */
function sharesOf(system: System): readonly Share[] | undefined {
  const { bodies, around, meetings } = pressureBodiesOf(system);
  const wheels = wheelBrakesOf(system).filter(({ actuated }) => actuated.length > 0);
  const isKnown = wheels.every(({ wheel }) => wheel.axle !== undefined && wheel.side !== undefined);
  if (!isKnown || meetings.length > 0 || bodies.some((body) => around(body).length > 1)) return undefined;
  return bodies
    .filter(({ chambers }) => chambers.length > 0)
    .map(({ chambers, parts }) => {
      const within = new Set(parts);
      return { chambers, wheels: wheels.filter(({ actuated }) => actuated.some(({ id }) => within.has(id))) };
    })
    .filter((share) => share.wheels.length > 0);
}

type Split = 'front-rear' | 'diagonal' | 'front-and-one-rear';
const isKind = (word: string): word is Split => word in isSplit;

const isSplit: Readonly<Record<Split, (shares: readonly Share[]) => boolean>> = {
  'front-rear': (shares) => shares.every(({ wheels }) => new Set(wheels.map(({ wheel }) => wheel.axle)).size === 1),
  diagonal: (shares) =>
    shares.every(
      ({ wheels }) =>
        wheels.length < 2 ||
        (new Set(wheels.map(({ wheel }) => wheel.axle)).size === wheels.length &&
          new Set(wheels.map(({ wheel }) => wheel.side)).size === wheels.length),
    ),
  'front-and-one-rear': (shares) =>
    shares.every(({ wheels }) => {
      const on = (axle: string) => wheels.filter(({ wheel }) => wheel.axle === axle).length;
      return on('front') === 2 && on('rear') === 1;
    }),
};

function remarkOn(claim: Split, shares: readonly Share[], system: System): Remark {
  const said = shares.map(({ chambers, wheels }) => {
    const names = chambers.flatMap((id) => system.partById.get(id)?.label ?? []);
    return `${listed(names)} brakes ${listed(wheels.map(({ brake }) => brake.label))}`;
  });
  const fitting = (['front-rear', 'diagonal', 'front-and-one-rear'] as const).find((split) => isSplit[split](shares));
  const next =
    fitting === undefined
      ? 'Look where each line goes.'
      : `Look where each line goes; if it is so on the vehicle, write split ${fitting}.`;
  const origin = system.vehicle?.facts.get(properties.split.key)?.origin ?? { uri: system.uri, start: 0, end: 0 };
  return {
    message: `The vehicle says split ${claim}, and the lines do otherwise: ${said.join('; ')}. ${next}`,
    origin,
    subject: 'circuit',
    also: shares.flatMap(({ chambers }) => chambers),
    related: shares.flatMap(({ wheels }) =>
      wheels.map(({ brake }) => ({ message: `braked there: ${brake.label}`, origin: brake.nameOrigin })),
    ),
  };
}
